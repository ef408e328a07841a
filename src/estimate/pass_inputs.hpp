// The numbers behind what passes lay and use up, gathered apart from the other inputs of a row: gouging, the metal a
// pass may lay, electrodes, flux, parts that wear. Absent numbers are 0 without a source; the shape says what applies.
#pragma once

#include <vector>

#include "estimate/figures_passes.hpp"
#include "resolve/job.hpp"

namespace seambook {

/// Gouging the root of a joint from the back.
template <class N>
struct GougeInputs {
  Length<N> depth, width;
  Pace<N> pace;
  MoneyPerLength<N> carbon_price;
  friend bool operator==(const GougeInputs&, const GougeInputs&) = default;
};
struct GougeShape {
  bool gouged = false, carbons = false;
  bool own_groove = false;  // the weld's own: no section is added
  std::uint32_t group = 0;  // that the gouging goes with: the first back, else the last
  friend bool operator==(const GougeShape&, const GougeShape&) = default;
};

/// What a group of passes lays and uses up.
template <class N>
struct MetalInputs {
  MassRate<N> deposition_rate;
  Quantity<dim::linear_mass, N> linear_mass;
  Length<N> largest_leg, electrode_length, stub;
  Area<N> largest_area;
  Mass<N> piece_mass;
  Time<N> electrode_change;
  Ratio<N> flux_ratio;
  MoneyPerMass<N> flux_price;
  friend bool operator==(const MetalInputs&, const MetalInputs&) = default;
};

/// How many passes a group makes.
enum class PassCount : std::uint8_t {
  given,
  from_section,  // computed: they lay what the other groups leave of the section
  from_gouge     // computed: they fill what was gouged
};
struct MetalShape {
  PassRole role = PassRole::fill;
  PassCount count = PassCount::given;
  bool by_rate = false, tubular = false;  // how the deposition is told; else by area or solid wire
  bool leg_limited = false, area_limited = false;
  bool stub = false, pieces = false, changes = false, flux = false, flux_per_wire = false;
  friend bool operator==(const MetalShape&, const MetalShape&) = default;
};

/// One part that wears; `life` tells which of the three lives is its own.
template <class N>
struct WearPartInputs {
  Money<N> price;
  Time<N> arc;
  Length<N> length;
  Ratio<N> starts;
  friend bool operator==(const WearPartInputs&, const WearPartInputs&) = default;
};
enum class WearLife : std::uint8_t { arc, length, starts };

template <class A, class B, class F>
void each_gouge_input(A& a, B& b, F f) {
  f(fig::gouge_depth, a.depth, b.depth), f(fig::gouge_width, a.width, b.width);
  f(fig::gouge_pace, a.pace, b.pace), f(fig::carbon_price, a.carbon_price, b.carbon_price);
}

template <class A, class B, class F>
void each_metal_input(A& a, B& b, F f) {
  f(fig::deposition_rate, a.deposition_rate, b.deposition_rate), f(fig::linear_mass, a.linear_mass, b.linear_mass);
  f(fig::largest_leg, a.largest_leg, b.largest_leg), f(fig::largest_area, a.largest_area, b.largest_area);
  f(fig::electrode_length, a.electrode_length, b.electrode_length), f(fig::stub, a.stub, b.stub);
  f(fig::piece_mass, a.piece_mass, b.piece_mass), f(fig::electrode_change, a.electrode_change, b.electrode_change);
  f(fig::flux_ratio, a.flux_ratio, b.flux_ratio), f(fig::flux_price, a.flux_price, b.flux_price);
}

template <class A, class B, class F>
void each_wear_part_input(A& a, B& b, F f) {
  f(fig::wear_part_price, a.price, b.price), f(fig::wear_part_life, a.arc, b.arc);
  f(fig::wear_part_length, a.length, b.length), f(fig::wear_part_starts, a.starts, b.starts);
}

GougeShape gouge_shape(const RateBook&, const Joint&);
GougeInputs<Sourced> gouge_inputs(const RateBook&, const Joint&);
MetalShape metal_shape(const RateBook&, const Joint&, const PassGroup&);
MetalInputs<Sourced> metal_inputs(const RateBook&, const Joint&, const PassGroup&);
std::vector<WearLife> wear_lives(const RateBook&, const PassGroup&);
std::vector<WearPartInputs<Sourced>> wear_parts(const RateBook&, const PassGroup&);

}  // namespace seambook
