// Heat in the rate book and in a joint: what steels are made of, what preheating takes, what a joint states of its
// temperatures. Absent numbers have no source.
#pragma once

#include <string_view>

#include "basics/composition.hpp"
#include "resolve/source.hpp"

namespace seambook {

/// What is known of a steel's hardening. Stated equivalents go before those by composition.
struct Hardening {
  Composition<Sourced> shares;
  bool composition = false;
  Known<dim::ratio> carbon_equivalent, cet;
};

/// Preheating with a burner.
struct Preheating {
  Known<dim::power> burner;
  Known<dim::ratio> burner_efficiency, attended;  // attended absent: all of the burner's minutes
  Known<dim::money_per_energy> fuel;
  Known<dim::length> soak_width;
  Known<dim::specific_heat> specific_heat;
  Known<dim::temperature> room;
  Known<dim::time> check_per_joint, check_per_pass;  // absent: none
};

/// What a joint states, or inherits from its weldment or job.
struct JointHeat {
  bool preheat_stated = false;  // also where it is none: then `preheat` is absent
  bool tee = false;             // heat flows away in three runs of plate, else in two
  Known<dim::temperature> preheat, interpass_max;
  Known<dim::line_energy> heat_input_max;
};

/// Carbon and low-alloy steels, groups 1 to 6 of ISO/TR 15608: those that preheat keeps from hardening.
bool hardens(std::string_view group);
/// Groups 1 to 11: all steels.
bool is_steel(std::string_view group);
/// Groups 1 to 4, for which method B is made (EN 1011-2, from memory).
bool suits_method_b(std::string_view group);

}  // namespace seambook
