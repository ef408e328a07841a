// The commands: their words, what they do, what the manual says beside their options, and examples.
#pragma once

#include <span>
#include <string_view>

#include "commands/arguments.hpp"

namespace seambook {

struct VerbInfo {
  std::string_view word, about;
  std::string_view notes;     // paragraphs, an empty line between them
  std::string_view examples;  // one a line
};

/// One for each Verb, in its order.
std::span<const VerbInfo> verbs();
inline const VerbInfo& verb_info(Verb verb) { return verbs()[static_cast<std::size_t>(verb)]; }

/// What holds for every command: where the rate book is found, and the exit codes.
inline constexpr std::string_view common_notes =
    "The rate book is the folder given by --rates; else a folder 'rates' beside the job or above it; else\n"
    "~/.config/seambook/rates; else the one that was installed with the program.\n"
    "Exit codes: 0 done, 1 a job has faults (good jobs are done all the same), 2 wrong usage, 3 the system refused.\n";

/// An option or argument of a command, as help, manual and completion show it.
struct OptionInfo {
  std::string name;  // `--rates`; arguments have their word: `JOB...`
  std::string type;  // `DIR`; empty: a flag
  std::string about, preset;
  std::vector<std::string> choices;
  bool argument = false, required = false;
};
std::vector<OptionInfo> options_of(Verb);

}  // namespace seambook
