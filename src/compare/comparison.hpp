// Job x RateBook -> Comparison: each family of seams by every process that suits it, and whether the rate book's
// investment pays for the seams it suits.
// Holds afterwards: figures are for one piece of the job, finite and unrounded; what does not suit has a reason in
// words.
#pragma once

#include <span>

#include "compare/crossover.hpp"
#include "compare/ways.hpp"
#include "compare/worth.hpp"
#include "estimate/estimate.hpp"

namespace seambook {

/// Sums over the joints of one way, for one piece.
struct WaySums {
  Totals totals;
  Time<> attended, finish, fit_up_extra;
};

/// A family as the investment sees it.
struct Judged {
  std::optional<std::size_t> now, next;  // ways: as it is welded without the investment, and with it
  std::string why_not;                   // when one of them is missing
};

/// One scenario: what it costs a year, what each judged family saves, what it is worth. The first is as stated.
struct ScenarioWorth {
  std::string name;
  YearlyCost<double> cost;
  std::vector<FamilyWorth<double>> families;  // parallel to Comparison::paying
  InvestmentWorth<double> worth;
};

struct Comparison {
  Ways ways;
  std::vector<RowFigures<double>> rows;    // parallel to ways.job.joints
  std::vector<std::vector<WaySums>> sums;  // by family and way; those that do not suit are zero
  std::vector<Judged> judged;              // parallel to ways.families
  std::vector<std::size_t> both;           // families that can be welded both ways
  Length<> metres_year, unsuited_year;     // all seams; those that the investment cannot weld
  Ratio<> pieces_year;
  Crossover crossover;                   // of the family with the most metres
  std::vector<ScenarioWorth> scenarios;  // empty when the rate book has no investment
};

Comparison compare(const RateBook&, const Job&);
/// All jobs of a year against one investment, whose cost stands once: scenarios, metres and the families of all; no
/// rows. For jobs of one rate book with an investment.
Comparison together(const RateBook&, std::span<const Comparison>);

/// The investment's inputs, and a scenario's; `index` 0 is as stated, later ones are the rate book's.
InvestmentInputs<Sourced> investment_inputs(const RateBook&, const Job&);
std::vector<ScenarioInputs<Sourced>> scenario_inputs(const Investment&);
/// A judged family's sums as inputs, each marked as a sum.
FamilyInputs<Sourced> family_inputs(const WaySums& now, const WaySums& next);

template <class N>
InvestmentInputs<N> lift_investment(const InvestmentInputs<Sourced>& a, const Lifting& by = {}) {
  InvestmentInputs<N> out;
  for (const Money<Sourced>& line : a.capital) out.capital.push_back(lift<N>(line, fig::capital_line, 0, by));
  for (const Money<Sourced>& line : a.yearly) out.yearly.push_back(lift<N>(line, fig::yearly_line, 0, by));
  out.life_years = lift<N>(a.life_years, fig::life_years, 0, by);
  out.residual = lift<N>(a.residual, fig::residual, 0, by);
  out.interest = lift<N>(a.interest, fig::interest, 0, by);
  out.upkeep = lift<N>(a.upkeep, fig::upkeep, 0, by);
  out.first_year = lift<N>(a.first_year, fig::first_year, 0, by);
  out.orders_year = lift<N>(a.orders_year, fig::orders_year, 0, by);
  out.order_pieces = lift<N>(a.order_pieces, fig::order_pieces, 0, by);
  out.avoidable_rate = lift<N>(a.avoidable_rate, fig::avoidable_rate, 0, by);
  out.labour_value = a.labour_value;
  out.avoidable_known = a.avoidable_known;
  return out;
}

template <class N>
ScenarioInputs<N> lift_scenario(const ScenarioInputs<Sourced>& a, std::uint32_t row, const Lifting& by = {}) {
  return {lift<N>(a.capital, fig::capital_factor, row, by), lift<N>(a.fit_up, fig::fit_up_factor, row, by),
          lift<N>(a.finish, fig::finish_factor, row, by), lift<N>(a.metres, fig::metres_factor, row, by)};
}

template <class N>
FamilyInputs<N> lift_family(const FamilyInputs<Sourced>& a, std::uint32_t row, const Lifting& by = {}) {
  const auto up = [&](const Figure& figure, const auto& x) { return lift<N>(x, figure, row, by); };
  return {up(fig::family_metres, a.metres),     up(fig::now_floor, a.floor),
          up(fig::next_floor, a.next_floor),    up(fig::next_burning, a.next_burning),
          up(fig::now_labour, a.labour),        up(fig::now_other, a.other),
          up(fig::now_equipment, a.equipment),  up(fig::next_labour, a.next_labour),
          up(fig::next_other, a.next_other),    up(fig::fit_up_extra_cost, a.fit_up_extra),
          up(fig::finish_saved, a.finish_saved)};
}

}  // namespace seambook
