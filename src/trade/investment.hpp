// What equipment costs an hour, and whether it pays: depreciation, machine hour rate, break-even, present value.
// Periods are counted (years); a rate of interest is a share a period. Sources: definitions of cost accounting and
// engineering economy.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// Straight-line depreciation in one of `periods` periods.
template <class N>
Money<N> depreciation(Money<N> cost, Money<N> residual, Ratio<N> periods) {
  return (cost - residual) / periods;
}

/// Straight-line depreciation over the hours a machine lasts.
template <class N>
MoneyPerTime<N> depreciation_per_time(Money<N> cost, Money<N> residual, Time<N> life) {
  return (cost - residual) / life;
}

/// Standing costs of a period over the hours worked in it, and what the machine takes while it runs.
template <class N>
MoneyPerTime<N> machine_hour_rate(Money<N> standing, Time<N> worked, MoneyPerTime<N> running) {
  return standing / worked + running;
}

/// Pieces after which the margin of each has covered the fixed cost; the price must exceed the cost of a piece.
template <class N>
Ratio<N> break_even_quantity(Money<N> fixed, Money<N> price, Money<N> cost_of_piece) {
  return fixed / (price - cost_of_piece);
}

/// Periods after which what is saved has covered the price, without interest.
template <class N>
Ratio<N> payback_periods(Money<N> equipment, Money<N> saving_per_period) {
  return equipment / saving_per_period;
}

template <class N>
Money<N> with_simple_interest(Money<N> sum, Ratio<N> rate, Ratio<N> periods) {
  return sum * (number<N>(1) + rate * periods);
}

/// (1 + r)^n; with negative n what a later sum is worth today.
template <class N>
Ratio<N> growth(Ratio<N> rate, Ratio<N> periods) {
  return exp(periods * log(number<N>(1) + rate));
}

template <class N>
Ratio<N> present_value_factor(Ratio<N> rate, Ratio<N> periods) {
  return number<N>(1) / growth(rate, periods);
}

template <class N>
Money<N> with_compound_interest(Money<N> sum, Ratio<N> rate, Ratio<N> periods) {
  return sum * growth(rate, periods);
}

/// What one unit of money at the end of each of n periods is worth today; the rate is above 0.
template <class N>
Ratio<N> annuity_factor(Ratio<N> rate, Ratio<N> periods) {
  return (number<N>(1) - present_value_factor(rate, periods)) / rate;
}

/// Equal savings at the end of each period and a residual after the last, less the price paid today.
template <class N>
Money<N> net_present_value(Money<N> investment, Money<N> saving, Money<N> residual, Ratio<N> rate, Ratio<N> periods) {
  return saving * annuity_factor(rate, periods) + residual * present_value_factor(rate, periods) - investment;
}

/// Periods after which discounted savings have covered the investment, linear within the last one. The rate is above 0
/// and the saving above the investment's interest, else it is never covered.
template <class N>
Ratio<N> discounted_payback(Money<N> investment, Money<N> saving, Ratio<N> rate) {
  const Ratio<N> one = number<N>(1);
  const Ratio<N> exact = (number<N>(0) - log(one - rate * (investment / saving))) / log(one + rate);
  const Ratio<N> full = whole_down(exact);
  const Money<N> left = investment - saving * annuity_factor(rate, full);
  return full + left / (saving * present_value_factor(rate, full + one));
}

/// Cost of equipment of another size: cost × size ratio ^ exponent.
template <class N>
Money<N> cost_at_capacity(Money<N> cost, Ratio<N> size_ratio, Ratio<N> exponent) {
  return cost * exp(exponent * log(size_ratio));
}

}  // namespace seambook
