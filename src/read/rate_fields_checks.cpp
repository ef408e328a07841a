// Keys of the checks for plausibility.
#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr std::string_view finding_levels[] = {"note", "warning", "error"};

constexpr auto checks_welds = std::to_array({
    field<&ChecksText::mass_balance>("mass_balance", "difference of deposition and travel speed that warns: 25 %"),
    field<&ChecksText::leg_over_thickness>("leg_over_thickness", "leg over the thinner member that warns: 100 %"),
    field<&ChecksText::leg_over_thin>("leg_over_thin", "the same for thin members: 150 %"),
    field<&ChecksText::thin_below>("thin_below", "members thinner than this are thin: 3 mm"),
    field<&ChecksText::oversized_procedure>("oversized_procedure",
                                            "leg that a named procedure is set for, over the joint's: 125 %"),
    field<&ChecksText::element_over_leg>("element_over_leg", "shortest weld element over its leg: 400 %"),
    field<&ChecksText::element_least>("element_least", "shortest weld element: 40 mm"),
    field<&ChecksText::element_least_above>("element_least_above", "for members thicker than this: 3.2 mm"),
    field<&ChecksText::lap_edge_from>("lap_edge_from",
                                      "thickness from which a lapped plate's edge must stand beside the weld: 6 mm"),
    field<&ChecksText::lap_edge_less>("lap_edge_less", "by which the leg is less than that thickness: 2 mm"),
    field<&ChecksText::bevel_from>("bevel_from", "thickness from which bevelling edges takes minutes: 10 mm"),
    field<&ChecksText::gouge_from>("gouge_from", "thickness from which the root between two sides is gouged: 12 mm"),
    field<&ChecksText::counted_over_section>(
        "counted_over_section", "what counted passes lay over the section they fill, that is refused: 200 %"),
    rising(field<&ChecksText::thickness>("thickness", "that is no slip of the unit: [0.3 mm, 200 mm]")),
    field<&ChecksText::leg_most>("leg_most", "larger legs look like a slip of the unit: 25 mm"),
    field<&ChecksText::combined_thickness>("combined_thickness",
                                           "of carbon steel, above which preheat must be stated: 50 mm"),
    field<&ChecksText::carbon_equivalent>("carbon_equivalent",
                                          "CE of carbon steel, above which preheat must be stated: 0.45 %"),
});

constexpr auto checks_work = std::to_array({
    field<&ChecksText::deposition_rate_off>("deposition_rate_off", "beyond the usual deposition rate: 30 %"),
    field<&ChecksText::voltage_off>("voltage_off", "off the usual voltage at this current: 25 %"),
    field<&ChecksText::speed_slip>("speed_slip", "times the usual travel speed that looks like a slip: 10"),
    rising(field<&ChecksText::purge_flow>("purge_flow", "that is usual: [4 L/min, 20 L/min]")),
    field<&ChecksText::fit_up_share>("fit_up_share", "least fit-up over the time of welding, in small lots: 25 %"),
    field<&ChecksText::fit_up_lot>("fit_up_lot", "largest lot for which that is checked: 5"),
    field<&ChecksText::start_elements>("start_elements", "weld elements for which starts must take time: 50"),
    rising(
        field<&ChecksText::price_per_mass>("price_per_mass", "of metal and filler, no slip: [0.5 EUR/kg, 80 EUR/kg]")),
    rising(field<&ChecksText::labour_share>("labour_share", "of the cost of welding by arc: [35 %, 97 %]")),
    field<&ChecksText::power_share>("power_share", "electricity over the cost of welding: 8 %"),
    rising(or_zero(field<&ChecksText::profit>("profit", "margin or mark-up that is usual: [3 %, 45 %]"))),
    field<&ChecksText::contingency_most>("contingency_most", "largest contingency: 20 %"),
});
constexpr auto checks_table = joined(joined(checks_welds, checks_work), evidence_fields<&ChecksText::evidence>());

/// Which passes a check is about.
template <auto Scope>
constexpr auto scope_fields() {
  return std::to_array({
      field<Scope, &CheckScopeText::processes>("processes", "ISO 4063 numbers or AWS letters: [131, 135]"),
      known_as(weld_keys, field<Scope, &CheckScopeText::welds>("welds", "kinds of weld: [single_v]")),
      field<Scope, &CheckScopeText::positions>("positions", "welding positions by ISO 6947: [PF]"),
      field<Scope, &CheckScopeText::groups>("groups", "base-metal groups by ISO/TR 15608: [\"8\"]"),
      field<Scope, &CheckScopeText::except_groups>("except_groups", "all base-metal groups but these: [\"8\"]"),
      field<Scope, &CheckScopeText::base_metals>("base_metals", "names of base metals: [\"1.4404\"]"),
      known_as(filler_forms, field<Scope, &CheckScopeText::forms>("forms", "of the filler: [solid_wire, cored_wire]")),
      field<Scope, &CheckScopeText::transfers>("transfers", "of metal, as procedures say it: [short arc]"),
      field<Scope, &CheckScopeText::fillers>("fillers", "how the filler's classification begins: [ISO 14341]"),
      field<Scope, &CheckScopeText::gases>("gases", "how the gas's group by ISO 14175 begins: [C, M2]"),
      field<Scope, &CheckScopeText::polarities>("polarities", "of the electrode: [DCEN]"),
      rising(or_zero(field<Scope, &CheckScopeText::thickness>("thickness", "of the thinner member: [3 mm, 6 mm]"))),
      rising(field<Scope, &CheckScopeText::diameter>("diameter", "of the filler: [0.9 mm, 1.1 mm]")),
  });
}

