// How tall the rows of a sheet are. Spreadsheet programs do not all fit a row to wrapped text when they open a file,
// none fits it to merged cells, and they crowd single lines: so text is measured here, and single lines get some air.
#pragma once

#include "report/sheet_rows.hpp"

namespace seambook {

/// In points. A height that the sheet gives is taken as it is.
double row_height(const Sheet&, RowCells, const RowMarks&);
/// Of the rows that the sheet holds, and those that a height is given for; rows made later are about a line each.
std::map<std::uint32_t, double> row_heights(const Sheet&);

}  // namespace seambook
