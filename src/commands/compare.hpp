// The command that compares processes.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

/// Writes a comparison workbook for each job. Gives the exit code.
int run_compare(const Arguments&);

}  // namespace seambook
