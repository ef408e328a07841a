// The first page for the shop: what each quantity brings, the hours behind it and what they say, what moves the price
// most, what to look at again.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

inline constexpr const char* overview_sheet = "Overview";

/// `findings` of the quote's notes.
Sheet overview_page(const RateBook&, const Job&, const Estimate&, const Quote&, const std::vector<Diagnostic>& findings,
                    const CostPage&, const ShopPages&);

}  // namespace seambook
