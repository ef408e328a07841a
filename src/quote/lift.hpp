// The quote's and the set-ups' inputs as numbers of type N.
#pragma once

#include "quote/price.hpp"

namespace seambook {

template <class N>
OrderTerms<N> lift_order(const OrderTerms<Sourced>& a, const Lifting& by) {
  const auto up = [&](const Figure& figure, const auto& x, std::uint32_t row = 0) {
    return lift<N>(x, figure, row, by);
  };
  OrderTerms<N> out;
  out.learning_rate = up(fig::learning_rate, a.learning_rate);
  out.learning_holds_at = up(fig::learning_holds_at, a.learning_holds_at);
  out.expedite = up(fig::expedite, a.expedite);
  out.tax_rate = up(fig::tax_rate, a.tax_rate);
  out.piece_mass = up(fig::mass_of_piece, a.piece_mass);
  out.freight = up(fig::freight_rate, a.freight);
  out.list_step = up(fig::list_step, a.list_step);
  for (std::uint32_t i = 0; i < a.freight_by_mass.size(); ++i) {
    const FreightStep<Sourced>& step = a.freight_by_mass[i];
    out.freight_by_mass.push_back({up(fig::freight_up_to, step.up_to, i), up(fig::freight_class, step.price, i)});
  }
  out.learning = a.learning, out.unit_model = a.unit_model, out.holds_at_first = a.holds_at_first,
  out.expedite_asked = a.expedite_asked;
  out.has_freight = a.has_freight, out.freight_each = a.freight_each, out.freight_with_margin = a.freight_with_margin;
  out.list_rounded = a.list_rounded, out.taxed = a.taxed;
  return out;
}

template <class N>
QuoteInputs<N> lift_quote(const QuoteInputs<Sourced>& a, const Lifting& by = {}) {
  QuoteInputs<N> out;
  for (std::uint32_t k = 0; k < cost_kinds; ++k) {
    out.each[k] = lift<N>(a.each[k], fig::kind_each, k, by);
    out.lot[k] = lift<N>(a.lot[k], fig::kind_lot, k, by);
    out.once[k] = lift<N>(a.once[k], fig::kind_once, k, by);
  }
  out.overhead = lift<N>(a.overhead, fig::overhead, 0, by);
  out.contingency = lift<N>(a.contingency, fig::contingency, 0, by);
  out.margin = lift<N>(a.margin, fig::margin, 0, by);
  out.markup = lift<N>(a.markup, fig::markup, 0, by);
  out.minimum_charge = lift<N>(a.minimum_charge, fig::minimum_charge, 0, by);
  out.by_margin = a.by_margin;
  out.overhead_added = a.overhead_added;
  out.has_minimum = a.has_minimum;
  out.digits = a.digits;
  out.order = lift_order<N>(a.order, by);
  return out;
}

template <class N>
SetupInputs<N> lift_setup(const SetupInputs<Sourced>& a, std::uint32_t row, const Lifting& by = {}) {
  SetupInputs<N> out;
  for (const Time<Sourced>& task : a.tasks) out.tasks.push_back(lift<N>(task, fig::change_task, row, by));
  out.labour_rate = lift<N>(a.labour_rate, fig::labour_rate, row, by);
  out.wage = lift<N>(a.wage, fig::wage, row, by);
  out.burden = lift<N>(a.burden, fig::burden, row, by);
  out.equipment_rate = lift<N>(a.equipment_rate, fig::equipment_rate, row, by);
  out.loaded_rate = a.loaded_rate;
  return out;
}

}  // namespace seambook
