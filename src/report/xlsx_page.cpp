#include "report/xlsx_page.hpp"

#include <xlsxwriter.h>

#include <algorithm>
#include <cmath>

#include "basics/utf8.hpp"
#include "report/xlsx_checks.hpp"
#include "report/xlsx_errors.hpp"

namespace seambook {

std::string page_line(std::string_view text, bool with_page_number) {
  // The size stands before the font: after it, digits at the beginning of the text would be read as the size.
  const std::string style = "&8&\"Arial,Regular\"";
  const std::string head = "&L" + style, tail = with_page_number ? "&R" + style + "&P / &N" : "";
  constexpr std::size_t limit = 255, ellipsis = 1;
  const std::size_t room = limit - head.size() - tail.size() - ellipsis;
  const std::string given = escaped_text(text);
  std::string body;
  std::size_t length = 0;
  for (std::string_view rest = given; !rest.empty();) {
    const Character next = character_at(rest, 0);
    const bool code_sign = next.code == '&';  // doubled, it is an ordinary character
    length += code_sign || next.code > 0xFFFF ? 2 : 1;
    if (length > room) {
      body += "…";
      break;
    }
    body.append(code_sign ? "&&" : rest.substr(0, next.bytes));
    rest.remove_prefix(next.bytes);
  }
  return head + body + tail;
}

namespace {

/// Whether print on one page across would be too small to read: below about two thirds of the size on the screen.
bool too_wide_for_one(const Sheet& sheet) {
  constexpr double characters_landscape = 200, characters_portrait = 150;
  double width = 0;
  for (const double column : sheet.column_widths) width += column;
  return width > (sheet.landscape ? characters_landscape : characters_portrait);
}

/// Paper and margins in inches.
struct Paper {
  double width, height;
};
constexpr Paper a4{8.27, 11.69}, letter{8.5, 11};
constexpr double left_margin = 0.6, right_margin = 0.5, top_margin = 0.8, bottom_margin = 0.75;

Paper paper_of(const Sheet& sheet, bool letter_paper) {
  const Paper upright = letter_paper ? letter : a4;
  return sheet.landscape ? Paper{upright.height, upright.width} : upright;
}

void set_scale(lxw_worksheet* page, const Sheet& sheet, bool letter_paper) {
  if (!sheet.page_breaks.empty()) {  // breaks count only where the page is scaled, not fitted
    worksheet_set_print_scale(page, static_cast<std::uint16_t>(print_scale(sheet, letter_paper)));
    constexpr std::size_t most_breaks = 1023;  // of the format
    const std::size_t count = std::min(sheet.page_breaks.size(), most_breaks);
    std::vector<lxw_row_t> rows(sheet.page_breaks.begin(),
                                sheet.page_breaks.begin() + static_cast<std::ptrdiff_t>(count));
    rows.push_back(0);  // ends the list
    must(worksheet_set_h_pagebreaks(page, rows.data()));
    return;
  }
  const bool two = sheet.repeat_columns > 0 && too_wide_for_one(sheet);
  worksheet_fit_to_pages(page, two ? 2 : 1, sheet.one_page ? 1 : 0);
  if (two) worksheet_print_across(page);
  if (two) must(worksheet_repeat_columns(page, 0, static_cast<lxw_col_t>(sheet.repeat_columns - 1)));
}

}  // namespace

int print_scale(const Sheet& sheet, bool letter_paper) {
  constexpr double pixels_per_inch = 96, character = 7.5, padding = 6;  // pixels of a column's digit and sides
  constexpr double spare = 0.97;                                        // programs draw digits a little differently
  double pixels = 0;
  for (const double width : sheet.column_widths) pixels += width > 0 ? width * character + padding : 0;
  const double room = paper_of(sheet, letter_paper).width - left_margin - right_margin;
  if (pixels <= 0) return 100;
  return std::clamp(static_cast<int>(std::floor(room * pixels_per_inch * spare / pixels * 100)), 10, 100);
}

double page_height(const Sheet& sheet, bool letter_paper) {
  constexpr double points_per_inch = 72;
  const double room = paper_of(sheet, letter_paper).height - top_margin - bottom_margin;
  return room * points_per_inch / print_scale(sheet, letter_paper) * 100;
}

void set_page(lxw_worksheet* page, const Sheet& sheet, bool letter_paper) {
  constexpr std::uint8_t letter_number = 1, a4_number = 9;  // of the format
  worksheet_set_paper(page, letter_paper ? letter_number : a4_number);
  if (sheet.landscape) worksheet_set_landscape(page);
  set_scale(page, sheet, letter_paper);
  worksheet_set_margins(page, left_margin, right_margin, top_margin, bottom_margin);
  worksheet_gridlines(page, LXW_HIDE_ALL_GRIDLINES);
  if (sheet.repeat_rows) must(worksheet_repeat_rows(page, sheet.repeat_rows->first, sheet.repeat_rows->second));
  if (!sheet.header.empty()) must(worksheet_set_header(page, page_line(sheet.header, false).c_str()));
  must(worksheet_set_footer(page, page_line(sheet.footer, true).c_str()));
}

}  // namespace seambook
