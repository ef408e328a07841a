// The keys of the shop floor: shifts, stations, welders.
#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr auto break_table = std::to_array({
    required(field<&BreakText::at>("at", "when it begins: 09:00")),
    required(field<&BreakText::time>("time", "how long it is: 15 min")),
});

constexpr auto shift_own = std::to_array({
    required(field<&ShiftText::name>("name", "by which stations and welders name it: day")),
    required(chosen_from(weekday_words, field<&ShiftText::days>("days", "on which it starts: [Mon, Tue, Wed]"))),
    required(field<&ShiftText::start>("start", "time of day: 06:30, or \"6:30 AM\"")),
    required(field<&ShiftText::end>("end", "time of day; the next day's where it is not after the start: 15:00")),
    field<&ShiftText::breaks>("breaks", "a list of them: {at: 09:00, time: 15 min}"),
    or_zero(field<&ShiftText::clear_up>("clear_up", "at the end, without work: 10 min")),
});
constexpr auto shift_table = joined(shift_own, evidence_fields<&ShiftText::evidence>());

constexpr auto overtime_own = std::to_array({
    required(field<&OvertimeText::shifts>("shifts", "after which it may be worked: [day]")),
    required(field<&OvertimeText::most>("most", "a day: 2 h")),
    required(or_zero(field<&OvertimeText::premium>("premium", "on the labour rate: 50 %"))),
});
constexpr auto overtime_table = joined(overtime_own, evidence_fields<&OvertimeText::evidence>());

constexpr auto eyewear_table = std::to_array({
    required(counted_in("nm", field<&EyewearText::wavelength>("wavelength", "for which it is rated: 1070 nm"))),
    required(field<&EyewearText::optical_density>("optical_density", "at that wavelength: 7")),
});

constexpr auto never_table = std::to_array({
    required(known_as(set_up_words, field<&NeverText::when>("when", "what changes: cleanliness"))),
    field<&NeverText::from>("from", "only from these: [carbon]"),
    field<&NeverText::to>("to", "only to these: [stainless]"),
});

constexpr auto station_own = std::to_array({
    required(field<&StationText::name>("name", "of the station: ST-1")),
    field<&StationText::title>("title", "in words: stainless bay"),
    required(field<&StationText::processes>("processes", "that it has: [135, 141]")),
    required(field<&StationText::groups>("groups", "base-metal groups that it takes: [\"8\"]")),
    field<&StationText::mounted>("mounted", "before the first work: {process: 135, gas: M21}"),
    field<&StationText::end_state>("end_state", "what must stand mounted when a plan ends: {gas: M21}"),
    field<&StationText::controlled_area>("controlled_area", "whether it is a laser controlled area: true or false"),
    field<&StationText::safety_officer>("safety_officer",
                                        "whether a laser safety officer is appointed for it: true or false"),
    field<&StationText::eyewear>("eyewear", "rated, at hand: {wavelength: 1070 nm, optical_density: 7}"),
    or_zero(field<&StationText::crane>("crane", "largest mass that it can turn or carry, 0 kg without any: 1000 kg")),
    field<&StationText::largest>("largest", "largest dimension of what it can take: 6 m"),
    field<&StationText::never>("never", "changes never made here: [{when: cleanliness, from: [carbon]}]"),
    field<&StationText::shifts>("shifts", "in which it is open; all when left out: [early]"),
});
constexpr auto station_table = joined(station_own, evidence_fields<&StationText::evidence>());

constexpr auto qualification_table = std::to_array({
    required(field<&QualificationText::process>("process", "ISO 4063 number or AWS letters: 135")),
    required(field<&QualificationText::groups>("groups", "base-metal groups by ISO/TR 15608: [\"8\"]")),
    required(field<&QualificationText::positions>("positions", "welding positions by ISO 6947: [PA, PB]")),
    rising(field<&QualificationText::thickness>("thickness", "smallest and largest: [3 mm, 24 mm]")),
    chosen_from(tested_welds,
                field<&QualificationText::welds>("welds", "fillet or groove; all when left out: [fillet, groove]")),
    chosen_from(tested_forms,
                field<&QualificationText::forms>("forms", "plate or tube; both when left out: [plate, tube]")),
    rising(field<&QualificationText::diameter>(
        "diameter", "outside, of tubes, the smallest, or smallest and largest: [21.3 mm, 200 mm]")),
    field<&QualificationText::last_used>("last_used", "when the process was last welded: 2026-05-22"),
    field<&QualificationText::basis_note>("basis_note", "what it rests on, in words: in-house test"),
    field<&QualificationText::until>("until", "last day on which it is valid: 2026-11-30"),
});

constexpr auto welder_table = std::to_array({
    required(field<&WelderText::stamp>("stamp", "of the welder: Q1")),
    required(field<&WelderText::grade>("grade", "name of a labour grade: welder")),
    field<&WelderText::shifts>("shifts", "in which the welder works; all when left out: [early]"),
    field<&WelderText::qualifications>("qualifications", "a list of {process: 135, groups: [\"8\"], positions: [PA]}"),
});

}  // namespace

template <>
std::span<const Field<BreakText>> fields<BreakText>() {
  return break_table;
}
template <>
std::span<const Field<ShiftText>> fields<ShiftText>() {
  return shift_table;
}
template <>
std::span<const Field<OvertimeText>> fields<OvertimeText>() {
  return overtime_table;
}
template <>
std::span<const Field<EyewearText>> fields<EyewearText>() {
  return eyewear_table;
}
template <>
std::span<const Field<NeverText>> fields<NeverText>() {
  return never_table;
}
template <>
std::span<const Field<StationText>> fields<StationText>() {
  return station_table;
}
template <>
std::span<const Field<QualificationText>> fields<QualificationText>() {
  return qualification_table;
}
template <>
std::span<const Field<WelderText>> fields<WelderText>() {
  return welder_table;
}

}  // namespace seambook
