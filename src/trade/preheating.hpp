// What preheating with a burner takes: the plate beside the joint is heated through, the burner gives part of its heat.
// Source: common practice (heat balance, no cooling meanwhile); how wide is heated is the shop's figure.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// Mass of the strips beside a joint: every run of plate that leads heat away, `width` from the joint. The thicknesses
/// of the runs add up to the combined thickness.
template <class N>
Mass<N> heated_mass(Density<N> density, Length<N> combined_thickness, Length<N> width, Length<N> line) {
  return density * combined_thickness * width * line;
}

/// Heat that takes a mass from the shop's temperature to the preheat; none below it.
template <class N>
Energy<N> heat_needed(Mass<N> mass, SpecificHeat<N> specific_heat, Temperature<N> preheat, Temperature<N> room) {
  return mass * specific_heat * max(preheat - room, Temperature<N>{N(0)});
}

template <class N>
Time<N> burner_time(Energy<N> needed, Power<N> burner, Ratio<N> efficiency) {
  return needed / (burner * efficiency);
}

/// Price of the heat that the burner gives.
template <class N>
Money<N> fuel_cost(Energy<N> needed, Ratio<N> efficiency, MoneyPerEnergy<N> price) {
  return needed / efficiency * price;
}

}  // namespace seambook
