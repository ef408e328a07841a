// The names in a workbook: of sheets, of cells, and of ranges that charts draw from.
#pragma once

#include <string_view>

#include "report/workbook.hpp"

namespace seambook {

/// Each throws std::invalid_argument at the first name that spreadsheet programs refuse. Names that differ only in
/// case are the same name to them.
void check_sheet_names(const Workbook&);
void check_defined_names(const Workbook&);
/// `Costs!$A$3:$A$9` or `'Weld sequence'!$B$2` of a sheet that exists.
bool is_chart_range(const Workbook&, std::string_view range);

}  // namespace seambook
