#include "resolve/faults.hpp"

#include <algorithm>

namespace seambook {

ReadingFaults reading_faults(const Diagnostics& diagnostics, std::vector<Place> entries) {
  ReadingFaults faults{{}, std::move(entries)};
  for (const Diagnostic& d : diagnostics.list)
    if (d.level == Level::error) faults.errors.push_back(d.place);
  std::sort(faults.errors.begin(), faults.errors.end());
  std::sort(faults.entries.begin(), faults.entries.end());
  return faults;
}

bool misread(const ReadingFaults& faults, Place entry) {
  const auto error = std::lower_bound(faults.errors.begin(), faults.errors.end(), entry);
  if (error == faults.errors.end() || error->file != entry.file) return false;
  const auto next = std::upper_bound(faults.entries.begin(), faults.entries.end(), entry);
  return next == faults.entries.end() || *error < *next;
}

bool errors_in_files_of(const ReadingFaults& faults, const Diagnostics& diagnostics) {
  std::vector<std::uint32_t> files;
  for (const Place entry : faults.entries)
    if (files.empty() || files.back() != entry.file) files.push_back(entry.file);
  return std::any_of(diagnostics.list.begin(), diagnostics.list.end(), [&](const Diagnostic& d) {
    return d.level == Level::error && std::binary_search(files.begin(), files.end(), d.place.file);
  });
}

}  // namespace seambook
