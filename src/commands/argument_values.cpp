#include "commands/argument_values.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <tuple>

#include "basics/diagnostics.hpp"
#include "basics/utf8.hpp"
#include "commands/verbs.hpp"

namespace seambook {
namespace {

constexpr std::array<std::string_view, 3> colour_words = {"auto", "always", "never"};  // as Colour
constexpr std::array<std::string_view, 2> unit_systems = {"metric", "us"};
constexpr std::array<std::string_view, 1> rates_actions = {"check"};
constexpr std::array<std::string_view, 2> shell_words = {"bash", "zsh"};
constexpr std::array<std::string_view, 10> schema_words = {"job",     "rates", "day",  "check",   "estimate",
                                                           "explain", "quote", "plan", "compare", "rates_check"};

/// The options of plan; gives the complaint, or nothing.
std::string take_plan_values(const RawArguments& raw, Arguments& out) {
  const std::tuple<const char*, const std::string&, std::optional<std::string>&> files[] = {
      {"--day", raw.day, out.day},
      {"--from", raw.from, out.from},
      {"--verify", raw.verify, out.verify},
      {"--order", raw.order, out.order}};
  int from_input = static_cast<int>(std::count(out.jobs.begin(), out.jobs.end(), "-"));
  for (const auto& [name, given, taken] : files) {
    if (!raw.has(name)) continue;
    if (given.empty()) return fmt::format("{} is empty; name a file", name);
    if (given == "-" && ++from_input > 1) return "standard input can be read once only";
    taken = given;
  }
  if (out.verify && (out.from || out.order)) return "--verify only checks: leave out --from and --order";
  if (raw.has("--now")) {
    const DayRead read = read_day(raw.now);
    if (!read.date) return fmt::format("--now: {}; {}", shown_word(read.problem), read.hint);
    out.now = Moment{*read.date, read.at.value_or(std::chrono::minutes(0))};
  }
  if (raw.has("--seconds")) out.seconds = raw.seconds;
  return {};
}

/// A word that must be one of a few; gives the complaint, or nothing.
std::string take_word(std::string_view what, const std::string& word, std::span<const std::string_view> known) {
  if (std::find(known.begin(), known.end(), word) != known.end()) return {};
  std::string complaint = fmt::format("{} '{}' is not known", what, shown_word(word));
  if (!nearest(word, known).empty()) return with_suggestion(std::move(complaint), word, known);
  return fmt::format("{}; it may be {}", complaint, fmt::join(known, ", "));
}

/// What schema, completion, manual and rates are asked for, and --color; gives the complaint, or nothing.
std::string take_topic(const RawArguments& raw, Arguments& out) {
  out.topic = out.verb == Verb::rates ? raw.action : raw.topic;
  out.reference = raw.reference;
  out.older_than = raw.older_than;
  std::vector<std::string_view> commands = verb_words();
  const std::span<const std::string_view> known = out.verb == Verb::manual ? commands : topics_of(out.verb);
  if (!known.empty() && !(out.verb == Verb::manual && out.topic.empty())) {
    if (std::string wrong = take_word(verb_info(out.verb).word, out.topic, known); !wrong.empty()) return wrong;
  }
  if (out.reference && out.topic != "job" && out.topic != "rates" && out.topic != "day")
    return "--reference is for the files job, rates and day";
  if (std::string wrong = take_word("--color", raw.color, colour_words); !wrong.empty()) return wrong;
  out.colour =
      static_cast<Colour>(std::find(colour_words.begin(), colour_words.end(), raw.color) - colour_words.begin());
  return {};
}

/// What `new` writes; gives the complaint, or nothing.
std::string take_new_values(const RawArguments& raw, Arguments& out) {
  const std::tuple<const char*, const std::string&, std::optional<std::string>&> names[] = {
      {"DIR", raw.folder, out.folder},
      {"--takeoff", raw.takeoff, out.takeoff},
      {"--from-takeoff", raw.from_takeoff, out.from_takeoff}};
  for (const auto& [name, given, taken] : names) {
    if (!raw.has(name)) continue;
    if (given.empty() || given == "-") return fmt::format("{} is no name of a file or folder", name);
    taken = given;
  }
  if (std::string wrong = take_word("--units", raw.units, unit_systems); !wrong.empty()) return wrong;
  out.us = raw.units == "us";
  if (out.takeoff && (out.folder || out.from_takeoff))
    return "--takeoff writes that workbook alone: leave out the rest";
  if (!out.folder && !out.takeoff && !out.from_takeoff) return "new what? Name a folder: seambook new shop";
  return {};
}

/// `2/8`; gives the complaint, or nothing.
std::string take_shard(const std::string& words, Arguments& out) {
  const char* end = words.data() + words.size();
  const auto [slash, first_fault] = std::from_chars(words.data(), end, out.shard);
  if (first_fault == std::errc() && slash != end && *slash == '/') {
    const auto [rest, fault] = std::from_chars(slash + 1, end, out.shards);
    if (fault == std::errc() && rest == end && out.shard >= 1 && out.shard <= out.shards) return {};
  }
  return fmt::format("--shard: '{}' is none; write K/N, the K-th of N, such as 2/8", shown_word(words));
}

}  // namespace

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

std::span<const std::string_view> colour_choices() { return colour_words; }
std::span<const std::string_view> unit_choices() { return unit_systems; }

std::vector<std::string_view> verb_words() {
  std::vector<std::string_view> words;
  for (const VerbInfo& info : verbs()) words.push_back(info.word);
  return words;
}

/// The words that the first argument of a command may be; empty: any.
std::span<const std::string_view> topics_of(Verb verb) {
  if (verb == Verb::rates) return rates_actions;
  if (verb == Verb::schema) return schema_words;
  if (verb == Verb::completion) return shell_words;
  return {};
}

std::string take_values(const RawArguments& raw, Arguments& out) {
  if (std::string wrong = take_topic(raw, out); !wrong.empty()) return wrong;
  if (std::string wrong = out.verb == Verb::begin ? take_new_values(raw, out) : std::string(); !wrong.empty())
    return wrong;
  out.jobs = out.verb == Verb::explain ? std::vector{raw.explained} : raw.jobs;
  if (std::count(out.jobs.begin(), out.jobs.end(), "-") > 1) return "standard input can be read once only";
  if (std::find(out.jobs.begin(), out.jobs.end(), "") != out.jobs.end()) return "a job's file name is empty";
  if (!raw.joint.empty()) out.joint = raw.joint;
  if (takes_jobs(out.verb) && raw.has(out.verb == Verb::rates ? "BOOK" : "--rates")) {
    if (raw.rates.empty()) return "--rates is empty; name a folder";
    out.rates = raw.rates;
  }
  if (raw.out.empty()) return "--out is empty; name a folder";
  out.out = raw.out;
  if (out.verb == Verb::quote && raw.has("--against")) {
    if (raw.against.empty()) return "--against is empty; name a file";
    if (raw.against == "-" && std::find(out.jobs.begin(), out.jobs.end(), "-") != out.jobs.end())
      return "standard input can be read once only";
    out.against = raw.against;
  }
  if (std::string wrong = out.verb == Verb::plan ? take_plan_values(raw, out) : std::string(); !wrong.empty())
    return wrong;
  if (raw.has("--date")) {
    const DateRead read = read_date(raw.date);
    if (!read.date) return fmt::format("--date: {}; {}", shown_word(read.problem), read.hint);
    out.date = read.date;
  }
  out.threads = raw.threads;
  if (takes_jobs_one_by_one(out.verb) && raw.has("--shard")) {
    if (std::string wrong = take_shard(raw.shard, out); !wrong.empty()) return wrong;
  }
  out.force = raw.force;
  out.json = raw.json;
  out.quiet = raw.quiet;
  out.verbose = raw.verbose;
  out.strict = raw.strict;
  out.customer_only = raw.customer_only;
  if (out.customer_only && out.against) return "--customer-only leaves out what --against would add: choose one";
  if (out.quiet && out.verbose) return "--quiet and --verbose exclude each other";
  return {};
}

}  // namespace seambook
