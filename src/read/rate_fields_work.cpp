#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr auto process_own = std::to_array({
    required(field<&ProcessText::process>("process", "ISO 4063 number or AWS letters: 135")),
    required(field<&ProcessText::grade>("grade", "name of a labour grade: welder")),
    field<&ProcessText::only_when_asked>(
        "only_when_asked",
        "whether it is chosen only for joints that ask for it, or that no other fits: true or false"),
    or_zero(field<&ProcessText::start>("start", "attended time per start: 0.15 min")),
    or_zero(field<&ProcessText::tack>("tack", "time per tack: 0.4 min")),
    field<&ProcessText::tack_pitch>("tack_pitch", "from tack to tack: 200 mm"),
    field<&ProcessText::tack_pitch_thin>("tack_pitch_thin", "from tack to tack on thin members: 60 mm"),
    field<&ProcessText::thin_below>("thin_below", "members thinner than this are thin: 2 mm"),
    or_zero(
        field<&ProcessText::gas_before_and_after>("gas_before_and_after", "gas flow before and after each start: 2 s")),
    or_zero(field<&ProcessText::interpass_cleaning>("interpass_cleaning", "between passes: 0.5 min/m")),
    or_zero(
        field<&ProcessText::fit_up_extra>("fit_up_extra", "close fit-up and clamping, beyond the usual: 2.5 min/m")),
    field<&ProcessText::operating_factor>("operating_factor", "arc or beam time as a share of floor time: 35 %"),
    field<&ProcessText::deposition_efficiency>("deposition_efficiency",
                                               "metal deposited as a share of filler used: 95 %"),
    field<&ProcessText::source_efficiency>("source_efficiency", "arc or beam power as a share of electric input: 85 %"),
    field<&ProcessText::gas_loss>("gas_loss", "gas bought as a share of gas flowed: 110 %"),
    field<&ProcessText::thermal_efficiency>("thermal_efficiency", "heat into the joint as a share of arc energy: 80 %"),
    or_zero(field<&ProcessText::auxiliary_power>("auxiliary_power", "extraction and chiller while welding: 1.5 kW")),
    or_zero(field<&ProcessText::electrode_change>("electrode_change", "stub out, next electrode in: 0.5 min")),
    or_zero(field<&ProcessText::wear>("wear", "wear parts per hour of arc or beam: 0.60 EUR/h")),
    or_zero(field<&ProcessText::equipment>("equipment", "per hour that the station is occupied: 3.10 EUR/h")),
});
constexpr auto process_table = joined(process_own, figure_evidence_fields<&ProcessText::evidence>());

constexpr auto procedure_use = std::to_array({
    required(field<&ProcedureText::name>("name", "by which joints name it: CG-F3")),
    required(field<&ProcedureText::process>("process", "ISO 4063 number or AWS letters: 135")),
    required(field<&ProcedureText::groups>("groups", "base-metal groups by ISO/TR 15608: [\"1\"]")),
    required(known_as(weld_keys, field<&ProcedureText::welds>("welds", "for which it is: [fillet]"))),
    required(field<&ProcedureText::positions>("positions", "for which it is: [PA, PB]")),
    required(field<&ProcedureText::size>("size",
                                         "leg of fillets, thickness of grooves and seams, that it is set for: 3 mm")),
    required(rising(
        field<&ProcedureText::thickness>("thickness", "of the thinner member, smallest and largest: [1.5 mm, 8 mm]"))),
});
constexpr auto procedure_settings = std::to_array({
    field<&ProcedureText::filler>("filler", "name of a filler, or none: G3Si1-1.0"),
    field<&ProcedureText::gas>("gas", "name of a gas: M21"),
    field<&ProcedureText::gas_flow>("gas_flow", "shielding gas: 12 L/min"),
    field<&ProcedureText::flux>("flux", "name of a flux, for submerged arcs: F-AB1"),
    field<&ProcedureText::current>("current", "of the arc: 115 A"),
    field<&ProcedureText::voltage>("voltage", "of the arc: 18.5 V"),
    field<&ProcedureText::wire_feed>("wire_feed", "of the wire: 4.5 m/min"),
    required(field<&ProcedureText::travel_speed>("travel_speed", "along the weld: 680 mm/min")),
    rising(field<&ProcedureText::travel_range>("travel_range", "slowest and fastest: [450 mm/min, 900 mm/min]")),
    field<&ProcedureText::area_per_pass>("area_per_pass", "weld metal that one pass lays: 20 mm2"),
    field<&ProcedureText::deposition_rate>("deposition_rate", "weld metal laid in an hour of arc time: 1.2 kg/h"),
    field<&ProcedureText::beam_power>("beam_power", "of a laser: 1100 W"),
    field<&ProcedureText::scan_width>("scan_width", "of a laser: 2 mm"),
    or_zero(field<&ProcedureText::focus>("focus", "of a laser, from the surface: 0 mm")),
    field<&ProcedureText::hydrogen>("hydrogen", "diffusible, in the weld metal, in place of the filler's: 5 ml/100g"),
    field<&ProcedureText::oscillation>("oscillation", "shape of a laser's oscillation, in words"),
    field<&ProcedureText::polarity>("polarity", "of the electrode: DCEP, DCEN or AC"),
    field<&ProcedureText::transfer>("transfer", "of metal, in words: pulsed"),
});
constexpr auto procedure_table =
    joined(joined(procedure_use, procedure_settings), figure_evidence_fields<&ProcedureText::evidence>());

constexpr auto change_task_own = std::to_array({
    required(field<&ChangeTaskText::name>("name", "what is done: swap the gas")),
    required(known_as(set_up_words,
                      field<&ChangeTaskText::when>(
                          "when", "what changes: process, filler, feed, gas, cleanliness, program, job or weldment"))),
    field<&ChangeTaskText::from>("from", "only from these: [carbon]"),
    field<&ChangeTaskText::to>("to", "only to these: [stainless]"),
    required(or_zero(field<&ChangeTaskText::time>("time", "what it takes: 4 min"))),
    field<&ChangeTaskText::cold>("cold", "also when nothing was mounted: true or false"),
});
constexpr auto change_task_table = joined(change_task_own, figure_evidence_fields<&ChangeTaskText::evidence>());

}  // namespace

template <>
std::span<const Field<ProcessText>> fields<ProcessText>() {
  return process_table;
}
template <>
std::span<const Field<ProcedureText>> fields<ProcedureText>() {
  return procedure_table;
}
template <>
std::span<const Field<ChangeTaskText>> fields<ChangeTaskText>() {
  return change_task_table;
}

}  // namespace seambook
