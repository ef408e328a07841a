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

/// What was taken off every arc that enters a set of nodes from outside: together the arborescence's cost. Negative at
/// most for a single node.
struct PaidArrival {
  std::vector<std::size_t> nodes;
  Time<> price{};
};

/// Requires: every node can be reached. Takes its argument as working space. Adds to `paid`, if given, what proves the
/// cost.
Arborescence cheapest_arborescence(Arcs, std::vector<PaidArrival>* paid = nullptr);

}  // namespace seambook
