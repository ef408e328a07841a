// A plan beside another one: what a plan that was checked comes to, and what this plan moved against the one it
// follows.
#pragma once

#include <string>

#include "report/planned_shop.hpp"
#include "report/terminal.hpp"

namespace seambook {

/// `no rule is broken; late 0 min, set-ups 161 min ...`, or how many are. Ends with a line break.
std::string checked_text(const Levels&, std::size_t broken);
/// JSON text of the member `levels`.
std::string checked_json(const Levels&);
/// A table of what moved; empty where nothing did.
std::string moved_text(const PlannedShop&, std::size_t columns = any_width);
/// JSON text of the member `moved`.
std::string moved_json(const PlannedShop&);

}  // namespace seambook
