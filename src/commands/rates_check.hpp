// seambook rates check: what to look at again in a rate book.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

int run_rates_check(const Arguments&);

}  // namespace seambook
