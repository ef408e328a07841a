// Where the cost of a piece and its minutes come from: by weldment, by labour element, by joint. What is paid by lot or
// once, and overhead added to labour, are not in it.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

inline constexpr const char* breakdown_sheet = "Breakdown";

Sheet breakdown_page(const RateBook&, const Job&, const Estimate&, const Quote&, const ShopPages&, const CostPage&);

}  // namespace seambook
