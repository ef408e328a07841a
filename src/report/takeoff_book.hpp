// A workbook to fill in: joints as rows under headings that a take-off reads, with rules for what a column admits.
#pragma once

#include "basics/shown_units.hpp"
#include "report/workbook.hpp"
#include "text/unit_words.hpp"

namespace seambook {

/// Sheets Joints (to fill in), Example (filled in) and Columns (what each may hold). By `terms` in mm with ISO 6947
/// positions, or in inches, whose columns are text so that 3/16 stays what it is, with AWS ones.
Workbook takeoff_book(Terms terms, Date);

}  // namespace seambook
