// How tall the rows of a sheet are. Spreadsheet programs do not all fit a row to wrapped text when they open a file,
// none fits it to merged cells, and they crowd single lines: so text is measured here, and single lines get some air.
#pragma once

#include <utility>
#include <vector>

#include "report/workbook.hpp"

namespace seambook {

/// Heights in points by row, ascending. A height that the sheet gives is taken as it is.
std::vector<std::pair<std::uint32_t, double>> row_heights(const Sheet&);

}  // namespace seambook
