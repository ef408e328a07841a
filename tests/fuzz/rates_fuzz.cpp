// One file of a rate book, or two parted by a record separator (0x1E), through the typed reader.
#include <cstdint>
#include <string>
#include <vector>

#include "read/rate_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const std::size_t split = text.find('\x1E');
  seambook::Diagnostics diagnostics;
  std::vector<std::uint32_t> files{diagnostics.add_file("rates/a.yaml", text.substr(0, split))};
  if (split != text.npos) files.push_back(diagnostics.add_file("rates/b.yaml", text.substr(split + 1)));
  seambook::read_rates(files, diagnostics);
  seambook::render(diagnostics);
  return 0;
}
