// One sheet of a checked workbook handed to the spreadsheet library. Cells go in reading order whatever their order
// in the value.
#pragma once

#include "report/workbook.hpp"
#include "report/xlsx_looks.hpp"

struct lxw_worksheet;

namespace seambook {

/// Requires: a checked workbook (report/xlsx_checks.hpp).
void write_sheet(Looks&, lxw_worksheet*, const Sheet&, bool letter_paper);
}  // namespace seambook
