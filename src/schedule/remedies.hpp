// What would help against lateness, each tried by planning again: overtime, fit-up by others, more welders qualified.
#pragma once

#include "schedule/shop_work.hpp"

namespace seambook {

/// What would help: `overtime after every shift that allows it`.
struct Remedy {
  std::string what;
  std::int64_t late_before = 0, late_after = 0;      // weighted seconds, all orders together
  std::int64_t undone_before = 0, undone_after = 0;  // tasks that cannot be done
  std::optional<Money<>> price;                      // of the overtime premium; absent: not known
};

/// Those that make less late, or more possible; none where nothing is late. The budget is for each.
std::vector<Remedy> remedies(const WorkToPlan&, const Plan&, const PlanBudget&);

}  // namespace seambook
