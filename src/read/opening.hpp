// What stands at the head of every file of the author: `format: 1`, and the units that its bare numbers take.
#pragma once

#include "read/field_info.hpp"
#include "read/values.hpp"

namespace seambook {

/// Looks at `format` and takes `units` into `reading`. False when the rest must not be read: it is no map, or of
/// another format.
bool read_opening(Reading& reading, Value root);
/// Descriptions of the keys under `units`.
std::vector<FieldInfo> unit_fields();

}  // namespace seambook
