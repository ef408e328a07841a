// What an estimator may do on a sheet: which values an input admits, which rows are tinted, what is locked.
#pragma once

#include "report/workbook.hpp"
#include "report/xlsx_looks.hpp"

struct lxw_worksheet;

namespace seambook {

/// Equal rules of cells that follow each other in a column become one rule of a range, over cells without a rule too;
/// the library counts rules in one byte, so more than 255 of those on a sheet throw std::invalid_argument.
void add_validations(lxw_worksheet*, const Sheet&);
void add_highlights(Looks&, lxw_worksheet*, const Sheet&);
/// Without a password: against slips, not against people.
void protect(lxw_worksheet*);

}  // namespace seambook
