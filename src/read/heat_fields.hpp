// The keys of heat in jobs: what may be said for a joint, and above it for all joints.
#pragma once

#include "read/field_table.hpp"

namespace seambook {

inline constexpr std::string_view joint_types[] = {"butt", "tee", "corner"};
inline constexpr std::string_view no_preheat = "none";

/// `none`, or a temperature.
inline void read_preheat(Reading& reading, Value value, const FieldInfo& info, HeatDefaults& into) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return;
  if (value.text() == no_preheat) {
    into.preheat = PreheatText{value.place(), {}};
  } else if (auto temperature = written_of<dim::temperature>(reading, value.text(), value.place(), info)) {
    into.preheat = PreheatText{value.place(), std::move(temperature)};
  }
}

template <auto Member>
constexpr auto heat_default_fields() {
  using S = decltype(owner_of(Member));
  return std::to_array<Field<S>>({
      {{.key = "preheat",
        .about = "least temperature before each pass, or none: 120 degC",
        .shape = Shape::amount,
        .dim = dim::temperature,
        .instead = no_preheat},
       [](Reading& reading, Value value, const FieldInfo& info, S& into) {
         read_preheat(reading, value, info, (into.*Member).heat);
       }},
      field<Member, &JointDefaults::heat, &HeatDefaults::interpass_max>(
          "interpass_max", "highest temperature before each next pass: 250 degC"),
      field<Member, &JointDefaults::heat, &HeatDefaults::heat_input_max>("heat_input_max",
                                                                         "limit of every pass: 2.5 kJ/mm"),
  });
}

}  // namespace seambook
