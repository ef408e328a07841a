// The tables of the fields that tell of labour.
#pragma once

#include "read/field_table.hpp"

namespace seambook {

template <>
std::span<const Field<LabourElementText>> fields<LabourElementText>();
template <>
std::span<const Field<JobElementText>> fields<JobElementText>();
template <>
std::span<const Field<OneOffText>> fields<OneOffText>();
template <>
std::span<const Field<InspectionText>> fields<InspectionText>();

}  // namespace seambook
