// The heat page: hardening and preheat of every joint, in step with the other pages of joints. What method B asks for
// is a formula with its range as conditions, so that no number shows outside it.
#pragma once

#include <set>

#include "report/joint_pages.hpp"

namespace seambook {

inline constexpr const char* heat_sheet = "Heat";

std::vector<const Figure*> heat_columns();
/// Figures that have a column though no formula reads them: what the joint states.
void add_stated_heat(const Joint&, std::set<const Figure*>& found);
/// Headings of the two columns beside the figures; true when the job has anything for the page.
bool lay_out_heat(const RateBook&, const std::set<const Figure*>& found, Sheet&, std::uint16_t column);
/// Cells of a joint that are no plain figures: preheat stated as none, and in the last two of `columns` heat input and
/// what method B asks for.
void put_heat(const RateBook&, const Joint&, const RowFigures<double>&, const Tape&, const Table&, const SharedCells&,
              std::uint16_t columns, Sheet&, std::uint32_t row);

}  // namespace seambook
