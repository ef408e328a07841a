// The tables of a rate book's fields. The sections stand in files of tables: the shop, its floor, its materials, its
// work, its checks.
#pragma once

#include "read/field_table.hpp"

namespace seambook {

template <>
std::span<const Field<LabourText>> fields<LabourText>();
template <>
std::span<const Field<AllowancesText>> fields<AllowancesText>();
template <>
std::span<const Field<HandlingText>> fields<HandlingText>();
template <>
std::span<const Field<FinishAfterText>> fields<FinishAfterText>();
template <>
std::span<const Field<FinishText>> fields<FinishText>();
template <>
std::span<const Field<OverheadText>> fields<OverheadText>();
template <>
std::span<const Field<RangesText>> fields<RangesText>();
template <>
std::span<const Field<PriceText>> fields<PriceText>();
template <>
std::span<const Field<RiskClassText>> fields<RiskClassText>();
template <>
std::span<const Field<LearningText>> fields<LearningText>();
template <>
std::span<const Field<FreightClassText>> fields<FreightClassText>();
template <>
std::span<const Field<FreightText>> fields<FreightText>();
template <>
std::span<const Field<ChecksText>> fields<ChecksText>();
template <>
std::span<const Field<RangeCheckText>> fields<RangeCheckText>();
template <>
std::span<const Field<CombinationCheckText>> fields<CombinationCheckText>();
template <>
std::span<const Field<LaserCheckText>> fields<LaserCheckText>();
template <>
std::span<const Field<BaseMetalText>> fields<BaseMetalText>();
template <>
std::span<const Field<FillerText>> fields<FillerText>();
template <>
std::span<const Field<GasText>> fields<GasText>();
template <>
std::span<const Field<PreparationText>> fields<PreparationText>();
template <>
std::span<const Field<ProcessText>> fields<ProcessText>();
template <>
std::span<const Field<ProcedureText>> fields<ProcedureText>();
template <>
std::span<const Field<BreakText>> fields<BreakText>();
template <>
std::span<const Field<ShiftText>> fields<ShiftText>();
template <>
std::span<const Field<OvertimeText>> fields<OvertimeText>();
template <>
std::span<const Field<EyewearText>> fields<EyewearText>();
template <>
std::span<const Field<NeverText>> fields<NeverText>();
template <>
std::span<const Field<StationText>> fields<StationText>();
template <>
std::span<const Field<ChangeTaskText>> fields<ChangeTaskText>();
template <>
std::span<const Field<QualificationText>> fields<QualificationText>();
template <>
std::span<const Field<WelderText>> fields<WelderText>();
template <>
std::span<const Field<InvestmentLineText>> fields<InvestmentLineText>();
template <>
std::span<const Field<ScenarioText>> fields<ScenarioText>();
template <>
std::span<const Field<InvestmentText>> fields<InvestmentText>();
template <>
std::span<const Field<PassLimitText>> fields<PassLimitText>();
template <>
std::span<const Field<GougingText>> fields<GougingText>();
template <>
std::span<const Field<FluxText>> fields<FluxText>();
template <>
std::span<const Field<WearPartText>> fields<WearPartText>();
template <>
std::span<const Field<RateText>> fields<RateText>();

/// Every entry says what it rests on.
template <auto Member>
constexpr auto evidence_fields() {
  return std::to_array({
      required(field<Member, &Evidence::basis>("basis", "published, common practice or assumption")),
      required(field<Member, &Evidence::source>("source", "where the figures come from, in words")),
  });
}

/// Entries whose figures can be in doubt.
template <auto Member>
constexpr auto figure_evidence_fields() {
  return joined(evidence_fields<Member>(),
                std::to_array({below_whole(field<Member, &Evidence::range>(
                    "range", "how far the figures may lie off either way, in place of what 'ranges' gives: 10 %"))}));
}

}  // namespace seambook
