// What each family saves a metre and a year, scenario by scenario: links to the families' sums, then formulas.
#pragma once

#include "report/named_cells.hpp"
#include "report/ways_page.hpp"

namespace seambook {

inline constexpr const char* saving_sheet = "Saving";

struct SavingPage {
  Sheet sheet;
  /// First and last row of a scenario's families.
  std::vector<std::pair<std::uint32_t, std::uint32_t>> rows;
};

/// Lays the page out and adds its cells to `cells`; they are written by put_saving, when all cells are known.
SavingPage saving_page(const RateBook&, const Comparison&, const WaysPage&, NamedCells& cells);
void put_saving(SavingPage&, const Tape&, const NamedCells&, const SharedCells&);
/// `SUM(Saving!H5:H9)` of a figure of one scenario's families.
std::string saving_sum(const SavingPage&, const NamedCells&, const Figure&, std::size_t scenario, std::size_t families);

}  // namespace seambook
