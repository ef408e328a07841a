// Formulas that gather the pages' costs by kind.
#pragma once

#include <array>

#include "report/shop_pages.hpp"

namespace seambook {

/// One formula for each kind of cost and scaling; `0` where nothing can arise.
struct CostSums {
  std::array<std::string, cost_kinds> each, lot, once;
};
CostSums cost_sums(const ShopPages&);

}  // namespace seambook
