// Formulas of what one weldment costs, by kind, for one piece.
#pragma once

#include <array>

#include "report/shop_pages.hpp"

namespace seambook {

/// One for each kind of cost; `0` where nothing can arise.
std::array<std::string, cost_kinds> weldment_sums(const ShopPages&, const Job&, std::size_t weldment);

}  // namespace seambook
