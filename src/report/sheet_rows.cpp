#include "report/sheet_rows.hpp"

#include <algorithm>
#include <stdexcept>

namespace seambook {
namespace {

using Cells = std::vector<const Cell*>;

Cells in_reading_order(const std::vector<Cell>& cells) {
  Cells order;
  order.reserve(cells.size());
  for (const Cell& cell : cells) order.push_back(&cell);
  const auto place = [](const Cell* cell) { return std::pair(cell->row, cell->column); };
  if (!std::ranges::is_sorted(order, {}, place)) std::ranges::stable_sort(order, {}, place);
  return order;
}

/// Gives out rows of cells in reading order.
class RowsOf {
 public:
  explicit RowsOf(RowCells cells) : rest_(cells) {}
  bool empty() const { return rest_.empty(); }
  std::uint32_t row() const { return rest_.front()->row; }
  RowCells next() {
    const std::uint32_t of = row();
    const auto end = std::ranges::find_if(rest_, [of](const Cell* cell) { return cell->row != of; });
    const RowCells cells = rest_.first(static_cast<std::size_t>(end - rest_.begin()));
    rest_ = rest_.subspan(cells.size());
    return cells;
  }

 private:
  RowCells rest_;
};

}  // namespace

void each_row(const Sheet& sheet, const std::function<void(RowCells)>& f) {
  const Cells held = in_reading_order(sheet.cells);
  RowsOf rows(held);
  std::vector<Cell> made;
  std::uint32_t free_row = 0;  // the first that no row made so far has taken
  for (std::size_t block = 0; block < sheet.later.blocks; ++block) {
    made.clear();
    sheet.later.make(block, made);
    const Cells order = in_reading_order(made);
    if (order.empty()) continue;
    while (!rows.empty() && rows.row() < order.front()->row) free_row = rows.row() + 1, f(rows.next());
    if (order.front()->row < free_row || (!rows.empty() && rows.row() <= order.back()->row))
      throw std::invalid_argument(sheet.name + ": rows made later stand among others");
    for (RowsOf of_block(order); !of_block.empty();) f(of_block.next());
    free_row = order.back()->row + 1;
  }
  while (!rows.empty()) f(rows.next());
}

void each_held_row(const Sheet& sheet, const std::function<void(RowCells)>& f) {
  const Cells held = in_reading_order(sheet.cells);
  for (RowsOf rows(held); !rows.empty();) f(rows.next());
}

void hold_rows(Sheet& sheet) {
  for (std::size_t block = 0; block < sheet.later.blocks; ++block) sheet.later.make(block, sheet.cells);
  sheet.later = {};
}

void hold_rows(Workbook& workbook) {
  for (Sheet& sheet : workbook.sheets) hold_rows(sheet);
}

std::map<std::uint32_t, RowMarks> row_marks(const Sheet& sheet) {
  std::map<std::uint32_t, RowMarks> marks;
  for (const auto& [row, height] : sheet.row_heights) marks[row].height = height;
  for (const Merge& merge : sheet.merges) marks[merge.row].merges.push_back(merge);
  return marks;
}

RowMarks marks_of(const std::map<std::uint32_t, RowMarks>& marks, std::uint32_t row) {
  const auto of = marks.find(row);
  return of == marks.end() ? RowMarks{} : of->second;
}

}  // namespace seambook
