// Passes, travel speed and arc time. Travel speed prices a weld; deposition checks it.
// Source: conservation of volume (wire fed × efficiency = section × travel speed); "MIG Welding Handbook", ESAB North
// America, deposition from wire geometry.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

template <class N>
Area<N> wire_section(Length<N> diameter) {
  return diameter * diameter * (3.14159265358979323846 / 4);
}

/// Mass of a length of solid wire; cored wires are weighed instead.
template <class N>
LinearMass<N> wire_linear_mass(Length<N> diameter, Density<N> metal) {
  return wire_section(diameter) * metal;
}

/// Wire melted in a unit of arc time.
template <class N>
MassRate<N> melt_off(Speed<N> wire_feed, LinearMass<N> wire) {
  return wire_feed * wire;
}

/// Weld metal laid in a unit of arc time, by mass.
template <class N>
MassRate<N> deposition_rate(Speed<N> wire_feed, Length<N> wire_diameter, Density<N> metal,
                            Ratio<N> deposition_efficiency) {
  return melt_off(wire_feed, wire_linear_mass(wire_diameter, metal)) * deposition_efficiency;
}

/// Weld metal laid in a unit of arc time.
template <class N>
Quantity<dim::flow, N> deposition_volume_rate(Speed<N> wire_feed, Length<N> wire_diameter,
                                              Ratio<N> deposition_efficiency) {
  return wire_feed * wire_section(wire_diameter) * deposition_efficiency;
}

/// The same from a tubular wire, whose metre weighs less than a solid one's.
template <class N>
Quantity<dim::flow, N> tubular_volume_rate(Speed<N> wire_feed, Quantity<dim::linear_mass, N> metre,
                                           Ratio<N> deposition_efficiency, Density<N> metal) {
  return wire_feed * metre * deposition_efficiency / metal;
}

/// The same from a table of deposition rates: mass of weld metal in an hour of arc time.
template <class N>
Quantity<dim::flow, N> tabled_volume_rate(MassRate<N> deposition, Density<N> metal) {
  return deposition / metal;
}

/// What one pass lays at this travel speed.
template <class N>
Area<N> area_per_pass(Quantity<dim::flow, N> volume_rate, Speed<N> travel) {
  return volume_rate / travel;
}

/// Passes that fill a section, none larger than `largest`.
template <class N>
Ratio<N> passes_for(Area<N> section, Area<N> largest) {
  return whole_up(section / largest);
}

/// Travel speed at which a pass of this size takes all that is deposited, held within the procedure's limits.
template <class N>
Speed<N> travel_for(Quantity<dim::flow, N> volume_rate, Area<N> pass, Speed<N> low, Speed<N> high) {
  return min(max(volume_rate / pass, low), high);
}

/// The same for a pass that may have nothing left to lay: it runs at the highest speed then.
template <class N>
Speed<N> travel_for_what_is_left(Quantity<dim::flow, N> volume_rate, Area<N> pass, Speed<N> low, Speed<N> high) {
  return max(min(volume_rate / max(pass, volume_rate / high), high), low);
}

template <class N>
Time<N> arc_time(Length<N> weld_length, Ratio<N> passes, Speed<N> travel) {
  return weld_length * passes / travel;
}

/// The same by what is deposited: section × length over volume rate.
template <class N>
Time<N> arc_time_by_deposition(Area<N> section, Length<N> weld_length, Quantity<dim::flow, N> volume_rate) {
  return section * weld_length / volume_rate;
}

}  // namespace seambook
