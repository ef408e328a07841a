#include "report/xlsx_sheet.hpp"

#include <xlsxwriter.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <set>

#include "report/xlsx_charts.hpp"
#include "report/xlsx_checks.hpp"
#include "report/xlsx_errors.hpp"
#include "report/xlsx_heights.hpp"
#include "report/xlsx_page.hpp"
#include "report/xlsx_rules.hpp"

namespace seambook {
namespace {

// A figure stands to the right also where it is only a word such as "none".
bool stands_right(const Cell& cell) {
  if (cell.look == Look::figure) return true;
  if (const auto* formula = std::get_if<Formula>(&cell.content)) return std::holds_alternative<double>(formula->value);
  return std::holds_alternative<double>(cell.content);
}

Side side_of_text(const Cell& cell) { return cell.column == 0 ? Side::left : Side::left_with_room; }

// Which columns hold numbers, as far as it is known; the nearest cell below a heading tells.
using NumberColumns = std::map<std::uint16_t, bool>;

std::uint32_t first_later_row(const LaterRows& later) {
  std::vector<Cell> cells;
  for (std::size_t block = 0; block < later.blocks && cells.empty(); ++block) later.make(block, cells);
  return cells.empty() ? std::numeric_limits<std::uint32_t>::max() : std::ranges::min(cells, {}, &Cell::row).row;
}

void learn(NumberColumns& columns, const Cell& cell) {
  if (!std::holds_alternative<std::monostate>(cell.content)) columns.insert_or_assign(cell.column, stands_right(cell));
}

// From rows that are made later, the first ones: all of them would take as long as the sheet.
void learn_from_later(NumberColumns& columns, const LaterRows& later) {
  constexpr std::size_t blocks_tried = 100;
  std::vector<Cell> cells;
  for (std::size_t block = 0; block < std::min(later.blocks, blocks_tried); ++block) later.make(block, cells);
  std::ranges::reverse(cells);
  for (const Cell& cell : cells) learn(columns, cell);
}

// A heading goes with what stands below it in its column.
std::set<const Cell*> headings_at_right(const Sheet& sheet) {
  std::vector<const Cell*> cells;
  cells.reserve(sheet.cells.size());
  for (const Cell& cell : sheet.cells) cells.push_back(&cell);
  std::ranges::stable_sort(cells, std::greater<>(), [](const Cell* cell) { return cell->row; });
  const std::uint32_t later_from = first_later_row(sheet.later);
  std::set<const Cell*> found;
  NumberColumns numbers;
  bool learnt = false;
  for (const Cell* cell : cells) {
    if (!learnt && cell->row < later_from) learn_from_later(numbers, sheet.later), learnt = true;
    if (cell->look != Look::heading)
      learn(numbers, *cell);
    else if (const auto column = numbers.find(cell->column); column != numbers.end() && column->second)
      found.insert(cell);
  }
  return found;
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

// One row after the other, as the library takes them where it holds no more than one.
class RowWriter {
 public:
  RowWriter(Looks& looks, lxw_worksheet* page, const Sheet& sheet)
      : looks_(looks), page_(page), sheet_(sheet), marks_(row_marks(sheet)), at_right_(headings_at_right(sheet)) {}

  void write_all() {
    auto next = marks_.begin();  // rows that have marks and no cells come between
    each_row(sheet_, [&](RowCells cells) {
      const std::uint32_t row = cells.front()->row;
      while (next != marks_.end() && next->first < row) write_marks(next->first, next->second), ++next;
      const bool marked = next != marks_.end() && next->first == row;
      write_row(cells, marked ? next->second : RowMarks{});
      if (marked) ++next;
    });
    for (; next != marks_.end(); ++next) write_marks(next->first, next->second);
  }

 private:
  Side side_of(const Cell& cell) const {
    const bool at_right = cell.look == Look::heading ? at_right_.contains(&cell) : stands_right(cell);
    return at_right ? Side::right : side_of_text(cell);
  }
  lxw_format* format(const Cell& cell) { return format_of(looks_, cell.look, cell.number_format, side_of(cell)); }

  void write_marks(std::uint32_t row, const RowMarks& marks) {
    if (marks.height) must(worksheet_set_row(page_, row, *marks.height, nullptr));
    for (const Merge& merge : marks.merges) write_merge(merge, format_of(looks_, Look::text, "", Side::left));
  }
  void write_merge(const Merge& merge, lxw_format* format) {
    must(worksheet_merge_range(page_, merge.row, merge.first_column, merge.row, merge.last_column, "", format));
  }
  void write_row(RowCells cells, const RowMarks& marks) {
    check_row(sheet_, cells, marks);
    must(worksheet_set_row(page_, cells.front()->row, row_height(sheet_, cells, marks), nullptr));
    for (const Merge& merge : marks.merges) {  // writes all its cells, so it comes before the leftmost one's content
      const auto leftmost = std::ranges::find(cells, merge.first_column, &Cell::column);
      write_merge(merge, leftmost != cells.end() ? format(**leftmost) : format_of(looks_, Look::text, "", Side::left));
    }
    for (const Cell* cell : cells) write_cell(page_, *cell, format(*cell));
  }

  Looks& looks_;
  lxw_worksheet* page_;
  const Sheet& sheet_;
  std::map<std::uint32_t, RowMarks> marks_;
  std::set<const Cell*> at_right_;
};

}  // namespace

void write_sheet(Looks& looks, lxw_worksheet* page, const Sheet& sheet, bool letter_paper) {
  for (std::size_t at = 0; at < sheet.column_widths.size(); ++at) {
    const auto column = static_cast<std::uint16_t>(at);
    must(worksheet_set_column(page, column, column, sheet.column_widths[at], nullptr));
  }
  RowWriter(looks, page, sheet).write_all();
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
