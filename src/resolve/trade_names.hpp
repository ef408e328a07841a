// Words of the trade in a file as what the rate book knows: a weld's key as its kind, a process as its entry.
#pragma once

#include <optional>

#include "resolve/rate_book.hpp"

namespace seambook {

/// Refuses words that are no weld, and welds of the trade that have no formulas here yet.
std::optional<WeldKind> find_weld_kind(Diagnostics&, const Word&);
/// The process of that ISO 4063 number or those AWS letters; refuses others, and processes the rate book is without.
std::optional<std::size_t> find_process(Diagnostics&, const std::vector<Process>&, const Word&);
std::optional<FillerForm> find_filler_form(Diagnostics&, const Word&);
void refuse_unknown_process(Diagnostics&, const Word&);
void refuse_unknown_position(Diagnostics&, const Word&);

}  // namespace seambook
