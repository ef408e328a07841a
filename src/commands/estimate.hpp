// seambook estimate: times, materials, cost and price of each job, as tables or JSON.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

/// Gives the exit code.
int run_estimate(const Arguments&);

}  // namespace seambook
