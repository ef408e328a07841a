#include "read/rate_fields.hpp"
#include "read/weld_fields.hpp"

namespace seambook {
namespace {

constexpr auto composition_table = std::to_array({
    field<&CompositionText::carbon>("carbon", "mass share: 0.16 %"),
    or_zero(field<&CompositionText::silicon>("silicon", "mass share: 0.30 %")),
    or_zero(field<&CompositionText::manganese>("manganese", "mass share: 1.40 %")),
    or_zero(field<&CompositionText::chromium>("chromium", "mass share: 0.05 %")),
    or_zero(field<&CompositionText::molybdenum>("molybdenum", "mass share: 0.02 %")),
    or_zero(field<&CompositionText::vanadium>("vanadium", "mass share: 0.01 %")),
    or_zero(field<&CompositionText::nickel>("nickel", "mass share: 0.10 %")),
    or_zero(field<&CompositionText::copper>("copper", "mass share: 0.15 %")),
    or_zero(field<&CompositionText::niobium>("niobium", "mass share: 0.02 %")),
    or_zero(field<&CompositionText::boron>("boron", "mass share: 0.0005 %")),
});

constexpr auto base_metal_own = std::to_array({
    required(field<&BaseMetalText::name>("name", "by which jobs name it: S235")),
    field<&BaseMetalText::also>("also", "other names: [S235JR, \"1.0038\"]"),
    required(field<&BaseMetalText::group>("group", "by ISO/TR 15608: \"1.1\"")),
    required(field<&BaseMetalText::cleanliness>("cleanliness", "what a station must be clean for: carbon, stainless")),
    field<&BaseMetalText::density>("density", "of the metal: 7.85 g/cm3"),
    or_zero(field<&BaseMetalText::price>("price", "what the shop pays: 1.15 EUR/kg")),
    field<&BaseMetalText::yield>("yield", "net mass as a share of the mass bought: 85 %"),
    field<&BaseMetalText::composition>("composition", "of the steel, for its carbon equivalents: {carbon: 0.16 %}"),
    field<&BaseMetalText::carbon_equivalent>("carbon_equivalent", "CE (IIW), in place of the computed one: 0.43 %"),
    field<&BaseMetalText::specific_heat>("specific_heat", "in place of that of steel under 'preheating': 900 J/kgK"),
    field<&BaseMetalText::cet>("cet", "CET of EN 1011-2, in place of the computed one: 0.31 %"),
});
constexpr auto base_metal_table = joined(base_metal_own, figure_evidence_fields<&BaseMetalText::evidence>());

constexpr auto filler_own = std::to_array({
    required(field<&FillerText::name>("name", "by which procedures name it: G3Si1-1.0")),
    required(
        known_as(filler_forms, field<&FillerText::form>("form", "solid_wire, cored_wire, rod or covered_electrode"))),
    field<&FillerText::classification>("classification", "by its standard: ISO 14341-A G3Si1"),
    required(field<&FillerText::diameter>("diameter", "of wire, rod or core: 1.0 mm")),
    required(field<&FillerText::density>("density", "of the metal: 7.85 g/cm3")),
    required(or_zero(field<&FillerText::price>("price", "what the shop pays: 2.60 EUR/kg"))),
    field<&FillerText::pack>("pack", "mass of one spool or box: 15 kg"),
    field<&FillerText::length>("length", "of one covered electrode: 350 mm"),
    field<&FillerText::stub>("stub", "thrown away of each covered electrode: 50 mm"),
    field<&FillerText::piece_mass>("piece_mass", "of one electrode or rod, covering included: 33 g"),
    field<&FillerText::linear_mass>("linear_mass", "of a metre of tubular wire: 7.6 g/m"),
    field<&FillerText::hydrogen>("hydrogen", "diffusible, in the weld metal: 5 ml/100g"),
});
constexpr auto filler_table = joined(filler_own, figure_evidence_fields<&FillerText::evidence>());

constexpr auto gas_own = std::to_array({
    required(field<&GasText::name>("name", "by which procedures name it: M21")),
    field<&GasText::designation>("designation", "by ISO 14175: ISO 14175 - M21"),
    required(or_zero(field<&GasText::price>("price", "what the shop pays: 6.20 EUR/m3"))),
});
constexpr auto gas_table = joined(gas_own, figure_evidence_fields<&GasText::evidence>());

constexpr auto preparation_own = std::to_array({
    required(known_as(weld_keys, field<&PreparationText::weld>("weld", weld_kinds_in_words))),
    required(rising(field<&PreparationText::thickness>("thickness", "for which it is taken: [2 mm, 20 mm]"))),
    field<&PreparationText::groove_angle>("groove_angle", "included angle: 60 deg"),
    or_zero(field<&PreparationText::gap>("gap", "root gap: 2 mm")),
    or_zero(field<&PreparationText::root_face>("root_face", "root face: 1 mm")),
    field<&PreparationText::radius>("radius", "root radius of a U or J: 6 mm"),
    at_most(2, field<&PreparationText::sides>("sides", "2 where it is for square edges welded from both sides")),
});
constexpr auto preparation_table = joined(preparation_own, figure_evidence_fields<&PreparationText::evidence>());

}  // namespace

template <>
std::span<const Field<CompositionText>> fields<CompositionText>() {
  return composition_table;
}
template <>
std::span<const Field<BaseMetalText>> fields<BaseMetalText>() {
  return base_metal_table;
}
template <>
std::span<const Field<FillerText>> fields<FillerText>() {
  return filler_table;
}
template <>
std::span<const Field<GasText>> fields<GasText>() {
  return gas_table;
}
template <>
std::span<const Field<PreparationText>> fields<PreparationText>() {
  return preparation_table;
}

}  // namespace seambook
