// The tables of a day file's fields.
#pragma once

#include "read/day_text.hpp"
#include "read/field_table.hpp"

namespace seambook {

template <>
std::span<const Field<AbsentText>> fields<AbsentText>();
template <>
std::span<const Field<DownText>> fields<DownText>();
template <>
std::span<const Field<ArrivedText>> fields<ArrivedText>();
template <>
std::span<const Field<StartedText>> fields<StartedText>();
template <>
std::span<const Field<DoneText>> fields<DoneText>();
template <>
std::span<const Field<ReleasedText>> fields<ReleasedText>();
template <>
std::span<const Field<RushText>> fields<RushText>();
template <>
std::span<const Field<BlockedText>> fields<BlockedText>();
template <>
std::span<const Field<DayPinText>> fields<DayPinText>();
template <>
std::span<const Field<DayOvertimeText>> fields<DayOvertimeText>();
template <>
std::span<const Field<MountedText>> fields<MountedText>();
template <>
std::span<const Field<DayText>> fields<DayText>();

}  // namespace seambook
