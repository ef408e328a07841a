// Charts of a sheet in the colours of the workbook. The first row of a bar chart's range is drawn on top, as in the
// table.
#pragma once

#include "report/workbook.hpp"

struct lxw_workbook;
struct lxw_worksheet;

namespace seambook {

/// Requires: a checked workbook (report/xlsx_checks.hpp).
void insert_chart(lxw_workbook*, lxw_worksheet*, const Chart&);

}  // namespace seambook
