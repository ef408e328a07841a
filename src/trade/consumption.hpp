// What a weld takes: weld metal, filler, gas, electricity. Sources: "Welding Filler Metals Data Handbook", ESAB North
// America, section 8 (consumption = deposit / deposition efficiency); electricity as arc power over source efficiency.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

template <class N>
Mass<N> deposit_mass(Area<N> section, Length<N> weld_length, Density<N> metal) {
  return section * weld_length * metal;
}

template <class N>
Mass<N> filler_mass(Mass<N> deposit, Ratio<N> deposition_efficiency) {
  return deposit / deposition_efficiency;
}

/// Share of a covered electrode that ends in the joint when a stub of it is thrown away. Source: "Basic Welding Filler
/// Metal Technology", lesson IX, stub loss table, ESAB Group (2000).
template <class N>
Ratio<N> efficiency_after_stub(Ratio<N> deposition_efficiency, Length<N> electrode, Length<N> stub) {
  return deposition_efficiency * (electrode - stub) / electrode;
}

/// Deposition efficiency as weighed: what the joint gained of what melted.
template <class N>
Ratio<N> efficiency_weighed(Mass<N> deposited, Mass<N> melted) {
  return deposited / melted;
}

/// Gas that a cylinder gives at one bar (ideal gas; argon at 200 bar holds a few percent more).
template <class N>
Volume<N> gas_in_cylinder(Volume<N> cylinder, Ratio<N> bars) {
  return cylinder * bars;
}

/// Gas while the arc burns and before and after each start; `loss` is 1.1 when a tenth more than metered is bought.
template <class N>
Volume<N> gas_volume(Flow<N> flow, Time<N> arc, Ratio<N> starts, Time<N> before_and_after, Ratio<N> loss) {
  return flow * (arc + starts * before_and_after) * loss;
}

/// Electric energy for an arc.
template <class N>
Energy<N> arc_electricity(Voltage<N> voltage, Current<N> current, Ratio<N> source_efficiency, Power<N> auxiliary,
                          Time<N> arc) {
  return (voltage * current / source_efficiency + auxiliary) * arc;
}

/// Electric energy for a laser beam; the efficiency is optical power over electric input.
template <class N>
Energy<N> beam_electricity(Power<N> beam, Ratio<N> source_efficiency, Power<N> auxiliary, Time<N> beam_time) {
  return (beam / source_efficiency + auxiliary) * beam_time;
}

/// Arc energy per length, without thermal efficiency (ISO/TR 18491).
template <class N>
LineEnergy<N> arc_energy(Voltage<N> voltage, Current<N> current, Speed<N> travel) {
  return voltage * current / travel;
}

template <class N>
LineEnergy<N> beam_line_energy(Power<N> beam, Speed<N> travel) {
  return beam / travel;
}

/// Heat input: arc energy times thermal efficiency (EN 1011-1).
template <class N>
LineEnergy<N> heat_input(LineEnergy<N> energy, Ratio<N> thermal_efficiency) {
  return energy * thermal_efficiency;
}

}  // namespace seambook
