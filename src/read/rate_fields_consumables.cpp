#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr std::string_view flux_ratio_bases[] = {"per_deposit", "per_wire"};

constexpr auto pass_limit_own = std::to_array({
    field<&PassLimitText::process>("process", "ISO 4063 number or AWS letters, any when left out: 111"),
    field<&PassLimitText::positions>("positions", "where it holds, any when left out: [PF]"),
    field<&PassLimitText::leg>("leg", "largest fillet of one pass: 8 mm"),
    field<&PassLimitText::area>("area", "largest section of one pass, in place of the leg: 40 mm2"),
});
constexpr auto pass_limit_table = joined(pass_limit_own, figure_evidence_fields<&PassLimitText::evidence>());

constexpr auto gouging_own = std::to_array({
    field<&GougingText::depth>("depth", "of the groove where a joint states none: 4 mm"),
    field<&GougingText::width>("width", "of the groove where a joint states none: 8 mm"),
    or_zero(field<&GougingText::time>("time", "gouging and grinding clean, for one metre of weld: 6 min/m")),
    or_zero(field<&GougingText::carbons>("carbons", "carbon electrodes for one metre of weld: 1.20 EUR/m")),
});
constexpr auto gouging_table = joined(gouging_own, figure_evidence_fields<&GougingText::evidence>());

constexpr auto preheating_own = std::to_array({
    required(field<&PreheatingText::burner>("burner", "heat that the burner gives: 15 kW")),
    required(field<&PreheatingText::burner_efficiency>("burner_efficiency", "of that heat, what the part takes: 35 %")),
    required(or_zero(field<&PreheatingText::fuel>("fuel", "price of the heat that the burner gives: 0.16 EUR/kWh"))),
    required(field<&PreheatingText::soak_width>(
        "soak_width", "heated beside the joint, in each run of plate that leads heat away: 75 mm")),
    required(field<&PreheatingText::specific_heat>("specific_heat", "of steel: 490 J/kgK")),
    required(or_zero(field<&PreheatingText::room>("room", "temperature of the shop: 20 degC"))),
    or_zero(field<&PreheatingText::attended>("attended", "of the burner's minutes, all when left out: 50 %")),
    or_zero(field<&PreheatingText::check_per_joint>("check_per_joint", "of the temperature, before welding: 2 min")),
    or_zero(field<&PreheatingText::check_per_pass>("check_per_pass", "of the temperature, before each pass: 0.2 min")),
});
constexpr auto preheating_table = joined(preheating_own, evidence_fields<&PreheatingText::evidence>());

constexpr auto flux_own = std::to_array({
    required(field<&FluxText::name>("name", "by which procedures name it: F-AB1")),
    field<&FluxText::classification>("classification", "by its standard: ISO 14174 S A AB 1"),
    required(or_zero(field<&FluxText::price>("price", "what the shop pays: 1.90 EUR/kg"))),
    required(field<&FluxText::ratio>("ratio", "flux used over weld metal or wire: 110 %")),
    required(chosen_from(flux_ratio_bases, field<&FluxText::ratio_basis>(
                                               "ratio_basis", "per_deposit (weld metal) or per_wire (wire used)"))),
});
constexpr auto flux_table = joined(flux_own, figure_evidence_fields<&FluxText::evidence>());

constexpr auto wear_part_own = std::to_array({
    required(field<&WearPartText::name>("name", "of the part: contact tip")),
    required(field<&WearPartText::processes>("processes", "that wear it: [135, 136]")),
    required(field<&WearPartText::price>("price", "of one part, or of one regrind: 1.20 EUR")),
    field<&WearPartText::life>("life", "hours of arc or beam that it lasts: 8 h"),
    field<&WearPartText::life_length>("life_length", "length of passes that it lasts, in place of the hours: 4000 m"),
    field<&WearPartText::life_starts>("life_starts", "starts that it lasts, in place of the hours: 60"),
});
constexpr auto wear_part_table = joined(wear_part_own, figure_evidence_fields<&WearPartText::evidence>());

}  // namespace

template <>
std::span<const Field<PassLimitText>> fields<PassLimitText>() {
  return pass_limit_table;
}
template <>
std::span<const Field<GougingText>> fields<GougingText>() {
  return gouging_table;
}
template <>
std::span<const Field<PreheatingText>> fields<PreheatingText>() {
  return preheating_table;
}
template <>
std::span<const Field<FluxText>> fields<FluxText>() {
  return flux_table;
}
template <>
std::span<const Field<WearPartText>> fields<WearPartText>() {
  return wear_part_table;
}

}  // namespace seambook
