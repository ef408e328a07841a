// The cheapest set of arcs by which a root reaches every node (minimum arborescence; Chu and Liu 1965, Edmonds 1967).
#pragma once

#include <cstddef>
#include <vector>

#include "basics/units.hpp"

namespace seambook {

/// `cost[u * nodes + v]` is the cost of going from u to v; infinity means there is no such arc. Node 0 is the root.
struct Arcs {
  std::size_t nodes = 0;
  std::vector<Time<>> cost;
};

struct Arborescence {
  Time<> cost{};
  std::vector<std::size_t> from;  // per node where its arc comes from; the root's own entry means nothing
};

/// Requires: every node can be reached. Takes its argument as working space.
Arborescence cheapest_arborescence(Arcs);

}  // namespace seambook
