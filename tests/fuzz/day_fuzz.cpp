// A day file through the typed reader: as YAML, and as a table where the first byte is `c`.
#include <cstdint>
#include <string>

#include "read/day_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const bool table = text.starts_with('c');
  seambook::Diagnostics diagnostics;
  const std::uint32_t file = diagnostics.add_file(table ? "day.csv" : "day.yaml", table ? text.substr(1) : text);
  seambook::read_day_file(file, diagnostics);
  seambook::render(diagnostics);
  return 0;
}
