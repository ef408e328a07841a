// A job file, and after a record separator (0x1E) a take-off for it, through the typed reader.
#include <cstdint>
#include <string>

#include "read/job_text.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const std::size_t split = text.find('\x1E');
  const auto find_file = [&](const std::string&) -> std::optional<std::string> {
    if (split == text.npos) return std::nullopt;
    return text.substr(split + 1);
  };
  seambook::Diagnostics diagnostics;
  const std::uint32_t file = diagnostics.add_file("jobs/job.yaml", text.substr(0, split));
  seambook::read_job(file, find_file, diagnostics);
  seambook::render(diagnostics);
  return 0;
}
