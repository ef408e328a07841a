// How a sheet prints: paper, margins, one page wide, rows repeated on each page, what stands above and below.
#pragma once

#include <string>
#include <string_view>

#include "report/workbook.hpp"

struct lxw_worksheet;

namespace seambook {

/// Share of the size on the screen, in whole percent, at which all columns stand on one page across.
int print_scale(const Sheet&, bool letter_paper);
/// Height of the rows that one page takes at that scale, in points; repeated rows take of it.
double page_height(const Sheet&, bool letter_paper);
void set_page(lxw_worksheet*, const Sheet&, bool letter_paper);
/// `text` on the left and, when asked for, the page number on the right, in the format's own code. The format grants
/// 255 characters; longer text is cut and ends in `…`.
std::string page_line(std::string_view text, bool with_page_number);

}  // namespace seambook
