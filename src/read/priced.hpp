// Money that says how it grows with the quantity ordered: `38 EUR each`, `84 EUR per lot`, `480 EUR once`.
#pragma once

#include "read/job_text.hpp"
#include "read/values.hpp"

namespace seambook {

/// Fills price and scaling; false, and a complaint, when the value is no such price.
bool read_priced(Reading&, Value, const FieldInfo&, BoughtText&);

}  // namespace seambook
