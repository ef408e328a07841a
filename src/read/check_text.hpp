// Checks for plausibility as the author of the rate book wrote them: thresholds, usual ranges of figures, combinations
// that an expert would query or refuse, and what a laser can do. A threshold that is not written is not checked.
#pragma once

#include "read/written.hpp"

namespace seambook {

/// Thresholds that hold whatever the process.
struct ChecksText {
  Place place;
  Maybe<dim::ratio> mass_balance;        // warn when deposition and travel speed differ by more
  Maybe<dim::ratio> leg_over_thickness;  // leg over thinner member, from `thin_below` up
  Maybe<dim::ratio> leg_over_thin;       // and below it
  Maybe<dim::length> thin_below;
  Maybe<dim::ratio> oversized_procedure;  // leg a named procedure is set for, over the joint's
  Maybe<dim::ratio> element_over_leg;     // least length of a weld element
  Maybe<dim::length> element_least, element_least_above;
  Maybe<dim::length> lap_edge_from, lap_edge_less;  // fillets along a plate's edge: from this thickness, leg less by
  Maybe<dim::length> bevel_from, gouge_from;        // from which thickness bevels, and roots of two sides, take work
  Maybe<dim::ratio> counted_over_section;           // counted passes that lay more than this of the section: refused
  Maybe<dim::ratio> deposition_rate_off, voltage_off, speed_slip;
  MaybeSpan<dim::flow> purge_flow;
  Maybe<dim::ratio> fit_up_share;
  std::optional<Whole> fit_up_lot, start_elements;
  Maybe<dim::length> combined_thickness;
  Maybe<dim::ratio> carbon_equivalent;
  MaybeSpan<dim::length> thickness;
  Maybe<dim::length> leg_most;
  MaybeSpan<dim::money_per_mass> price_per_mass;
  MaybeSpan<dim::ratio> labour_share, profit;
  Maybe<dim::ratio> power_share, contingency_most;
  Evidence evidence;
};

/// The passes that a check is about: each list that stands must hold the pass's own.
struct CheckScopeText {
  std::vector<Word> processes, welds, positions, groups, except_groups, base_metals, forms, transfers, fillers, gases,
      polarities;
  MaybeSpan<dim::length> thickness, diameter;  // of the thinner member; of the filler
};

/// Ranges in which figures of a pass are usual.
struct RangeCheckText {
  Place place;
  CheckScopeText scope;
  MaybeSpan<dim::speed> travel_speed;
  MaybeSpan<dim::mass_rate> deposition_rate;
  MaybeSpan<dim::line_energy> heat_input;
  MaybeSpan<dim::flow> gas_flow;
  MaybeSpan<dim::area> area_per_pass;
  MaybeSpan<dim::ratio> operating_factor;
  Maybe<dim::ratio> operating_factor_most;
  Maybe<dim::voltage> voltage_at_zero, voltage_at_100_a;  // two points of the line that the voltage keeps to
  Maybe<dim::length> leg_least, leg_of_one_pass;
  Maybe<dim::current> rated_current;
  Maybe<dim::ratio> duty_cycle;
  std::optional<Whole> passes_without_wait;
  Evidence evidence;
};

/// What should not, or cannot, be put together.
struct CombinationCheckText {
  Place place;
  CheckScopeText scope;
  std::optional<Word> level, why, look;
  Evidence evidence;
};

/// What a laser beam can do on a kind of base metal.
struct LaserCheckText {
  Place place;
  CheckScopeText scope;
  Maybe<dim::length> thickness_per_kilowatt, thickness_most_per_kilowatt, melted_width;
  Maybe<dim::ratio> absorbed, melting_share;
  Maybe<dim::energy_per_volume> melting_energy;
  Maybe<dim::ratio> gap_alone, gap_with_wire;  // largest gap, share of the thinner member
  Evidence evidence;
};

}  // namespace seambook
