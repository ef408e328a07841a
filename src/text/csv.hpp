// Comma-separated text (RFC 4180) as rows of fields, each with its place.
// Separator: comma, semicolon or tab, found from the heading row; a byte-order mark is dropped; CRLF is read.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

struct CsvField {
  std::string text;
  Place place;
};
struct CsvTable {
  std::vector<CsvField> headings;
  std::vector<std::vector<CsvField>> rows;  // blank lines dropped; as many fields as headings
};

/// Reads a registered file; nothing, and the reasons in `diagnostics`, when it is no acceptable table.
std::optional<CsvTable> parse_csv(std::uint32_t file, Diagnostics& diagnostics);

}  // namespace seambook
