// How a sheet prints: paper, margins, one page wide, rows repeated on each page, what stands above and below.
#pragma once

#include <string>
#include <string_view>

#include "report/workbook.hpp"

struct lxw_worksheet;

namespace seambook {

void set_page(lxw_worksheet*, const Sheet&, bool letter_paper);
/// `text` on the left and, when asked for, the page number on the right, in the format's own code. The format grants
/// 255 characters; longer text is cut and ends in `…`.
std::string page_line(std::string_view text, bool with_page_number);

}  // namespace seambook
