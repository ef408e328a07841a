// The page for the customer: what is offered, at what price, on which terms. No hours, no margin.
#pragma once

#include "report/cost_page.hpp"
#include "report/customer_words.hpp"

namespace seambook {

inline constexpr const char* quote_sheet = customer_words::sheet;

/// With cost pages, the job's first and then one for each option, prices are links to their cells; without any they
/// stand as plain numbers.
Sheet customer_page(const RateBook&, const Job&, const Quote&, const std::vector<const CostPage*>&);
/// A workbook of that page alone, to send away: plain numbers, no names, no properties but its title and the shop.
Workbook customer_workbook(const RateBook&, const Job&, const Quote&);

}  // namespace seambook
