// What would help against lateness, each tried by planning again: overtime, fit-up by others, more welders qualified.
#pragma once

#include "schedule/shop_work.hpp"

namespace seambook {

struct Remedy {
  std::string what;
  Levels before, after;
  std::optional<Money<>> price;  // of the overtime premium; absent: not known
};

/// Those that make less late, or more possible; none where nothing is late. The budget is for each.
std::vector<Remedy> remedies(const WorkToPlan&, const Plan&, const PlanBudget&);

}  // namespace seambook
