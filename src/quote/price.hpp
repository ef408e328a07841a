// Cost becomes money, written once for plain and traced numbers. Only here is anything rounded.
#pragma once

#include <array>

#include "estimate/figures.hpp"
#include "quote/figures.hpp"
#include "quote/order_terms.hpp"
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
  free_issue,  // handling of what the customer supplies
  other
};
inline constexpr std::size_t cost_kinds = 12;
inline constexpr std::array<const char*, cost_kinds> cost_kind_words = {
    "labour",     "set-up labour", "equipment", "filler",       "gas",        "power",
    "wear parts", "base metal",    "cutting",   "outside work", "free issue", "other"};

inline CostKind cost_kind(BoughtKind kind) {
  constexpr std::array kinds = {CostKind::base_metal, CostKind::cutting, CostKind::outside, CostKind::other};
  return kinds[static_cast<std::size_t>(kind)];
}

/// Costs by kind, and the policy that makes a price of them. What a flag switches off is not read.
template <class N>
struct QuoteInputs {
  std::array<Money<N>, cost_kinds> each, lot, once;
  Ratio<N> overhead, contingency, margin, markup;
  Money<N> minimum_charge;
  bool by_margin = true, overhead_added = false, has_minimum = false;
  int digits = 2;  // of the currency
  OrderTerms<N> order;
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
  Money<N> repeated;         // of `each`: what falls as pieces follow each other
};
/// Printed lines are rounded; those that the policy does not ask for are 0.
template <class N>
struct PriceFigures {
  Money<N> unit_cost, exact_price, unit_price, pieces, one_offs, expedite, freight, supplement, list_rounding, total,
      tax, total_with_tax, cost, left;
};

template <class N>
Money<N> of_kind(const std::array<Money<N>, cost_kinds>& cost, CostKind kind) {
  return cost[static_cast<std::size_t>(kind)];
}

template <class N>
CostFigures<N> cost_figures(const QuoteInputs<N>& in) {
  CostFigures<N> out;
  for (std::size_t k = 0; k < cost_kinds; ++k) {
    out.each = out.each + in.each[k];
    out.lot = out.lot + in.lot[k];
    out.once = out.once + in.once[k];
  }
  const Money<N> labour = of_kind(in.each, CostKind::labour);
  out.repeated = labour + of_kind(in.each, CostKind::equipment);
  if (in.overhead_added) {
    const Money<N> overhead = name(labour * in.overhead, fig::overhead_each);
    out.each = out.each + overhead;
    out.repeated = out.repeated + overhead;
    out.lot = out.lot + name((of_kind(in.lot, CostKind::labour) + of_kind(in.lot, CostKind::set_up)) * in.overhead,
                             fig::overhead_lot);
    out.once = out.once + name(of_kind(in.once, CostKind::labour) * in.overhead, fig::overhead_once);
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

/// Expedite, freight, the minimum charge, the price list's step, tax: what an order pays beside pieces and one-offs.
template <class N>
void order_lines(const QuoteInputs<N>& in, Ratio<N> quantity, Ratio<N> learned, std::uint32_t row,
                 PriceFigures<N>& out) {
  const OrderTerms<N>& order = in.order;
  const auto printed = [&](Money<N> money) { return round_money(money, in.digits); };
  if (order.expedite_asked) {
    Money<N> labour = of_kind(in.each, CostKind::labour) * quantity;
    if (order.learning) labour = labour * learned;
    labour = labour + of_kind(in.lot, CostKind::labour) + of_kind(in.lot, CostKind::set_up);
    labour = name(labour + of_kind(in.once, CostKind::labour), fig::order_labour, row);
    const Money<N> haste = name(labour * order.expedite, fig::expedite_cost, row);
    out.expedite = name(printed(with_margin(in, haste)), fig::expedite_price, row);
    out.cost = out.cost + haste;
  }
  out.total = out.pieces + out.one_offs + out.expedite;
  if (in.has_minimum) {
    out.supplement = name(printed(max(in.minimum_charge - out.total, Money<N>{N(0)})), fig::supplement, row);
    out.total = out.total + out.supplement;
  }
  if (order.has_freight) {
    const Money<N> freight = name(freight_cost(order, quantity, row), fig::freight_cost, row);
    out.freight =
        name(printed(order.freight_with_margin ? with_margin(in, freight) : freight), fig::freight_price, row);
    out.cost = out.cost + freight;
    out.total = out.total + out.freight;
  }
  if (order.list_rounded) {
    const Money<N> raised = whole_up(out.total / order.list_step) * order.list_step;
    out.list_rounding = name(printed(raised - out.total), fig::list_rounding, row);
    out.total = out.total + out.list_rounding;
  }
  out.total = name(out.total, fig::order_total, row);
  out.total_with_tax = out.total;
  if (!order.taxed) return;
  out.tax = name(printed(out.total * order.tax_rate), fig::tax, row);
  out.total_with_tax = name(out.total + out.tax, fig::total_with_tax, row);
}

/// The price of `quantity` pieces. The unit price is rounded, then multiplied.
template <class N>
PriceFigures<N> price_figures(const QuoteInputs<N>& in, const CostFigures<N>& cost, Ratio<N> quantity,
                              std::uint32_t row) {
  PriceFigures<N> out;
  const Money<N> share = name(cost.lot / quantity, fig::lot_share, row);
  out.unit_cost = cost.each + share;
  Ratio<N> learned{};
  if (in.order.learning) {
    learned = learned_share(in.order, quantity, row);
    out.unit_cost = out.unit_cost + name(cost.repeated * (learned - number<N>(1)), fig::learning_effect, row);
  }
  out.unit_cost = name(out.unit_cost, fig::unit_cost, row);
  const Money<N> contingency = name(out.unit_cost * in.contingency, fig::contingency_cost, row);
  out.exact_price = name(with_margin(in, out.unit_cost + contingency), fig::exact_price, row);
  out.unit_price = name(round_money(out.exact_price, in.digits), fig::unit_price, row);
  out.pieces = name(out.unit_price * quantity, fig::pieces_price, row);
  out.one_offs = name(round_money(with_margin(in, cost.once * (number<N>(1) + in.contingency)), in.digits),
                      fig::one_off_price, row);
  out.cost = out.unit_cost * quantity + cost.once;
  order_lines(in, quantity, learned, row, out);
  out.cost = name(out.cost, fig::order_cost, row);
  out.left = name(out.total - out.cost, fig::order_margin, row);
  return out;
}

}  // namespace seambook
