// Assumptions with what they rest on, how procedures were chosen, and the cautions for the processes used.
#pragma once

#include "report/cells.hpp"

namespace seambook {

Sheet notes_page(const Job&, const Quote&);

}  // namespace seambook