constexpr auto range_check_own = std::to_array({
    rising(field<&RangeCheckText::travel_speed>("travel_speed", "[150 mm/min, 800 mm/min]")),
    rising(field<&RangeCheckText::deposition_rate>("deposition_rate", "in arc time: [1 kg/h, 2.3 kg/h]")),
    rising(or_zero(field<&RangeCheckText::heat_input>("heat_input", "[0.5 kJ/mm, 2.5 kJ/mm]"))),
    rising(field<&RangeCheckText::gas_flow>("gas_flow", "[10 L/min, 25 L/min]")),
    rising(or_zero(field<&RangeCheckText::area_per_pass>("area_per_pass", "[5 mm2, 60 mm2]"))),
    rising(field<&RangeCheckText::operating_factor>("operating_factor", "arc time over floor time: [5 %, 45 %]")),
    field<&RangeCheckText::operating_factor_most>("operating_factor_most", "what nobody reaches: 60 %"),
    field<&RangeCheckText::voltage_at_zero>("voltage_at_zero", "usual voltage, drawn out to no current: 14 V"),
    field<&RangeCheckText::voltage_at_100_a>("voltage_at_100_a", "usual voltage at 100 A: 19 V"),
    field<&RangeCheckText::leg_least>("leg_least", "smallest leg on this thickness: 3 mm"),
    field<&RangeCheckText::leg_of_one_pass>("leg_of_one_pass", "largest leg of one pass: 8 mm"),
    field<&RangeCheckText::rated_current>("rated_current", "of the power source: 350 A"),
    field<&RangeCheckText::passes_without_wait>("passes_without_wait",
                                                "passes on a joint beyond which the part must wait: 8"),
    field<&RangeCheckText::duty_cycle>("duty_cycle", "share of ten minutes at the rated current: 60 %"),
});
constexpr auto range_check_table = joined(joined(scope_fields<&RangeCheckText::scope>(), range_check_own),
                                          evidence_fields<&RangeCheckText::evidence>());

constexpr auto combination_check_own = std::to_array({
    required(chosen_from(finding_levels, field<&CombinationCheckText::level>("level", "note, warning or error"))),
    required(field<&CombinationCheckText::why>("why", "what is wrong with it, in words")),
    field<&CombinationCheckText::look>("look", "what to look at or to take instead, in words"),
});
constexpr auto combination_check_table =
    joined(joined(scope_fields<&CombinationCheckText::scope>(), combination_check_own),
           evidence_fields<&CombinationCheckText::evidence>());

constexpr auto laser_check_own = std::to_array({
    field<&LaserCheckText::thickness_per_kilowatt>("thickness_per_kilowatt",
                                                   "from one side, for each kilowatt: 2.2 mm"),
    field<&LaserCheckText::thickness_most_per_kilowatt>("thickness_most_per_kilowatt", "beyond belief: 3 mm"),
    field<&LaserCheckText::melted_width>("melted_width", "of a seam when the procedure has no scan width: 1.5 mm"),
    field<&LaserCheckText::absorbed>("absorbed", "share of the beam that the metal takes up: 80 %"),
    field<&LaserCheckText::melting_share>("melting_share", "share of that which melts the seam: 48 %"),
    field<&LaserCheckText::melting_energy>("melting_energy", "that melts a volume of the metal: 8 J/mm3"),
    field<&LaserCheckText::gap_alone>("gap_alone", "largest gap without filler, share of the thinner member: 10 %"),
    field<&LaserCheckText::gap_with_wire>("gap_with_wire", "the same with filler: 50 %"),
});
constexpr auto laser_check_table = joined(joined(scope_fields<&LaserCheckText::scope>(), laser_check_own),
                                          evidence_fields<&LaserCheckText::evidence>());

}  // namespace

template <>
std::span<const Field<ChecksText>> fields<ChecksText>() {
  return checks_table;
}
template <>
std::span<const Field<RangeCheckText>> fields<RangeCheckText>() {
  return range_check_table;
}
template <>
std::span<const Field<CombinationCheckText>> fields<CombinationCheckText>() {
  return combination_check_table;
}
template <>
std::span<const Field<LaserCheckText>> fields<LaserCheckText>() {
  return laser_check_table;
}

}  // namespace seambook
