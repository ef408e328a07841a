// The numbers behind hardening and preheat of a joint. As in inputs.hpp, absent numbers are 0 without a source; the
// shape says what is known.
#pragma once

#include "estimate/figures_heat.hpp"
#include "resolve/job.hpp"

namespace seambook {

template <class N>
struct HeatInputs {
  Composition<N> steel;
  Ratio<N> carbon_equivalent, cet;  // as stated
  Density<N> density;
  Temperature<N> preheat, interpass_max, room;
  LineEnergy<N> heat_input_max;
  Length<N> soak_width;
  SpecificHeat<N> specific_heat;
  Power<N> burner;
  Ratio<N> burner_efficiency, attended;
  MoneyPerEnergy<N> fuel;
  Time<N> check_per_joint, check_per_pass;
  friend bool operator==(const HeatInputs&, const HeatInputs&) = default;
};

/// Decided when the job was resolved.
struct HeatShape {
  bool hardens = false;      // a carbon or low-alloy steel: the figures are worth having
  bool tee = false;          // heat flows away in three runs of plate
  bool second_goes = false;  // of a tee, the second member is the plate that goes through; else the thicker is taken
  bool composition = false, equivalent_stated = false, cet_stated = false;
  bool method_b = false;  // steel, CET known; passes tell the rest
  bool heated = false;    // a burner heats the joint
  bool charged = false;   // its minutes are; a factor may cover them
  bool partly_attended = false, check_per_joint = false, check_per_pass = false;
  bool has_equivalent() const { return composition || equivalent_stated; }
  bool has_cet() const { return composition || cet_stated; }
  friend bool operator==(const HeatShape&, const HeatShape&) = default;
};

template <class A, class B, class F>
void each_heat_input(A& a, B& b, F f) {
  std::size_t at = 0;
  each_element(a.steel, b.steel, [&](const char*, auto& x, auto& y) { f(fig::elements[at++], x, y); });
  f(fig::stated_equivalent, a.carbon_equivalent, b.carbon_equivalent), f(fig::stated_cet, a.cet, b.cet);
  f(fig::steel_density, a.density, b.density), f(fig::preheat, a.preheat, b.preheat);
  f(fig::interpass_max, a.interpass_max, b.interpass_max), f(fig::room, a.room, b.room);
  f(fig::heat_input_max, a.heat_input_max, b.heat_input_max), f(fig::soak_width, a.soak_width, b.soak_width);
  f(fig::specific_heat, a.specific_heat, b.specific_heat), f(fig::burner, a.burner, b.burner);
  f(fig::burner_efficiency, a.burner_efficiency, b.burner_efficiency);
  f(fig::burner_attended, a.attended, b.attended), f(fig::fuel_price, a.fuel, b.fuel);
  f(fig::check_per_joint, a.check_per_joint, b.check_per_joint);
  f(fig::check_per_pass, a.check_per_pass, b.check_per_pass);
}

HeatShape heat_shape(const RateBook&, const Joint&);
HeatInputs<Sourced> heat_inputs(const RateBook&, const Joint&);
/// Diffusible hydrogen of the weld metal that these passes lay: the procedure's, else its filler's.
Known<dim::volume_per_mass> hydrogen_of(const RateBook&, const PassGroup&);

}  // namespace seambook
