// seambook completion: commands, options and their words for bash and zsh, from what the command line itself knows.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

int run_completion(const Arguments&);

}  // namespace seambook
