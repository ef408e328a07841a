#include "commands/arguments.hpp"

#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <tuple>

#include "basics/diagnostics.hpp"
#include "basics/utf8.hpp"

namespace seambook {
namespace {

constexpr std::array<std::string_view, 6> verb_words = {"check", "estimate", "explain", "quote", "plan", "compare"};
constexpr std::array<const char*, 6> verb_helps = {
    "read jobs and the rate book, and tell of every fault; writes nothing",
    "times, materials and cost by weldment and kind",
    "where each figure of a job comes from",
    "write a quote workbook for each job",
    "plan the work of all jobs: who does what, where and when, least late and with least set-up",
    "each family of seams by every process that suits, and whether the rate book's investment pays",
};
constexpr const char* examples = R"(
Examples:
  seambook check jobs/*.yaml
  seambook estimate jobs/bracket.yaml
  seambook explain jobs/bracket.yaml bracket/1
  seambook quote jobs/bracket.yaml --date 2026-05-18 --out quotes
  seambook quote jobs/bracket.yaml --against last-week.json
  seambook plan jobs/*.yaml --date 2026-05-11
  seambook plan jobs/*.yaml --day today.yaml --from monday.json --now 2026-05-12T09:00
  seambook plan jobs/*.yaml --verify monday.json
  seambook compare jobs/wash-down-cabinet.yaml
  seambook estimate - < bracket.yaml

The rate book is the folder given by --rates; else a folder 'rates' beside the job or above it; else
~/.config/seambook/rates; else the one that was installed with the program.
Exit codes: 0 done, 1 a job has faults (good jobs are done all the same), 2 wrong usage, 3 the system refused.
)";

/// What CLI11 fills in; options are converted from text here, not by it.
struct RawArguments {
  std::vector<std::string> jobs;
  std::string explained, joint, rates, out = "out", date, against, day, from, verify, order, now;
  double seconds = 0;
  bool force = false, json = false, quiet = false, verbose = false, strict = false, customer_only = false;
};

bool writes_files(Verb verb) { return verb == Verb::quote || verb == Verb::plan || verb == Verb::compare; }

void add_plan_options(CLI::App& sub, RawArguments& raw) {
  sub.add_option("--day", raw.day, "what the day brought: absent, down, arrived, started, done ... (YAML or CSV)")
      ->type_name("FILE");
  sub.add_option("--now", raw.now, "nothing begins before; the start of the date when left out")
      ->type_name("YYYY-MM-DDTHH:MM");
  sub.add_option("--from", raw.from, "previous 'plan --json': keep what has begun, move as little as needed")
      ->type_name("FILE");
  sub.add_option("--verify", raw.verify, "a 'plan --json' to check: every rule that it breaks; writes nothing")
      ->type_name("FILE");
  sub.add_option("--order", raw.order, "somebody's own order, a CSV with a column 'operation': timed and compared")
      ->type_name("FILE");
  sub.add_option("--seconds", raw.seconds, "of processor time for the search, in place of counted moves")
      ->type_name("N")
      ->check(CLI::Range(0.1, 3600.0));
}

CLI::App& add_verb(CLI::App& app, Verb verb, RawArguments& raw) {
  const auto index = static_cast<std::size_t>(verb);
  CLI::App& sub = *app.add_subcommand(std::string(verb_words[index]), verb_helps[index]);
  sub.allow_extras();
  const char* job_help = "job file; - is standard input";
  if (verb == Verb::explain) {
    sub.add_option("JOB", raw.explained, job_help)->required()->type_name("");
    sub.add_option("JOINT", raw.joint, "weldment/id or id; all joints when left out")->type_name("");
  } else {
    sub.add_option("JOB", raw.jobs, job_help)->required()->type_name("");
  }
  sub.add_option("--rates", raw.rates, "folder of the rate book")->type_name("DIR");
  if (writes_files(verb)) {
    sub.add_option("--out", raw.out, "folder to write to")->type_name("DIR")->capture_default_str();
    sub.add_flag("--force", raw.force, "overwrite a workbook that exists");
  }
  if (verb == Verb::quote)
    sub.add_option("--against", raw.against, "previous 'quote --json': what changed since, by cause")
        ->type_name("FILE");
  if (verb == Verb::quote)
    sub.add_flag("--customer-only", raw.customer_only, "the customer's page alone, plain numbers, to send away");
  if (verb == Verb::plan) add_plan_options(sub, raw);
  sub.add_option("--date", raw.date, "date of the result; today when left out")->type_name("YYYY-MM-DD");
  if (verb != Verb::explain) sub.add_flag("--json", raw.json, "the result as JSON on standard output");
  sub.add_flag("--strict", raw.strict, "a job with warnings counts as faulty and is not done");
  sub.add_flag("--quiet", raw.quiet, "only errors on standard error");
  sub.add_flag("--verbose", raw.verbose, "more about what is done on standard error");
  sub.footer(examples);
  return sub;
}

/// The author's words with control characters taken out.
std::string shown_word(std::string_view word) {
  std::string out;
  append_printable(out, word.substr(0, 200));
  return out;
}

std::string with_suggestion(std::string message, std::string_view word, std::span<const std::string_view> known) {
  const std::string_view near = nearest(word, known);
  if (!near.empty()) message += fmt::format("; did you mean '{}'?", near);
  return message;
}

CommandLine wrong_usage(const std::string& message) {
  return {std::nullopt, fmt::format("seambook: {}\nrun 'seambook --help' for usage\n", message), exit_code::usage};
}

/// The long names of the options that a command takes, with their dashes.
std::vector<std::string> option_names(CLI::App& sub) {
  std::vector<std::string> names;
  for (const CLI::Option* option : sub.get_options()) {
    for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
  }
  return names;
}

CommandLine refuse_extra(CLI::App& sub, const std::string& extra) {
  if (!extra.starts_with('-')) return wrong_usage(fmt::format("'{}' is one word too many", shown_word(extra)));
  const std::string name = extra.substr(0, extra.find('='));
  const std::vector<std::string> names = option_names(sub);
  const std::vector<std::string_view> known(names.begin(), names.end());
  return wrong_usage(
      with_suggestion(fmt::format("'{}' has no option '{}'", sub.get_name(), shown_word(name)), name, known));
}

/// The options of plan; gives the complaint, or nothing.
std::string take_plan_values(const RawArguments& raw, const CLI::App& sub, Arguments& out) {
  const std::tuple<const char*, const std::string&, std::optional<std::string>&> files[] = {
      {"--day", raw.day, out.day},
      {"--from", raw.from, out.from},
      {"--verify", raw.verify, out.verify},
      {"--order", raw.order, out.order}};
  int from_input = static_cast<int>(std::count(out.jobs.begin(), out.jobs.end(), "-"));
  for (const auto& [name, given, taken] : files) {
    if (sub.count(name) == 0) continue;
    if (given.empty()) return fmt::format("{} is empty; name a file", name);
    if (given == "-" && ++from_input > 1) return "standard input can be read once only";
    taken = given;
  }
  if (out.verify && (out.from || out.order)) return "--verify only checks: leave out --from and --order";
  if (sub.count("--now") > 0) {
    const DayRead read = read_day(raw.now);
    if (!read.date) return fmt::format("--now: {}; {}", shown_word(read.problem), read.hint);
    out.now = Moment{*read.date, read.at.value_or(std::chrono::minutes(0))};
  }
  if (sub.count("--seconds") > 0) out.seconds = raw.seconds;
  return {};
}

/// Checks what the words mean; gives the complaint, or nothing.
std::string take_values(const RawArguments& raw, const CLI::App& sub, Arguments& out) {
  out.jobs = out.verb == Verb::explain ? std::vector{raw.explained} : raw.jobs;
  if (std::count(out.jobs.begin(), out.jobs.end(), "-") > 1) return "standard input can be read once only";
  if (std::find(out.jobs.begin(), out.jobs.end(), "") != out.jobs.end()) return "a job's file name is empty";
  if (!raw.joint.empty()) out.joint = raw.joint;
  if (sub.count("--rates") > 0) {
    if (raw.rates.empty()) return "--rates is empty; name a folder";
    out.rates = raw.rates;
  }
  if (raw.out.empty()) return "--out is empty; name a folder";
  out.out = raw.out;
  if (out.verb == Verb::quote && sub.count("--against") > 0) {
    if (raw.against.empty()) return "--against is empty; name a file";
    if (raw.against == "-" && std::find(out.jobs.begin(), out.jobs.end(), "-") != out.jobs.end())
      return "standard input can be read once only";
    out.against = raw.against;
  }
  if (std::string wrong = out.verb == Verb::plan ? take_plan_values(raw, sub, out) : std::string(); !wrong.empty())
    return wrong;
  if (sub.count("--date") > 0) {
    const DateRead read = read_date(raw.date);
    if (!read.date) return fmt::format("--date: {}; {}", shown_word(read.problem), read.hint);
    out.date = read.date;
  }
  out.force = raw.force;
  out.json = raw.json;
  out.quiet = raw.quiet;
  out.verbose = raw.verbose;
  out.strict = raw.strict;
  out.customer_only = raw.customer_only;
  if (out.customer_only && sub.count("--against") > 0)
    return "--customer-only leaves out what --against would add: choose one";
  if (out.quiet && out.verbose) return "--quiet and --verbose exclude each other";
  return {};
}

/// Wrong first words are told of before CLI11 sees them: it only says that a command is missing.
std::optional<CommandLine> refuse_first_word(const std::vector<std::string>& words) {
  if (words.empty()) return wrong_usage("which command? One of check, estimate, explain, quote, plan, compare");
  const std::string& first = words.front();
  if (std::find(verb_words.begin(), verb_words.end(), first) != verb_words.end()) return std::nullopt;
  constexpr std::array<std::string_view, 3> known = {"--help", "-h", "--version"};
  if (std::find(known.begin(), known.end(), first) != known.end()) return std::nullopt;
  if (!first.starts_with('-')) {
    return wrong_usage(with_suggestion(fmt::format("unknown command '{}'", shown_word(first)), first, verb_words));
  }
  const std::string name = first.substr(0, first.find('='));
  const std::string_view near = nearest(name, known);
  if (!near.empty())
    return wrong_usage(with_suggestion(fmt::format("unknown option '{}'", shown_word(name)), name, known));
  return wrong_usage(fmt::format("the command comes first, then '{}'", shown_word(name)));
}

}  // namespace

CommandLine read_command_line(const std::vector<std::string>& words) {
  if (auto refused = refuse_first_word(words)) return *refused;
  RawArguments raw;
  CLI::App app("Quotes, plans and explains welding work from a job file and the shop's rate book.", "seambook");
  app.set_version_flag("--version", "seambook " SEAMBOOK_VERSION);
  app.require_subcommand(1);
  app.footer(examples);
  for (std::size_t v = 0; v < verb_words.size(); ++v) add_verb(app, static_cast<Verb>(v), raw);
  try {
    std::vector<std::string> reversed(words.rbegin(), words.rend());  // the order CLI11 takes a vector in
    app.parse(std::move(reversed));
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() != 0) return wrong_usage(shown_word(error.what()));
    std::ostringstream text, complaint;
    app.exit(error, text, complaint);
    return {std::nullopt, text.str(), exit_code::done};
  }
  CLI::App& sub = *app.get_subcommands().front();
  for (const std::string& extra : sub.remaining()) {
    if (extra != "--") return refuse_extra(sub, extra);
  }
  CommandLine line{Arguments{}, {}, exit_code::done};
  line.arguments->verb =
      static_cast<Verb>(std::find(verb_words.begin(), verb_words.end(), sub.get_name()) - verb_words.begin());
  const std::string complaint = take_values(raw, sub, *line.arguments);
  if (!complaint.empty()) return wrong_usage(complaint);
  return line;
}

}  // namespace seambook
