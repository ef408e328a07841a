#include "read/order_file.hpp"

#include <algorithm>

#include "text/csv.hpp"

namespace seambook {

std::optional<std::vector<Word>> read_order_file(std::uint32_t file, Diagnostics& diagnostics) {
  const std::size_t told = diagnostics.list.size();
  const auto table = parse_csv(file, diagnostics);
  if (!table || diagnostics.list.size() > told) return std::nullopt;
  const auto at = std::find_if(table->headings.begin(), table->headings.end(),
                               [](const InputField& heading) { return heading.text == "operation"; });
  if (at == table->headings.end()) {
    diagnostics.error(table->headings.empty() ? Place{file, 1, 1} : table->headings.front().place,
                      "no column is called 'operation'", "operations are named as the plan prints them");
    return std::nullopt;
  }
  const auto column = static_cast<std::size_t>(at - table->headings.begin());
  std::vector<Word> words;
  words.reserve(table->rows.size());
  for (const auto& row : table->rows) words.push_back({row[column].text, row[column].place});
  return words;
}

}  // namespace seambook
