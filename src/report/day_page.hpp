// The first page of a plan, for the morning: what cannot go ahead, what will be late, who does what next, where work
// stops, what to bring, and how good the plan is.
#pragma once

#include "report/fetch_list.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// What the first page looks at: the shifts of the plan with their lists and materials.
struct ShiftWork {
  std::vector<PlanShift> shifts;
  std::vector<DispatchList> lists;
  std::vector<Fetched> fetched;
};
ShiftWork shift_work(const PlannedShop&);

Sheet day_page(const PlannedShop&, const ShiftWork&);

}  // namespace seambook
