// seambook schema: what may stand in a file, or what a document holds, as JSON Schema.
#pragma once

#include "commands/arguments.hpp"

namespace seambook {

int run_schema(const Arguments&);

}  // namespace seambook
