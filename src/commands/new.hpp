// Something to begin with: a small job with a rate book, a workbook to fill in, or a job around a take-off.
// Nothing that exists is overwritten.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

int run_new(const Arguments&);

}  // namespace seambook
