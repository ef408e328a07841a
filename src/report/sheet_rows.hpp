// The rows of a sheet in reading order, those it holds and those that are made later.
#pragma once

#include <functional>
#include <map>
#include <span>

#include "report/workbook.hpp"

namespace seambook {

/// The cells of one row by column.
using RowCells = std::span<const Cell* const>;

/// Calls f for every row that has cells, from the top. The cells live during the call only. Throws
/// std::invalid_argument where rows made later do not ascend, or lie in the rows that the sheet holds.
void each_row(const Sheet&, const std::function<void(RowCells)>& f);
/// Only the rows that the sheet holds.
void each_held_row(const Sheet&, const std::function<void(RowCells)>& f);
/// Makes all rows that were left for later, so that the sheet holds every cell.
void hold_rows(Sheet&);
void hold_rows(Workbook&);

/// What a sheet says of a row beside its cells.
struct RowMarks {
  std::optional<double> height;  // points
  std::vector<Merge> merges;
};
std::map<std::uint32_t, RowMarks> row_marks(const Sheet&);
/// Those of a row; none where nothing is said of it.
RowMarks marks_of(const std::map<std::uint32_t, RowMarks>&, std::uint32_t row);

}  // namespace seambook
