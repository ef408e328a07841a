// The floor time of a piece by labour element, with a picture; what access and rest add closes the sum.
#pragma once

#include "report/shop_pages.hpp"

namespace seambook {

/// Gives the next free row. `floor` is that of a piece.
std::uint32_t put_element_minutes(Sheet&, std::uint32_t row, const RateBook&, const Estimate&, Time<> floor,
                                  const ShopPages&);

}  // namespace seambook
