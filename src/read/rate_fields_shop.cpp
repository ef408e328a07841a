#include "read/rate_fields.hpp"

namespace seambook {
namespace {

constexpr auto labour_own = std::to_array({
    required(field<&LabourText::name>("name", "of the labour grade: welder")),
    field<&LabourText::rate>("rate", "loaded, in place of wage and burden: 54 EUR/h"),
    field<&LabourText::wage>("wage", "paid: 24 EUR/h"),
    or_zero(field<&LabourText::burden>("burden", "on top of the wage: 45 %")),
});
constexpr auto labour_table = joined(labour_own, figure_evidence_fields<&LabourText::evidence>());

constexpr auto allowances_own = std::to_array({
    or_zero(field<&AllowancesText::fit_up_per_part>("fit_up_per_part", "fitting one piece: 2 min")),
    or_zero(field<&AllowancesText::fit_up_per_joint>("fit_up_per_joint", "fitting one joint: 1.5 min")),
    or_zero(field<&AllowancesText::fit_up_per_metre>("fit_up_per_metre", "fitting one metre of joint: 1.5 min/m")),
    or_zero(field<&AllowancesText::purge_per_joint>("purge_per_joint", "setting up the purge of one joint: 4 min")),
    or_zero(field<&AllowancesText::purge_flow>("purge_flow", "gas behind the weld: 10 L/min")),
    field<&AllowancesText::purge_gas>("purge_gas", "name of a gas: I1"),
    or_zero(field<&AllowancesText::personal>("personal", "share added to attended minutes: 12 %")),
    field<&AllowancesText::personal_covers>("personal_covers",
                                            "what that share covers, in words, and whether breaks are in it"),
    or_zero(field<&AllowancesText::turns_two_sided>("turns_two_sided",
                                                    "turns of a weldment with a joint welded from two sides: 1")),
    or_zero(field<&AllowancesText::convexity>("convexity", "of fillets, share of the section: 10 %")),
    or_zero(field<&AllowancesText::excess_height>("excess_height", "cap of butt welds: 1 mm")),
    or_zero(
        field<&AllowancesText::excess_overlap>("excess_overlap", "by which the cap laps over each groove edge: 2 mm")),
});
constexpr auto allowances_table = joined(allowances_own, figure_evidence_fields<&AllowancesText::evidence>());

constexpr auto handling_own = std::to_array({
    required(field<&HandlingText::name>("name", "of the way to turn: by hand, hoist, crane")),
    field<&HandlingText::up_to>("up_to", "largest mass; any when left out: 25 kg"),
    required(or_zero(field<&HandlingText::turn>("turn", "time of one turn: 4 min"))),
});
constexpr auto handling_table = joined(handling_own, figure_evidence_fields<&HandlingText::evidence>());

constexpr auto finish_after_table = std::to_array({
    required(field<&FinishAfterText::process>("process", "ISO 4063 number or AWS letters: 521")),
    required(or_zero(field<&FinishAfterText::time>("time", "for one metre of weld: 6 min/m"))),
});

constexpr auto finish_own = std::to_array({
    required(field<&FinishText::name>("name", "by which joints name it: F1")),
    field<&FinishText::text>("text", "what is done, in words"),
    required(or_zero(field<&FinishText::time>("time", "for one metre of weld: 1.5 min/m"))),
    field<&FinishText::after>("after", "a list of what it takes after one process: {process: 521, time: 6 min/m}"),
});
constexpr auto finish_table = joined(finish_own, figure_evidence_fields<&FinishText::evidence>());

constexpr auto overhead_own = std::to_array({
    field<&OverheadText::in_rate>("in_rate", "whether the labour rates hold it: true or false"),
    or_zero(field<&OverheadText::added>("added", "share of labour cost, as its own line: 35 %")),
});
constexpr auto overhead_table = joined(overhead_own, figure_evidence_fields<&OverheadText::evidence>());

constexpr auto ranges_own = std::to_array({
    required(below_whole(field<&RangesText::published>("published", "of published figures, either way: 5 %"))),
    required(
        below_whole(field<&RangesText::common_practice>("common_practice", "of common practice, either way: 20 %"))),
    required(below_whole(field<&RangesText::assumption>("assumption", "of assumptions, either way: 40 %"))),
});
constexpr auto ranges_table = joined(ranges_own, evidence_fields<&RangesText::evidence>());

}  // namespace

template <>
std::span<const Field<LabourText>> fields<LabourText>() {
  return labour_table;
}
template <>
std::span<const Field<AllowancesText>> fields<AllowancesText>() {
  return allowances_table;
}
template <>
std::span<const Field<HandlingText>> fields<HandlingText>() {
  return handling_table;
}
template <>
std::span<const Field<FinishAfterText>> fields<FinishAfterText>() {
  return finish_after_table;
}
template <>
std::span<const Field<FinishText>> fields<FinishText>() {
  return finish_table;
}
template <>
std::span<const Field<OverheadText>> fields<OverheadText>() {
  return overhead_table;
}
template <>
std::span<const Field<RangesText>> fields<RangesText>() {
  return ranges_table;
}

}  // namespace seambook
