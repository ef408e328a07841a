// seambook plan: the work of all jobs together, in order by set-ups, station by station, as tables and a workbook.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

/// Gives the exit code.
int run_plan(const Arguments&);

}  // namespace seambook
