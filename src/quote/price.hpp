// Cost becomes money, written once for plain and traced numbers. Only here is anything rounded.
#pragma once

#include <array>

#include "estimate/figures.hpp"
#include "quote/figures.hpp"
#include "resolve/rate_book.hpp"
#include "trade/economics.hpp"
#include "trade/labour.hpp"

namespace seambook {

enum class CostKind : std::uint8_t {
  labour,
  set_up,
  equipment,
  filler,
  gas,
  power,
  wear,
  base_metal,
  cutting,
  outside,
  other
};
inline constexpr std::size_t cost_kinds = 11;
inline constexpr std::array<const char*, cost_kinds> cost_kind_words = {
    "labour",     "set-up labour", "equipment", "filler",       "gas",  "power",
    "wear parts", "base metal",    "cutting",   "outside work", "other"};

inline CostKind cost_kind(BoughtKind kind) {
  constexpr std::array kinds = {CostKind::base_metal, CostKind::cutting, CostKind::outside, CostKind::other};
  return kinds[static_cast<std::size_t>(kind)];
}

/// Costs by kind, and the policy that makes a price of them.
template <class N>
struct QuoteInputs {
  std::array<Money<N>, cost_kinds> each, lot, once;
  Ratio<N> overhead, contingency, margin, markup;
  Money<N> minimum_charge;
  bool by_margin = true, overhead_added = false, has_minimum = false;
  int digits = 2;  // of the currency
};

/// One set-up: the tasks it calls and the rates of who and what is busy with it.
template <class N>
struct SetupInputs {
  std::vector<Time<N>> tasks;
  MoneyPerTime<N> labour_rate, wage, equipment_rate;
  Ratio<N> burden;
  bool loaded_rate = true;
};
template <class N>
struct SetupFigures {
  Time<N> change;
  Money<N> labour_cost, equipment_cost;
};

template <class N>
SetupFigures<N> setup_figures(const SetupInputs<N>& in, std::uint32_t row) {
  SetupFigures<N> out;
  Time<N> change{};
  for (const Time<N>& task : in.tasks) change = change + task;
  out.change = name(change, fig::change, row);
  const MoneyPerTime<N> labour = in.loaded_rate ? in.labour_rate : loaded_rate(in.wage, in.burden);
  out.labour_cost = name(out.change * labour, fig::change_labour, row);
  out.equipment_cost = name(out.change * in.equipment_rate, fig::change_equipment, row);
  return out;
}

template <class N>
struct CostFigures {
  Money<N> each, lot, once;  // totals with overhead
};
template <class N>
struct PriceFigures {
  Money<N> unit_cost, exact_price, unit_price, pieces, one_offs, supplement, total, cost, left;
};

template <class N>
CostFigures<N> cost_figures(const QuoteInputs<N>& in) {
  CostFigures<N> out;
  for (std::size_t k = 0; k < cost_kinds; ++k) {
    out.each = out.each + in.each[k];
    out.lot = out.lot + in.lot[k];
    out.once = out.once + in.once[k];
  }
  if (in.overhead_added) {
    const auto labour = static_cast<std::size_t>(CostKind::labour);
    const auto set_up = static_cast<std::size_t>(CostKind::set_up);
    out.each = out.each + name(in.each[labour] * in.overhead, fig::overhead_each);
    out.lot = out.lot + name((in.lot[labour] + in.lot[set_up]) * in.overhead, fig::overhead_lot);
    out.once = out.once + name(in.once[labour] * in.overhead, fig::overhead_once);
  }
  out.each = name(out.each, fig::total_each);
  out.lot = name(out.lot, fig::total_lot);
  out.once = name(out.once, fig::total_once);
  return out;
}

template <class N>
Money<N> with_margin(const QuoteInputs<N>& in, Money<N> cost) {
  return in.by_margin ? price_by_margin(cost, in.margin) : price_by_markup(cost, in.markup);
}

/// The price of `quantity` pieces. The unit price is rounded, then multiplied.
template <class N>
PriceFigures<N> price_figures(const QuoteInputs<N>& in, const CostFigures<N>& cost, Ratio<N> quantity,
                              std::uint32_t row) {
  PriceFigures<N> out;
  const Money<N> share = name(cost.lot / quantity, fig::lot_share, row);
  out.unit_cost = name(cost.each + share, fig::unit_cost, row);
  const Money<N> contingency = name(out.unit_cost * in.contingency, fig::contingency_cost, row);
  out.exact_price = name(with_margin(in, out.unit_cost + contingency), fig::exact_price, row);
  out.unit_price = name(round_money(out.exact_price, in.digits), fig::unit_price, row);
  out.pieces = name(out.unit_price * quantity, fig::pieces_price, row);
  out.one_offs = name(round_money(with_margin(in, cost.once * (number<N>(1) + in.contingency)), in.digits),
                      fig::one_off_price, row);
  out.total = out.pieces + out.one_offs;
  if (in.has_minimum) {
    out.supplement = name(round_money(max(in.minimum_charge - (out.pieces + out.one_offs), Money<N>{N(0)}), in.digits),
                          fig::supplement, row);
    out.total = out.total + out.supplement;
  }
  out.total = name(out.total, fig::order_total, row);
  out.cost = name(out.unit_cost * quantity + cost.once, fig::order_cost, row);
  out.left = name(out.total - out.cost, fig::order_margin, row);
  return out;
}

}  // namespace seambook
