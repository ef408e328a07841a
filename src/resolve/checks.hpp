// Checks for plausibility with their names resolved: thresholds, usual ranges, combinations to query or refuse, and
// what a laser can do. A threshold that the rate book leaves out is absent, and its check says nothing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "basics/diagnostics.hpp"
#include "basics/units.hpp"

namespace seambook {

enum class WeldKind : std::uint8_t;
enum class FillerForm : std::uint8_t;

template <Dim D>
struct Between {
  Quantity<D> low, high;
};
template <Dim D>
using Usual = std::optional<Between<D>>;

struct Checks {
  Ratio<> mass_balance, leg_over_thickness, leg_over_thin;
  Length<> thin_below;
  std::optional<Ratio<>> oversized_procedure, element_over_leg;
  std::optional<Length<>> element_least, element_least_above, lap_edge_from, lap_edge_less;
  std::optional<Length<>> bevel_from, gouge_from;
  std::optional<Ratio<>> counted_over_section;
  std::optional<Ratio<>> deposition_rate_off, voltage_off, speed_slip;
  Usual<dim::flow> purge_flow;
  std::optional<Ratio<>> fit_up_share;
  std::optional<std::int64_t> fit_up_lot, start_elements;
  std::optional<Length<>> combined_thickness, leg_most;
  std::optional<Ratio<>> carbon_equivalent;
  Usual<dim::length> thickness;
  Usual<dim::money_per_mass> price_per_mass;
  Usual<dim::ratio> labour_share, profit;
  std::optional<Ratio<>> power_share, contingency_most;
};

/// Which passes a check is about: each list with entries must hold the pass's own.
struct CheckScope {
  std::vector<std::string> processes, positions, groups, except_groups, base_metals, transfers, fillers, gases,
      polarities;
  std::vector<WeldKind> welds;
  std::vector<FillerForm> forms;
  Usual<dim::length> thickness, diameter;
};

struct RangeCheck {
  CheckScope scope;
  Usual<dim::speed> travel_speed;
  Usual<dim::mass_rate> deposition_rate;
  Usual<dim::line_energy> heat_input;
  Usual<dim::flow> gas_flow;
  Usual<dim::area> area_per_pass;
  Usual<dim::ratio> operating_factor;
  std::optional<Ratio<>> operating_factor_most, duty_cycle, passes_without_wait;
  std::optional<Voltage<>> voltage_at_zero, voltage_at_100_a;
  std::optional<Length<>> leg_least, leg_of_one_pass;
  std::optional<Current<>> rated_current;
};

struct CombinationCheck {
  CheckScope scope;
  Level level = Level::warning;
  std::string why, look;
};

struct LaserCheck {
  CheckScope scope;
  std::optional<Length<>> thickness_per_kilowatt, thickness_most_per_kilowatt, melted_width;
  std::optional<Ratio<>> absorbed, melting_share, gap_alone, gap_with_wire;
  std::optional<EnergyPerVolume<>> melting_energy;
};

}  // namespace seambook
