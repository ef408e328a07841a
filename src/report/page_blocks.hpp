// Blocks of rows on printed pages: a block that fits on a page is not cut.
#pragma once

#include <span>

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

/// Widens `columns` by steps until each block stands whole on a page of its own: their words take fewer lines, and the
/// page is printed smaller. Columns keep their widths where that takes more than `most` times of them. Call it before
/// the pages are broken.
void widen_until_whole(Sheet&, const std::vector<PageBlock>& blocks, std::span<const std::uint16_t> columns,
                       double most, bool letter_paper);

/// Prints the sheet on one page where it is hardly longer than one: a few rows alone on a second sheet get lost.
void keep_on_one_page(Sheet&, bool letter_paper);

}  // namespace seambook
