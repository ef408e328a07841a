// The page for the customer: what is offered, at what price, on which terms. No hours, no margin.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

inline constexpr const char* quote_sheet = "Quote";

Sheet customer_page(const RateBook&, const Job&, const Quote&, const CostPage&);

}  // namespace seambook
