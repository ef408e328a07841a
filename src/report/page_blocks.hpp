// Blocks of rows on printed pages: a block that fits on a page is not cut.
#pragma once

#include "report/workbook.hpp"

namespace seambook {

/// A row with which a block begins; the block ends where the next one begins, the last one with the sheet.
struct PageBlock {
  std::uint32_t row = 0;
  bool own_page = false;  // begins a page in any case, else only where it does not fit on what is left of one
};

/// Sets the page breaks; `blocks` ascending. What stands above the first block shares its page. Call it last: it
/// measures the rows.
void break_pages(Sheet&, const std::vector<PageBlock>& blocks, bool letter_paper);

}  // namespace seambook
