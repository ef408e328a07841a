// What spreadsheet programs do to a take-off on their own: dates made of sizes, long numbers cut, errors in cells. Each
// is recognised and explained, because its author typed something else.
#pragma once

#include "read/values.hpp"
#include "text/input_table.hpp"

namespace seambook {

/// True, and a complaint, when the field of a column does not hold what was typed.
bool is_damaged(Reading&, const InputField&, const FieldInfo&);

}  // namespace seambook
