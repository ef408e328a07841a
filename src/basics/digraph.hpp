// Precedence as a directed graph (Boost.Graph inside digraph.cpp): an order that respects it, or the ring that forbids
// one.
#pragma once

#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace seambook {

using Edge = std::pair<std::size_t, std::size_t>;  // before, after

/// One cycle as nodes in order (the first is not repeated), starting at its smallest node; empty when there is none.
std::vector<std::size_t> find_cycle(std::size_t nodes, std::span<const Edge> edges);
/// A topological order that follows the input order where precedence leaves a choice. Requires: no cycle.
std::vector<std::size_t> topological_order(std::size_t nodes, std::span<const Edge> edges);

}  // namespace seambook
