// What of each unit price falls to which weldment, by its share of the cost of a piece.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

/// The lines that share: rows of `cost_column` from `first_row` on, one for each of `costs`, words in column 0.
struct SplitLines {
  std::uint32_t first_row = 0;
  std::uint16_t cost_column = 0;
  std::vector<double> costs;
  std::vector<std::string> words;
};
/// Writes the table below a heading in `row`; gives the next free row.
std::uint32_t put_price_split(Sheet&, std::uint32_t row, const RateBook&, const Quote&, const CostPage&,
                              const SplitLines&);

}  // namespace seambook
