#include "text/input_table.hpp"

#include <algorithm>

#include "text/number_words.hpp"

namespace seambook {
namespace {

/// The first text in a column; nothing when it holds none.
const InputField* first_text(const InputTable& table, std::size_t column) {
  for (const InputRow& row : table.rows)
    if (!without_blanks_around(row[column].text).empty()) return &row[column];
  return nullptr;
}

}  // namespace

bool is_blank_row(const InputRow& row) {
  return std::all_of(row.begin(), row.end(), [](const InputField& field) { return field.text.empty(); });
}

void check_headings(InputTable& table, Diagnostics& diagnostics) {
  InputRow& headings = table.headings;
  for (std::size_t i = 0; i < headings.size(); ++i) {
    InputField& heading = headings[i];
    heading.text = std::string(without_blanks_around(heading.text));
    if (heading.text.empty()) {
      if (const InputField* below = first_text(table, i))
        diagnostics.error(below->place, "a column without a heading", "name the column, or take it out");
      continue;
    }
    const auto own = headings.begin() + static_cast<std::ptrdiff_t>(i);
    const auto first = std::find_if(headings.begin(), own, [&](const InputField& h) { return h.text == heading.text; });
    if (first == own) continue;
    diagnostics.error(heading.place, "heading " + quoted(heading.text) + " is given twice",
                      "first in column " + std::to_string(first - headings.begin() + 1));
    heading.text.clear();
  }
}

}  // namespace seambook
