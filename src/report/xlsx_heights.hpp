// How tall the rows of a sheet are. Spreadsheet programs fit a row to wrapped text by themselves, but not to text in
// merged cells, and they crowd single lines: so single lines get some air, and merged text is measured here.
#pragma once

#include <utility>
#include <vector>

#include "report/workbook.hpp"

namespace seambook {

/// Heights in points by row, ascending. A height that the sheet gives is taken as it is. Rows left out fit themselves.
std::vector<std::pair<std::uint32_t, double>> row_heights(const Sheet&);

}  // namespace seambook
