// The quote's and the set-ups' inputs as numbers of type N.
#pragma once

#include "quote/price.hpp"

namespace seambook {

template <class N>
QuoteInputs<N> lift_quote(const QuoteInputs<Sourced>& a, Tape* tape = nullptr) {
  QuoteInputs<N> out;
  for (std::uint32_t k = 0; k < cost_kinds; ++k) {
    out.each[k] = lift<N>(a.each[k], fig::kind_each, k, tape);
    out.lot[k] = lift<N>(a.lot[k], fig::kind_lot, k, tape);
    out.once[k] = lift<N>(a.once[k], fig::kind_once, k, tape);
  }
  out.overhead = lift<N>(a.overhead, fig::overhead, 0, tape);
  out.contingency = lift<N>(a.contingency, fig::contingency, 0, tape);
  out.margin = lift<N>(a.margin, fig::margin, 0, tape);
  out.markup = lift<N>(a.markup, fig::markup, 0, tape);
  out.minimum_charge = lift<N>(a.minimum_charge, fig::minimum_charge, 0, tape);
  out.by_margin = a.by_margin;
  out.overhead_added = a.overhead_added;
  out.has_minimum = a.has_minimum;
  out.digits = a.digits;
  return out;
}

template <class N>
SetupInputs<N> lift_setup(const SetupInputs<Sourced>& a, std::uint32_t row, Tape* tape = nullptr) {
  SetupInputs<N> out;
  for (const Time<Sourced>& task : a.tasks) out.tasks.push_back(lift<N>(task, fig::change_task, row, tape));
  out.labour_rate = lift<N>(a.labour_rate, fig::labour_rate, row, tape);
  out.wage = lift<N>(a.wage, fig::wage, row, tape);
  out.burden = lift<N>(a.burden, fig::burden, row, tape);
  out.equipment_rate = lift<N>(a.equipment_rate, fig::equipment_rate, row, tape);
  out.loaded_rate = a.loaded_rate;
  return out;
}

}  // namespace seambook
