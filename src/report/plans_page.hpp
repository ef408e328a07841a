// This plan against others of the same work: what is late, what set-ups take and cost, how far the stations are used.
#pragma once

#include "report/planned_shop.hpp"
#include "report/workbook.hpp"

namespace seambook {

Sheet plans_page(const PlannedShop&);

}  // namespace seambook
