// The cells of one sheet that hold something, in reading order.
#pragma once

#include <vector>

#include "text/sheet_formats.hpp"

namespace seambook {

/// What cells of a workbook refer to.
struct CellContext {
  std::vector<std::string> strings;
  std::vector<NumberLook> looks;
  bool from_1904 = false;
};

/// A cell's text, or why it has none that can be read.
struct SheetCell {
  InputField field;  // its place counts rows and columns; the file is left open
  std::string problem, hint;
};

struct SheetCells {
  std::vector<SheetCell> cells;
  std::vector<Place> merged;    // the first cell of each merged range that holds more than one row or column
  std::size_t hidden_rows = 0;  // that hold cells
  std::string problem, hint;    // of the sheet as a whole: then there are no cells
};

SheetCells sheet_cells(const std::string& part, const CellContext&);

}  // namespace seambook
