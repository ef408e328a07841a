// Comma-separated text (RFC 4180) as rows of fields, each with its place.
// Separator: comma, semicolon or tab, found from the heading row; a byte-order mark is dropped; CRLF is read.
#pragma once

#include <optional>

#include "text/input_table.hpp"

namespace seambook {

/// Reads a registered file. Nothing when no row of headings can be read. A row that cannot be read is left out, so that
/// the others can be looked at in the same run. All reasons are in `diagnostics`.
std::optional<InputTable> parse_csv(std::uint32_t file, Diagnostics& diagnostics);

}  // namespace seambook
