// The words of the command line become plain values: which command, which jobs, which options.
// Holds afterwards: exactly the options that the command knows are set; a command for jobs has at least one.
// Nothing here prints or opens a file.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "text/clock_words.hpp"

namespace seambook {

enum class Verb : std::uint8_t {
  check,
  estimate,
  explain,
  quote,
  plan,
  compare,
  rates,
  schema,
  completion,
  manual,
  begin
};  // begin: `new`

/// Exit codes of the program.
namespace exit_code {
inline constexpr int done = 0;
inline constexpr int faults = 1;   // a job or the rate book has faults; good jobs of the batch are done all the same
inline constexpr int usage = 2;    // the command line is wrong
inline constexpr int refused = 3;  // the system refused: disk, rights, memory
}  // namespace exit_code

/// When messages are coloured: on a terminal unless NO_COLOR is set, always, never.
enum class Colour : std::uint8_t { automatic, always, never };

struct Arguments {
  Verb verb = Verb::check;
  std::vector<std::string> jobs;       // paths; `-` is standard input
  std::optional<std::string> joint;    // explain: `weldment/id` or `id`
  std::optional<std::string> rates;    // folder
  std::string out = "out";             // folder
  std::optional<std::string> against;  // quote: the JSON of a previous one
  std::optional<std::string> day;      // plan: the day file
  std::optional<std::string> from;     // plan: the JSON of the plan to stay close to
  std::optional<std::string> verify;   // plan: the JSON of a plan to check
  std::optional<std::string> order;    // plan: somebody's own order of work, CSV
  std::optional<Moment> now;           // plan: nothing begins before; nothing: the date's first shift
  double seconds = 0;                  // plan: of processor time for the search; 0: counted moves
  std::optional<Date> date;            // nothing: today
  std::size_t threads = 0;             // 0: one for each core
  std::size_t shard = 1, shards = 1;   // every `shards`-th job of the list, from the `shard`-th on
  bool force = false, json = false, quiet = false, verbose = false;
  std::string topic;       // schema: of what; completion: which shell; manual: of which command, empty: all
  int older_than = 12;     // rates: months after which a price is old
  bool reference = false;  // schema: the keys as Markdown in its place
  Colour colour = Colour::automatic;
  bool strict = false;                      // warnings are faults
  bool customer_only = false;               // quote: the customer's page alone, as plain numbers
  std::optional<std::string> folder;        // new: where to write
  std::optional<std::string> takeoff;       // new: the workbook to write
  std::optional<std::string> from_takeoff;  // new: the take-off to write a job around
  bool us = false;                          // new: US customary units
};

/// Either `arguments`, or a text to show and the exit code to end with. Help and version go to standard output,
/// complaints to standard error.
struct CommandLine {
  std::optional<Arguments> arguments;
  std::string text;
  int code = exit_code::done;
};

/// `words` without the program's own name.
CommandLine read_command_line(const std::vector<std::string>& words);

}  // namespace seambook
