// The columns of a take-off: which key of a joint each heading names, and the unit that it gives to bare numbers.
#pragma once

#include <string>
#include <vector>

#include "read/values.hpp"
#include "text/input_table.hpp"

namespace seambook {

/// `leg`, or `leg (mm)`, `leg [mm]` with a unit for the bare numbers below. No info: the column is not read.
struct TakeoffColumn {
  const FieldInfo* info = nullptr;
  std::string unit;
};

/// One for each heading, no key twice. Complains of headings that name no key or a key that no column can hold, of
/// units that are none, and, once for all rows, of a required column that is missing.
std::vector<TakeoffColumn> match_columns(Reading&, const InputRow& headings, const std::vector<FieldInfo>& keys);

}  // namespace seambook
