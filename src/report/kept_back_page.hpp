// What the lists do not hold and what will be late, with reasons and what would help.
#pragma once

#include "report/planned_shop.hpp"
#include "report/workbook.hpp"

namespace seambook {

Sheet kept_back_page(const PlannedShop&);

}  // namespace seambook
