// What an investment is worth: written once for plain and traced numbers. A family of seams saves what it costs now
// less what it would cost with the investment; the investment's own cost stands once, by the year: depreciation,
// interest, upkeep and running. Present value counts cash only, so depreciation and interest are not in it.
// Sources: trade/investment.hpp; the hour saved is worth its full rate only when it is sold again.
#pragma once

#include <vector>

#include "compare/figures.hpp"
#include "estimate/figures.hpp"
#include "resolve/rate_book.hpp"
#include "trace/traced.hpp"
#include "trade/investment.hpp"

namespace seambook {

/// Sums over the joints of a family, for one piece: as the work is done now, and with the investment (`next`).
template <class N>
struct FamilyInputs {
  Length<N> metres;
  Time<N> floor, next_floor, next_burning;
  Money<N> labour, other, equipment, next_labour, next_other, fit_up_extra, finish_saved;
};

template <class N>
struct ScenarioInputs {
  Ratio<N> capital, fit_up, finish, metres;
};

template <class N>
struct InvestmentInputs {
  std::vector<Money<N>> capital, yearly;
  Ratio<N> life_years, residual, interest, upkeep, first_year, orders_year, order_pieces;
  MoneyPerTime<N> avoidable_rate;
  LabourValue labour_value = LabourValue::lower;
  bool avoidable_known = false;
};

template <class N>
struct FamilyWorth {
  Length<N> metres_year, suited_year;
  Pace<N> minutes_saved;
  MoneyPerLength<N> saved_loaded, saved_avoidable, saved;
  Money<N> saved_year, worth_year;
  Time<N> burning_year;
};

/// What it costs, for one scenario.
template <class N>
struct YearlyCost {
  Money<N> capital, depreciation, interest, running, fixed;
};

/// Whether it pays, over all families that suit.
template <class N>
struct InvestmentWorth {
  Money<N> worth, left, cash, learning, present_value;
  Length<N> suited;
};

template <class N>
Ratio<N> pieces_a_year(const InvestmentInputs<N>& in) {
  return name(in.orders_year * in.order_pieces, fig::pieces_year);
}

template <class N>
YearlyCost<N> yearly_cost(const InvestmentInputs<N>& in, const ScenarioInputs<N>& scenario, std::uint32_t row) {
  Money<N> listed{}, running{};
  for (const Money<N>& line : in.capital) listed = listed + line;
  for (const Money<N>& line : in.yearly) running = running + line;
  YearlyCost<N> out;
  out.capital = name(listed * scenario.capital, fig::capital, row);
  const Money<N> residual = out.capital * in.residual;
  out.depreciation = name(depreciation(out.capital, residual, in.life_years), fig::depreciation, row);
  out.interest = name((out.capital + residual) / 2 * in.interest, fig::interest_year, row);
  out.running = name(running + out.capital * in.upkeep, fig::running_year, row);
  out.fixed = name(out.depreciation + out.interest + out.running, fig::fixed_year, row);
  return out;
}

/// A scenario changes the extra fit-up and the finishing saved; both are money of labour, so both views take them.
template <class N>
FamilyWorth<N> family_worth(const InvestmentInputs<N>& in, const FamilyInputs<N>& family, Ratio<N> pieces,
                            const ScenarioInputs<N>& scenario, std::uint32_t row) {
  FamilyWorth<N> out;
  const Ratio<N> one = number<N>(1);
  out.metres_year = name(family.metres * pieces * scenario.metres, fig::metres_year, row);
  out.minutes_saved = name((family.floor - family.next_floor) / family.metres, fig::minutes_saved, row);
  const Money<N> moved = family.fit_up_extra * (scenario.fit_up - one) + family.finish_saved * (one - scenario.finish);
  const Money<N> loaded =
      family.labour + family.other + family.equipment - family.next_labour - family.next_other - moved;
  out.saved_loaded = name(loaded / family.metres, fig::saved_loaded, row);
  out.saved = out.saved_loaded;
  if (in.avoidable_known) {
    const Money<N> avoidable =
        (family.floor - family.next_floor) * in.avoidable_rate + family.other - family.next_other - moved;
    out.saved_avoidable = name(avoidable / family.metres, fig::saved_avoidable, row);
    if (in.labour_value == LabourValue::avoidable) out.saved = out.saved_avoidable;
    if (in.labour_value == LabourValue::lower) out.saved = min(out.saved_loaded, out.saved_avoidable);
  }
  out.saved = name(out.saved, fig::saved_metre, row);
  out.saved_year = name(out.saved * out.metres_year, fig::saved_year, row);
  const Money<N> nothing{N(0)};
  out.worth_year = name(max(out.saved_year, nothing), fig::worth_year, row);
  out.suited_year = name(select_less(nothing, out.saved_year, out.metres_year, Length<N>{N(0)}), fig::suited_year, row);
  out.burning_year =
      name(select_less(nothing, out.saved_year, family.next_burning * pieces, Time<N>{N(0)}), fig::burning_year, row);
  return out;
}

template <class N>
InvestmentWorth<N> investment_worth(const InvestmentInputs<N>& in, const YearlyCost<N>& cost,
                                    const std::vector<FamilyWorth<N>>& families, std::uint32_t row) {
  InvestmentWorth<N> out;
  for (const FamilyWorth<N>& family : families) {
    out.worth = out.worth + family.worth_year;
    out.suited = out.suited + family.suited_year;
  }
  out.worth = name(out.worth, fig::all_worth, row);
  out.suited = name(out.suited, fig::all_suited, row);
  out.left = name(out.worth - cost.fixed, fig::left_year, row);
  out.cash = name(out.worth - cost.running, fig::cash_year, row);
  out.learning = name(out.worth * (number<N>(1) - in.first_year), fig::learning_cost, row);
  const Money<N> learning_today = out.learning * present_value_factor(in.interest, number<N>(1));
  out.present_value =
      name(net_present_value(cost.capital, out.cash, cost.capital * in.residual, in.interest, in.life_years) -
               learning_today,
           fig::present_value, row);
  return out;
}

}  // namespace seambook
