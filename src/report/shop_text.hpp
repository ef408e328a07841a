// The plan of a shop for a terminal: what cannot go ahead and what will be late first, then a table a station, how good
// the plan is, and other plans beside it.
#pragma once

#include <string>

#include "report/planned_shop.hpp"
#include "report/terminal.hpp"

namespace seambook {

/// Ends with a line break.
std::string plan_text(const PlannedShop&, std::size_t columns = any_width);

}  // namespace seambook
