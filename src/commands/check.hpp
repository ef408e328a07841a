// seambook check: reads jobs and rate book as any other command would, tells of every fault and finding, writes
// nothing.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

/// Gives the exit code.
int run_check(const Arguments&);

}  // namespace seambook
