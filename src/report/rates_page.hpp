// The rates page: every number of the rate book that the quote reads, its original value beside it, and what it rests
// on.
#pragma once

#include "report/cells.hpp"

namespace seambook {

/// Cells of the rate-book numbers, before the page is made: `Rates!$C$5` and on, in the rate book's order.
SharedCells rate_cells(const RateBook&, const std::vector<SourceId>& used);
Sheet rates_page(const RateBook&, const std::vector<SourceId>& used);

}  // namespace seambook
