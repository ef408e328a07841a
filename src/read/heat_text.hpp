// Heat as its author wrote it: the composition of steels, what preheating takes in this shop, and what jobs say of
// preheat and interpass temperature.
#pragma once

#include "read/written.hpp"

namespace seambook {

/// Mass shares: `{carbon: 0.16 %, manganese: 1.40 %}`.
struct CompositionText {
  Place place;
  Maybe<dim::ratio> carbon, silicon, manganese, chromium, molybdenum, vanadium, nickel, copper, niobium, boron;
};

/// `120 degC`, or `none` as a statement of its own.
struct PreheatText {
  Place place;
  Maybe<dim::temperature> temperature;  // absent: none
};

/// What a job, a weldment or a joint may say of heat; the nearest wins.
struct HeatDefaults {
  std::optional<PreheatText> preheat;
  Maybe<dim::temperature> interpass_max;
  Maybe<dim::line_energy> heat_input_max;
};

/// What preheating with a burner takes.
struct PreheatingText {
  Place place;
  Maybe<dim::power> burner;
  Maybe<dim::ratio> burner_efficiency, attended;  // of its heat, what the part takes; of its minutes, what is attended
  Maybe<dim::money_per_energy> fuel;
  Maybe<dim::length> soak_width;  // beside the joint, in every run of plate that leads heat away
  Maybe<dim::specific_heat> specific_heat;
  Maybe<dim::temperature> room;
  Maybe<dim::time> check_per_joint, check_per_pass;
  Evidence evidence;
};

}  // namespace seambook
