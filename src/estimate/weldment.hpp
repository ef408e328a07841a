// The estimate of a weldment beside its joints: fit-up of parts, turning, the elements that are counted by weldment,
// and base metal by mass. For one piece of the job.
#pragma once

#include "estimate/labour_inputs.hpp"
#include "trade/labour.hpp"

namespace seambook {

template <class N>
struct WeldmentInputs {
  Ratio<N> weldments, parts, turns, personal, yield, burden, handling_share;
  Time<N> fit_up_per_part, time_per_turn;
  Mass<N> mass;
  MoneyPerMass<N> metal_price;
  Money<N> free_issue_value;
  MoneyPerTime<N> labour_rate, wage, equipment_rate;
  std::vector<ElementTerm<N>> terms;
};
/// Fit-up and turning stay out where an operating factor covers them; the personal allowance is in the factor.
struct WeldmentShape {
  bool loaded_rate = true, metal_by_mass = false, by_factor = false, fit_up = true, turning = true;
  bool valued_free_issue = false;
};
struct WeldmentRow {
  WeldmentShape shape;
  WeldmentInputs<Sourced> inputs;
};

template <class N>
WeldmentInputs<N> lift_weldment(const WeldmentInputs<Sourced>& a, std::uint32_t row, const Lifting& by = {}) {
  const auto up = [&](const Figure& figure, const auto& x) { return lift<N>(x, figure, row, by); };
  return {up(fig::weldments, a.weldments),
          up(fig::parts, a.parts),
          up(fig::turns, a.turns),
          up(fig::personal, a.personal),
          up(fig::yield, a.yield),
          up(fig::burden, a.burden),
          up(fig::free_issue_share, a.handling_share),
          up(fig::fit_up_per_part, a.fit_up_per_part),
          up(fig::time_per_turn, a.time_per_turn),
          up(fig::mass, a.mass),
          up(fig::metal_price, a.metal_price),
          up(fig::free_issue_value, a.free_issue_value),
          up(fig::labour_rate, a.labour_rate),
          up(fig::wage, a.wage),
          up(fig::equipment_rate, a.equipment_rate),
          lift_terms<N>(a.terms, row, by)};
}

WeldmentRow gather_weldment(const RateBook&, const Job&, const Weldment&);

template <class N>
struct WeldmentFigures {
  Time<N> parts, turns, floor;
  ElementTimes<N> elements;
  Money<N> labour_cost, equipment_cost, metal_cost, free_issue_cost;
  Mass<N> mass;
};

template <class N>
WeldmentFigures<N> weldment_figures(const WeldmentShape& shape, const WeldmentInputs<N>& in, std::uint32_t row) {
  WeldmentFigures<N> out;
  if (shape.fit_up) out.parts = name(in.weldments * in.parts * in.fit_up_per_part, fig::parts_min, row);
  if (shape.turning) out.turns = name(in.weldments * in.turns * in.time_per_turn, fig::turns_min, row);
  Time<N> attended = out.parts + out.turns;
  if (!in.terms.empty()) {
    const WeldmentCounts<N> counts{in.weldments, in.weldments * in.parts, in.weldments * in.turns,
                                   in.weldments * in.mass};
    out.elements = element_times(in.terms, counts, row);
    attended = attended + all_of(out.elements);
  }
  out.floor = name(shape.by_factor ? attended : floor_time(attended, in.personal), fig::weldment_floor, row);
  const MoneyPerTime<N> labour = shape.loaded_rate ? in.labour_rate : loaded_rate(in.wage, in.burden);
  Money<N> labour_cost = out.floor * labour;
  if (out.elements.graded) {
    const Ratio<N> on_floor = shape.by_factor ? number<N>(1) : number<N>(1) + in.personal;
    labour_cost = (out.floor - out.elements.other_grades * on_floor) * labour + out.elements.paid_to_them * on_floor;
  }
  out.labour_cost = name(labour_cost, fig::weldment_labour, row);
  out.equipment_cost = name(out.floor * in.equipment_rate, fig::weldment_equipment, row);
  out.mass = name(in.weldments * in.mass, fig::weldment_mass, row);
  if (shape.metal_by_mass) out.metal_cost = name(out.mass / in.yield * in.metal_price, fig::metal_cost, row);
  if (shape.valued_free_issue)
    out.free_issue_cost = name(in.weldments * in.free_issue_value * in.handling_share, fig::free_issue_cost, row);
  return out;
}

}  // namespace seambook
