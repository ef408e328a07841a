// What welding uses up beside filler and gas: whole electrodes, flux, parts that wear.
// Sources: flux as a ratio to weld metal or to wire, whichever its maker states (common practice, no source); wear as
// price over life (common practice, no source).
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// Whole electrodes or rods for this much filler.
template <class N>
Ratio<N> pieces_for(Mass<N> filler, Mass<N> one) {
  return whole_up(filler / one);
}

/// Flux over weld metal, or over wire used, whichever the ratio is stated for.
template <class N>
Mass<N> flux_mass(Mass<N> basis, Ratio<N> ratio) {
  return basis * ratio;
}

/// The share of a part's price that this much use takes; use and life in arc time, weld length or starts.
template <Dim D, class N>
Money<N> wear_of_part(Money<N> price, Quantity<D, N> use, Quantity<D, N> life) {
  return price * (use / life);
}

}  // namespace seambook
