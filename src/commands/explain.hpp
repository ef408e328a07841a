// seambook explain: where each figure of a job, or of one of its joints, comes from.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

/// Gives the exit code.
int run_explain(const Arguments&);

}  // namespace seambook
