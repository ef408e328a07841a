// What reading left of an author's entries: an entry with a fault in it is not blamed again for what it then lacks.
#pragma once

#include <vector>

#include "basics/diagnostics.hpp"

namespace seambook {

/// An entry reaches from its own place to the next entry's. Both lists sorted.
struct ReadingFaults {
  std::vector<Place> errors, entries;
};

/// Takes the errors that stand in `diagnostics` by now and the places of all entries of the files in question.
ReadingFaults reading_faults(const Diagnostics&, std::vector<Place> entries);
/// True when an error was found between this entry and the next.
bool misread(const ReadingFaults&, Place entry);
/// True when an error lies in a file that holds one of the entries.
bool errors_in_files_of(const ReadingFaults&, const Diagnostics&);

}  // namespace seambook
