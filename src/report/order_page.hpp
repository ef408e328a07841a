// What has to be ordered for the quote's first quantity: fillers in whole packs, fluxes, gases, base metal, bought
// lines, each with its money. Packs are for the buyer: the price holds what is used.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

inline constexpr const char* order_sheet = "To order";

Sheet order_page(const RateBook&, const Job&, const Estimate&, const CostPage&, const ShopPages&, const SharedCells&);

}  // namespace seambook
