// Somebody's own order of work: a table with a column `operation`, one a row, in turn.
#pragma once

#include "read/written.hpp"

namespace seambook {

/// Reads a registered file; nothing, and the reasons in `diagnostics`, when it is no such table.
std::optional<std::vector<Word>> read_order_file(std::uint32_t file, Diagnostics& diagnostics);

}  // namespace seambook
