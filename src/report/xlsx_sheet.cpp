#include "report/xlsx_sheet.hpp"

#include <xlsxwriter.h>

#include <algorithm>
#include <numeric>

#include "report/xlsx_charts.hpp"
#include "report/xlsx_checks.hpp"
#include "report/xlsx_errors.hpp"
#include "report/xlsx_heights.hpp"
#include "report/xlsx_page.hpp"
#include "report/xlsx_rules.hpp"

namespace seambook {
namespace {

using Order = std::vector<std::uint32_t>;

Order reading_order(const Sheet& sheet) {
  Order order(sheet.cells.size());
  std::iota(order.begin(), order.end(), 0U);
  const auto place = [&](std::uint32_t at) { return std::pair(sheet.cells[at].row, sheet.cells[at].column); };
  if (!std::ranges::is_sorted(order, {}, place)) std::ranges::sort(order, {}, place);
  return order;
}

// A figure stands to the right also where it is only a word such as "none".
bool stands_right(const Cell& cell) {
  if (cell.look == Look::figure) return true;
  if (const auto* formula = std::get_if<Formula>(&cell.content)) return std::holds_alternative<double>(formula->value);
  return std::holds_alternative<double>(cell.content);
}

Side side_of_text(const Cell& cell) { return cell.column == 0 ? Side::left : Side::left_with_room; }

// A heading goes with what stands below it in its column.
std::vector<Side> sides(const Sheet& sheet, const Order& order) {
  std::vector<Side> result(sheet.cells.size());
  std::vector<bool> number_below;
  for (std::size_t k = order.size(); k-- > 0;) {
    const auto at = order[k];
    const Cell& cell = sheet.cells[at];
    if (cell.column >= number_below.size()) number_below.resize(cell.column + 1U);
    const bool blank = std::holds_alternative<std::monostate>(cell.content), heading = cell.look == Look::heading;
    if (!blank && !heading) number_below[cell.column] = stands_right(cell);
    const bool at_right = heading ? number_below[cell.column] : stands_right(cell);
    result[at] = at_right ? Side::right : side_of_text(cell);
  }
  return result;
}

double without_sign_of_zero(double value) { return value == 0 ? 0.0 : value; }

void write_formula(lxw_worksheet* page, const Cell& cell, const Formula& formula, lxw_format* format) {
  const std::string text = "=" + formula.text;
  if (const auto* number = std::get_if<double>(&formula.value)) {
    const double value = without_sign_of_zero(*number);
    must(worksheet_write_formula_num(page, cell.row, cell.column, text.c_str(), format, value));
  } else {
    // Not escaped: LibreOffice shows a formula's stored text undecoded.
    const std::string& shown = std::get<std::string>(formula.value);
    must(worksheet_write_formula_str(page, cell.row, cell.column, text.c_str(), format, shown.c_str()));
  }
}

void write_cell(lxw_worksheet* page, const Cell& cell, lxw_format* format) {
  if (const auto* text = std::get_if<std::string>(&cell.content)) {
    must(worksheet_write_string(page, cell.row, cell.column, escaped_text(*text).c_str(), format));
  } else if (const auto* number = std::get_if<double>(&cell.content)) {
    must(worksheet_write_number(page, cell.row, cell.column, without_sign_of_zero(*number), format));
  } else if (const auto* formula = std::get_if<Formula>(&cell.content)) {
    write_formula(page, cell, *formula, format);
  } else {
    must(worksheet_write_blank(page, cell.row, cell.column, format));
  }
}

// A merge writes all its cells, so it comes before the content of the leftmost one.
void write_merges(Looks& looks, lxw_worksheet* page, const Sheet& sheet, const Order& order,
                  const std::vector<Side>& side) {
  const auto place_of = [&](std::uint32_t at) { return std::pair(sheet.cells[at].row, sheet.cells[at].column); };
  const Cell blank;
  for (const Merge& merge : sheet.merges) {
    const std::pair place(merge.row, merge.first_column);
    const auto found = std::ranges::lower_bound(order, place, {}, place_of);
    const bool given = found != order.end() && place_of(*found) == place;
    const Cell& leftmost = given ? sheet.cells[*found] : blank;
    lxw_format* format = format_of(looks, leftmost.look, leftmost.number_format, given ? side[*found] : Side::left);
    must(worksheet_merge_range(page, merge.row, merge.first_column, merge.row, merge.last_column, "", format));
  }
}

void write_cells(Looks& looks, lxw_worksheet* page, const Sheet& sheet) {
  const Order order = reading_order(sheet);
  const std::vector<Side> side = sides(sheet, order);
  write_merges(looks, page, sheet, order, side);
  for (const std::uint32_t at : order) {
    const Cell& cell = sheet.cells[at];
    write_cell(page, cell, format_of(looks, cell.look, cell.number_format, side[at]));
  }
}

}  // namespace

void write_sheet(Looks& looks, lxw_worksheet* page, const Sheet& sheet, bool letter_paper) {
  for (std::size_t at = 0; at < sheet.column_widths.size(); ++at) {
    const auto column = static_cast<std::uint16_t>(at);
    must(worksheet_set_column(page, column, column, sheet.column_widths[at], nullptr));
  }
  write_cells(looks, page, sheet);
  for (const auto& [row, height] : row_heights(sheet)) must(worksheet_set_row(page, row, height, nullptr));
  add_validations(page, sheet);
  add_highlights(looks, page, sheet);
  for (const Chart& chart : sheet.charts) insert_chart(looks.book, page, chart);
  set_page(page, sheet, letter_paper);
  if (sheet.frozen_rows > 0 || sheet.frozen_columns > 0) {
    worksheet_freeze_panes(page, sheet.frozen_rows, sheet.frozen_columns);
  }
  if (sheet.locked) protect(page);
}

}  // namespace seambook
