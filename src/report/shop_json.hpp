// The plan of a shop as JSON. Figures are stable and carry their unit in the key; times are ISO 8601 without a zone, in
// the shop's local time.
#pragma once

#include <vector>

#include "report/json_document.hpp"
#include "report/planned_shop.hpp"

namespace seambook {

/// The members `stations`, `away`, `done` and `under_way` before it began, `undone`, `blocked`, `late`,
/// `over_capacity`, `remedies`, `levels` and `plans` of the document.
std::vector<JsonMember> plan_members(const PlannedShop&);

}  // namespace seambook
