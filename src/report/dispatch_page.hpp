// What a station does in turn, a page for each shift, with room to write down what really happened.
#pragma once

#include "report/dispatch.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// `lists`: those of one station, at least one.
Sheet dispatch_page(const PlannedShop&, const std::vector<PlanShift>&, std::span<const DispatchList> lists);
/// The joints of a row with what is done to them: `3 (W-17), 4: root`; what goes over the shift's end is said.
std::string row_work_words(const PlannedShop&, const DispatchRow&);

}  // namespace seambook
