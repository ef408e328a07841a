// The cheapest set of arcs by which a root reaches every node (minimum arborescence; Chu and Liu 1965, Edmonds 1967).
#pragma once

#include <vector>

#include "basics/units.hpp"

namespace seambook {

/// `arc[u][v]` is the cost of going from u to v; node 0 is the root; infinity means there is no such arc.
/// Requires: every node can be reached. Takes its argument as working space.
Time<> cheapest_arborescence(std::vector<std::vector<Time<>>> arc);

}  // namespace seambook
