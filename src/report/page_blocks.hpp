// Blocks of rows on printed pages: a block that fits on a page is not cut.
#pragma once

#include "report/workbook.hpp"

namespace seambook {

/// Whether each block begins a page, or only one that no longer fits on what is left of the page.
enum class Blocks : std::uint8_t { fill_pages, each_its_page };

/// Sets the page breaks. `blocks` are the rows with which blocks begin, ascending; the last one ends with the sheet.
/// What stands above the first block shares its page. Call it last: it measures the rows.
void break_pages(Sheet&, const std::vector<std::uint32_t>& blocks, bool letter_paper, Blocks);

}  // namespace seambook
