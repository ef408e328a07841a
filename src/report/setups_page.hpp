// The set-ups of a station: what changes, by which parameters it is welded, what to wear, with boxes to tick. One block
// a set-up; a block is not cut by the end of a page.
#pragma once

#include <span>

#include "report/plan_setups.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// `set_ups`: those of one station, at least one.
Sheet setups_page(const PlannedShop&, std::span<const PlannedSetUp> set_ups);

}  // namespace seambook
