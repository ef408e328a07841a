// Cost becomes price; equipment pays back. Margin is a share of the price, mark-up a share of the cost.
// Sources: arithmetic of the definitions; payback as in "Welding Filler Metals Data Handbook", ESAB North America,
// section 8.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

template <class N>
Money<N> price_by_margin(Money<N> cost, Ratio<N> margin) {
  return cost / (number<N>(1) - margin);
}

template <class N>
Money<N> price_by_markup(Money<N> cost, Ratio<N> markup) {
  return cost * (number<N>(1) + markup);
}

/// Deposit after which equipment has earned its price back.
template <class N>
Mass<N> payback_mass(Money<N> equipment, MoneyPerMass<N> saving) {
  return equipment / saving;
}

}  // namespace seambook
