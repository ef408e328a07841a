// Any bytes as a CSV file: no crash or hang, no table without a reason, and as many fields in each row as headings.
#include <cstdint>
#include <cstdlib>

#include "text/csv.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  seambook::Diagnostics diagnostics;
  const auto file = diagnostics.add_file("fuzz.csv", std::string(reinterpret_cast<const char*>(data), size));
  const auto table = seambook::parse_csv(file, diagnostics);
  if (!table && !diagnostics.has_errors()) std::abort();
  if (table) {
    for (const auto& row : table->rows)
      if (row.size() != table->headings.size()) std::abort();
  }
  for (const char c : seambook::render(diagnostics))
    if (c != '\n' && static_cast<unsigned char>(c) < 0x20) std::abort();
  return 0;
}
