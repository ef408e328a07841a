// The plan as bars drawn in cells: hours across, one row a station and one a welder, set-ups darker than work.
#pragma once

#include "report/dispatch.hpp"
#include "report/workbook.hpp"

namespace seambook {

/// Minutes that a cell of a bar stands for: as few as fit across a page.
std::chrono::minutes bar_step(const std::vector<PlanShift>&);
/// A cell shows what goes on in most of its minutes; the number at the beginning of a bar is the row's on the list.
Sheet bars_page(const PlannedShop&, const std::vector<PlanShift>&, const std::vector<DispatchList>&);
inline constexpr std::uint16_t first_bar_column = 1;

}  // namespace seambook
