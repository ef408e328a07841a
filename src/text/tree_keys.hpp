// Keys given twice: each later one is reported with the line of the first, and left out of the tree with its value.
#pragma once

#include "text/tree.hpp"

namespace seambook {

/// Looks at one finished map. Keys that are no scalars count as different. Gives how many were left out.
std::size_t drop_repeated_keys(Tree&, std::uint32_t map, Diagnostics&);

}  // namespace seambook
