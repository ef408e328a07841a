// The price of each quantity, step by step, as the cost page shows it: figures stand below each other, quantities
// beside each other.
#pragma once

#include "report/cost_page.hpp"

namespace seambook {

/// Rows of costs and prices, fixed before formulas refer to them.
struct PriceRows {
  std::uint32_t overhead = 0, total = 0;  // below the costs by kind
  std::uint32_t order = 0;                // first of what the job adds: mass, freight
  std::vector<const Figure*> order_figures;
  std::uint32_t heading = 0;
  std::vector<const Figure*> figures;  // from the row below the heading

  std::uint32_t of(const Figure&) const;
  std::uint32_t after() const { return heading + 1 + static_cast<std::uint32_t>(figures.size()); }
};

/// The figures that this policy gives, below the costs by kind.
PriceRows price_rows(const QuoteInputs<double>&);
/// Writes overhead, what the job adds, and the price of each of `quantities`. `piece_mass` is the formula of the mass
/// of a piece.
void put_price_steps(Sheet&, const PriceRows&, const RateBook&, const std::vector<std::int64_t>& quantities,
                     const QuoteInputs<Sourced>&, const SharedCells&, const std::string& piece_mass);

}  // namespace seambook
