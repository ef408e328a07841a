// What the estimates' readers add up: a weldment with its own labour and metal, and the whole piece.
#pragma once

#include <array>

#include "quote/quote.hpp"

namespace seambook {

/// For one piece; money by kind, unrounded.
struct PieceTotals {
  Totals welding;  // of its joints
  Time<> floor;    // with fit-up of parts, turning and what is counted by weldment
  Time<> waiting;  // unattended; of joints and weldments
  std::array<double, cost_kinds> cost{};
};

/// Money of welding by kind.
std::array<double, cost_kinds> welding_kinds(const Totals&);
/// Bought lines count when every piece takes them.
PieceTotals weldment_totals(const Job&, const Estimate&, std::size_t weldment);
PieceTotals piece_totals(const Job&, const Estimate&, const Quote&);
double sum_of_kinds(const std::array<double, cost_kinds>&);
std::array<double, cost_kinds> plain_money(const std::array<Money<>, cost_kinds>&);

}  // namespace seambook
