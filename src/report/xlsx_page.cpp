#include "report/xlsx_page.hpp"

#include <xlsxwriter.h>

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

}  // namespace

void set_page(lxw_worksheet* page, const Sheet& sheet, bool letter_paper) {
  constexpr std::uint8_t letter = 1, a4 = 9;  // the format's numbers for paper sizes
  worksheet_set_paper(page, letter_paper ? letter : a4);
  if (sheet.landscape) worksheet_set_landscape(page);
  const bool two = sheet.repeat_columns > 0 && too_wide_for_one(sheet);
  worksheet_fit_to_pages(page, two ? 2 : 1, 0);
  if (two) worksheet_print_across(page);
  if (two) must(worksheet_repeat_columns(page, 0, static_cast<lxw_col_t>(sheet.repeat_columns - 1)));
  worksheet_set_margins(page, 0.6, 0.5, 0.8, 0.75);  // inches: left, right, top, bottom
  worksheet_gridlines(page, LXW_HIDE_ALL_GRIDLINES);
  if (sheet.repeat_rows) must(worksheet_repeat_rows(page, sheet.repeat_rows->first, sheet.repeat_rows->second));
  if (!sheet.header.empty()) must(worksheet_set_header(page, page_line(sheet.header, false).c_str()));
  must(worksheet_set_footer(page, page_line(sheet.footer, true).c_str()));
}

}  // namespace seambook
