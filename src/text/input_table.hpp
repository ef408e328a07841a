// A table as its author wrote it, whether in a comma-separated file or in a workbook: headings, and under them rows.
// Holds afterwards: as many fields in a row as headings; no row without text; a heading without text, or one that an
// earlier column has, is empty and of no use.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

/// What a spreadsheet program takes a field for; what stands in a comma-separated file is text.
enum class FieldKind : std::uint8_t { text, number, date };

struct InputField {
  std::string text;
  Place place;
  FieldKind kind = FieldKind::text;
};
using InputRow = std::vector<InputField>;
struct InputTable {
  InputRow headings;
  std::vector<InputRow> rows;
};

inline constexpr std::size_t most_fields = 1'000'000, most_headings = 200;

bool is_blank_row(const InputRow&);
/// Empties headings that are given twice, and complains of them and of text in columns without a heading.
void check_headings(InputTable&, Diagnostics&);

}  // namespace seambook
