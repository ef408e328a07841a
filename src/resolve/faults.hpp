// What reading left of an author's entries: an entry with a fault in it is not blamed again for what it then lacks.
#pragma once

#include <cstdint>
#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

/// Errors that stood when resolving began. An entry reaches from its own place to the next entry's. All sorted.
struct ReadingFaults {
  std::vector<Place> errors, entries;
  std::vector<std::uint32_t> files;
};

/// Takes the errors that stand in `diagnostics` by now, in these files and in those of the entries.
ReadingFaults reading_faults(const Diagnostics&, std::vector<Place> entries, std::vector<std::uint32_t> files);
/// True when an error was found between this entry and the next.
bool misread(const ReadingFaults&, Place entry);
/// True when an error was found outside all entries, or in a file that has none: whole sections may be lost.
bool sections_lost(const ReadingFaults&);
/// True when by now there is an error in one of the files.
bool errors_in_files(const ReadingFaults&, const Diagnostics&);

}  // namespace seambook
