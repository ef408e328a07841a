// The tables of a job file's fields, by which jobs and take-offs are read.
#pragma once

#include "read/field_table.hpp"

namespace seambook {

template <>
std::span<const Field<BoughtText>> fields<BoughtText>();
template <>
std::span<const Field<HoldText>> fields<HoldText>();
template <>
std::span<const Field<PinText>> fields<PinText>();
template <>
std::span<const Field<OutsideText>> fields<OutsideText>();
template <>
std::span<const Field<PassText>> fields<PassText>();
template <>
std::span<const Field<BackgougeText>> fields<BackgougeText>();
template <>
std::span<const Field<ExcessText>> fields<ExcessText>();
template <>
std::span<const Field<JointText>> fields<JointText>();
template <>
std::span<const Field<WeldmentText>> fields<WeldmentText>();
template <>
std::span<const Field<OptionText>> fields<OptionText>();
template <>
std::span<const Field<JobText>> fields<JobText>();

}  // namespace seambook
