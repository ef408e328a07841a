#include "resolve/faults.hpp"

#include <algorithm>

namespace seambook {
namespace {

bool in_files(const std::vector<std::uint32_t>& files, const Diagnostic& diagnostic) {
  return diagnostic.level == Level::error && std::binary_search(files.begin(), files.end(), diagnostic.place.file);
}

}  // namespace

ReadingFaults reading_faults(const Diagnostics& diagnostics, std::vector<Place> entries,
                             std::vector<std::uint32_t> files) {
  ReadingFaults faults{{}, std::move(entries), std::move(files)};
  for (const Place entry : faults.entries) faults.files.push_back(entry.file);
  std::sort(faults.files.begin(), faults.files.end());
  faults.files.erase(std::unique(faults.files.begin(), faults.files.end()), faults.files.end());
  for (const Diagnostic& d : diagnostics.list)
    if (in_files(faults.files, d)) faults.errors.push_back(d.place);
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

bool sections_lost(const ReadingFaults& faults) {
  return std::any_of(faults.errors.begin(), faults.errors.end(), [&](Place error) {
    const auto after = std::upper_bound(faults.entries.begin(), faults.entries.end(), error);
    return after == faults.entries.begin() || std::prev(after)->file != error.file;
  });
}

bool errors_in_files(const ReadingFaults& faults, const Diagnostics& diagnostics) {
  return std::any_of(diagnostics.list.begin(), diagnostics.list.end(),
                     [&](const Diagnostic& d) { return in_files(faults.files, d); });
}

}  // namespace seambook
