// The key of a weld in a file (`single_v`) as its kind.
#pragma once

#include <optional>

#include "resolve/rate_book.hpp"

namespace seambook {

/// Refuses words that are no weld, and welds of the trade that have no formulas here yet.
std::optional<WeldKind> find_weld_kind(Diagnostics&, const Word&);
/// The key of a kind, as files write it.
std::string_view weld_key(WeldKind);

}  // namespace seambook
