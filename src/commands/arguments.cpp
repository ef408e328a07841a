#include "commands/arguments.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <array>
#include <span>
#include <sstream>

#include "basics/diagnostics.hpp"
#include "basics/utf8.hpp"
#include "commands/argument_values.hpp"
#include "commands/verbs.hpp"
#include "report/temporary_file.hpp"

namespace seambook {
namespace {

std::string footer_of(std::span<const VerbInfo> shown) {
  std::string footer = "\nExamples:\n";
  for (const VerbInfo& info : shown) {
    std::istringstream lines{std::string(info.examples)};
    for (std::string line; std::getline(lines, line);) footer += "  " + line + "\n";
  }
  if (shown.size() == 1) footer += "\n" + std::string(shown.front().notes) + "\n";
  return footer + "\n" + std::string(common_notes);
}

/// A check whose bounds stand in the option's description, not behind the name of its value.
CLI::Validator unnamed(CLI::Validator check) { return check.description(""); }

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
  sub.add_option("--seconds", raw.seconds, "of processor time for the search, 0.1 to 3600, in place of counted moves")
      ->type_name("N")
      ->check(unnamed(CLI::Range(0.1, 3600.0)));
}

void add_job_words(CLI::App& sub, Verb verb, RawArguments& raw) {
  const char* job_help = "job file; - is standard input";
  if (verb == Verb::explain) {
    sub.add_option("JOB", raw.explained, job_help)->required()->type_name("");
    sub.add_option("JOINT", raw.joint, "weldment/id or id; all joints when left out")->type_name("");
  } else if (verb == Verb::rates) {
    sub.add_option("ACTION", raw.action, "check")->required()->type_name("");
    sub.add_option("BOOK", raw.rates, "folder of the rate book; found from the working folder when left out")
        ->type_name("");
    sub.add_option("JOB", raw.jobs, "jobs by which entries are used; nothing is said of use without")->type_name("");
    sub.add_option("--older-than", raw.older_than, "age at which a dated price is old, 1 to 600")
        ->type_name("MONTHS")
        ->capture_default_str()
        ->check(unnamed(CLI::Range(1, 600)));
  } else {
    sub.add_option("JOB", raw.jobs, job_help)->required()->type_name("");
  }
}

void add_list_options(CLI::App& sub, RawArguments& raw) {
  sub.add_option("--jobs", raw.threads, "so many jobs at once, 1 to 256; one for each core when left out")
      ->type_name("N")
      ->check(unnamed(CLI::Range(std::size_t{1}, most_temporaries)));
  sub.add_option("--shard", raw.shard, "every N-th job of the list from the K-th on: one of N runs that share it")
      ->type_name("K/N");
}

void add_job_options(CLI::App& sub, Verb verb, RawArguments& raw) {
  if (verb != Verb::rates) sub.add_option("--rates", raw.rates, "folder of the rate book")->type_name("DIR");
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
  if (takes_jobs_one_by_one(verb)) add_list_options(sub, raw);
  sub.add_option("--date", raw.date, "date of the result; today when left out")->type_name("YYYY-MM-DD");
  sub.add_flag("--json", raw.json, "the result as JSON on standard output");
  if (verb != Verb::rates) sub.add_flag("--strict", raw.strict, "a job with warnings counts as faulty and is not done");
}

void add_topic(CLI::App& sub, Verb verb, RawArguments& raw) {
  if (verb == Verb::schema) {
    sub.add_option("WHAT", raw.topic, "a file: job, rates or day; or a command, for what its --json prints")
        ->required()
        ->type_name("");
    sub.add_flag("--reference", raw.reference, "the keys of the file as a page of Markdown");
  } else if (verb == Verb::completion) {
    sub.add_option("SHELL", raw.topic, "bash or zsh")->required()->type_name("");
  } else {
    sub.add_option("COMMAND", raw.topic, "the page of the program when left out")->type_name("");
  }
}

void add_new_options(CLI::App& sub, RawArguments& raw) {
  sub.add_option("DIR", raw.folder, "folder to write to; made when missing")->type_name("");
  sub.add_option("--units", raw.units, "metric or us: millimetres and euros, or inches, pounds and dollars")
      ->type_name("UNITS")
      ->capture_default_str();
  sub.add_option("--takeoff", raw.takeoff, "a workbook to write, with a row a joint to fill in")->type_name("FILE");
  sub.add_option("--from-takeoff", raw.from_takeoff, "write a job that draws its joints from this CSV or workbook")
      ->type_name("FILE");
  sub.add_option("--date", raw.date, "date of the workbook; today when left out")->type_name("YYYY-MM-DD");
}

CLI::App& add_verb(CLI::App& app, Verb verb, RawArguments& raw) {
  const VerbInfo& info = verb_info(verb);
  CLI::App& sub = *app.add_subcommand(std::string(info.word), std::string(info.about));
  sub.allow_extras();
  if (takes_jobs(verb)) {
    add_job_words(sub, verb, raw);
    add_job_options(sub, verb, raw);
  } else if (verb == Verb::begin) {
    add_new_options(sub, raw);
  } else {
    add_topic(sub, verb, raw);
  }
  sub.add_flag("--quiet", raw.quiet, "only errors on standard error");
  sub.add_flag("--verbose", raw.verbose, "more about what is done on standard error");
  sub.add_option("--color", raw.color, "auto, always or never: messages in colour")
      ->type_name("WHEN")
      ->capture_default_str();
  sub.footer(footer_of(std::span(&info, 1)));
  return sub;
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

/// Wrong first words are told of before CLI11 sees them: it only says that a command is missing.
std::optional<CommandLine> refuse_first_word(const std::vector<std::string>& words) {
  const std::vector<std::string_view> commands = verb_words();
  if (words.empty()) return wrong_usage(fmt::format("which command? One of {}", fmt::join(commands, ", ")));
  const std::string& first = words.front();
  if (std::find(commands.begin(), commands.end(), first) != commands.end()) return std::nullopt;
  constexpr std::array<std::string_view, 3> known = {"--help", "-h", "--version"};
  if (std::find(known.begin(), known.end(), first) != known.end()) return std::nullopt;
  if (!first.starts_with('-')) {
    return wrong_usage(with_suggestion(fmt::format("unknown command '{}'", shown_word(first)), first, commands));
  }
  const std::string name = first.substr(0, first.find('='));
  const std::string_view near = nearest(name, known);
  if (!near.empty())
    return wrong_usage(with_suggestion(fmt::format("unknown option '{}'", shown_word(name)), name, known));
  return wrong_usage(fmt::format("the command comes first, then '{}'", shown_word(name)));
}

OptionInfo option_info(const CLI::Option& option) {
  OptionInfo info;
  info.argument = option.get_positional();
  info.name = option.get_name(false, false);
  info.type = info.argument ? "" : option.get_type_name();
  info.about = option.get_description();
  info.preset = option.get_default_str();
  info.required = option.get_required();
  if (info.name == "--color") info.choices.assign(colour_choices().begin(), colour_choices().end());
  if (info.name == "--units") info.choices.assign(unit_choices().begin(), unit_choices().end());
  return info;
}

}  // namespace

std::vector<OptionInfo> options_of(Verb verb) {
  RawArguments raw;
  CLI::App app;
  std::vector<OptionInfo> all;
  for (const CLI::Option* option : add_verb(app, verb, raw).get_options()) all.push_back(option_info(*option));
  std::stable_partition(all.begin(), all.end(), [](const OptionInfo& info) { return info.argument; });
  if (!all.empty() && all.front().argument) {
    std::span<const std::string_view> topics = topics_of(verb);
    const std::vector<std::string_view> commands = verb_words();
    if (verb == Verb::manual) topics = commands;
    all.front().choices.assign(topics.begin(), topics.end());
  }
  return all;
}

CommandLine read_command_line(const std::vector<std::string>& words) {
  if (auto refused = refuse_first_word(words)) return *refused;
  RawArguments raw;
  CLI::App app("Quotes, plans and explains welding work from a job file and the shop's rate book.", "seambook");
  app.set_version_flag("--version", "seambook " SEAMBOOK_VERSION);
  app.require_subcommand(1);
  app.footer(footer_of(verbs()));
  for (std::size_t v = 0; v < verbs().size(); ++v) add_verb(app, static_cast<Verb>(v), raw);
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
  const std::vector<std::string_view> commands = verb_words();
  line.arguments->verb =
      static_cast<Verb>(std::find(commands.begin(), commands.end(), sub.get_name()) - commands.begin());
  for (const CLI::Option* option : sub.get_options())
    if (option->count() > 0) raw.given.push_back(option->get_name());
  const std::string complaint = take_values(raw, *line.arguments);
  if (!complaint.empty()) return wrong_usage(complaint);
  return line;
}

}  // namespace seambook
