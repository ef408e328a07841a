// Floor time. Two methods exist and are never mixed: by elements (every attended minute itemised, then an allowance for
// rest and delays), and by operating factor (arc time over the share of floor time in which an arc burns).
// Source: work measurement practice (common practice); operating factor as in "Welding Filler Metals Data Handbook".
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// Attended minutes with the personal allowance.
template <class N>
Time<N> floor_time(Time<N> attended, Ratio<N> personal) {
  return attended * (number<N>(1) + personal);
}

template <class N>
Time<N> floor_time_by_factor(Time<N> arc, Ratio<N> operating_factor) {
  return arc / operating_factor;
}

/// Hourly rate with the wage add-on.
template <class N>
MoneyPerTime<N> loaded_rate(MoneyPerTime<N> wage, Ratio<N> burden) {
  return wage * (number<N>(1) + burden);
}

}  // namespace seambook
