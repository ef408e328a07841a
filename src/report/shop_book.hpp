// The plan of a shop as a workbook: the morning's page, bars, a list and set-up sheets for each station, travellers,
// what is kept back, what to fetch, other plans beside it, cautions.
#pragma once

#include "report/planned_shop.hpp"
#include "report/workbook.hpp"

namespace seambook {

Workbook plan_workbook(const PlannedShop&);

}  // namespace seambook
