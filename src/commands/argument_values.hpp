// What the words of a command line mean, once they are told apart.
#pragma once

#include <algorithm>
#include <span>

#include "commands/arguments.hpp"

namespace seambook {

/// What the parser fills in; options are converted from text here, not by it.
struct RawArguments {
  std::vector<std::string> jobs;
  std::string explained, joint, rates, out = "out", date, against, day, from, verify, order, now, action, topic, shard;
  std::string folder, takeoff, from_takeoff, units = "metric";  // new
  std::string color = "auto";
  double seconds = 0;
  int older_than = 12;
  std::size_t threads = 0;
  bool force = false, json = false, quiet = false, verbose = false, strict = false, customer_only = false,
       reference = false;
  std::vector<std::string> given;  // options and arguments that stood, by their names
  bool has(std::string_view name) const { return std::find(given.begin(), given.end(), name) != given.end(); }
};

/// Commands that work on jobs, or could; the others only print.
inline bool takes_jobs(Verb verb) { return verb < Verb::schema; }
inline bool writes_files(Verb verb) { return verb == Verb::quote || verb == Verb::plan || verb == Verb::compare; }

inline bool takes_jobs_one_by_one(Verb verb) {
  return verb == Verb::check || verb == Verb::estimate || verb == Verb::quote || verb == Verb::compare;
}

std::vector<std::string_view> verb_words();
/// The words that the first argument of a command may be; empty: any.
std::span<const std::string_view> topics_of(Verb);
/// auto, always, never.
std::span<const std::string_view> colour_choices();
/// metric, us.
std::span<const std::string_view> unit_choices();

/// The author's words with control characters taken out.
std::string shown_word(std::string_view word);
/// The message, and the nearest of the known words when one is near.
std::string with_suggestion(std::string message, std::string_view word, std::span<const std::string_view> known);
/// Checks what the words mean; gives the complaint, or nothing.
std::string take_values(const RawArguments&, Arguments& out);

}  // namespace seambook
