// Where the program's words go: results to standard output, everything else to standard error.
#pragma once

#include <string>
#include <string_view>

#include "commands/arguments.hpp"

namespace seambook {

/// Sets the logger up: to standard error, without time, in colour as --color says; left to itself, only on a terminal
/// and when NO_COLOR is unset.
void start_log(const Arguments&);
/// Writes to standard output. Throws std::system_error when the system refuses.
void write_result(std::string_view text);
/// Makes sure that all results have arrived. Throws std::system_error when they have not.
void finish_results();
/// An author's words as a terminal may see them: control characters as spaces.
std::string printable_text(std::string_view);
/// How wide a line may be: COLUMNS when it is set, else as the terminal says; no limit where it is none.
std::size_t terminal_columns();
/// Shows messages on standard error.
void write_messages(std::string_view text);
/// Whether standard error is a terminal on which a line may be written again.
bool live_terminal();

}  // namespace seambook
