// seambook manual: pages in the language of man pages, one a command and one for the program.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

int run_manual(const Arguments&);

}  // namespace seambook
