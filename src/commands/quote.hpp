// seambook quote: a workbook for each job, written whole or not at all.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

/// Gives the exit code.
int run_quote(const Arguments&);

}  // namespace seambook
