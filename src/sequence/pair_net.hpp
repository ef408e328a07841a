// Orders whose cost is a sum over pairs that follow one another: what is mounted hangs on the last unit alone. Then
// searches need no states of what is mounted, and arcs that no order can use are known from the start.
#pragma once

#include <cstdint>
#include <limits>
#include <span>
#include <vector>

#include "basics/digraph.hpp"
#include "basics/units.hpp"

namespace seambook {

/// Node 0 stands first. `cost[u * nodes + v]`: going on with v right after u; infinity where that is never done.
struct PairProblem {
  std::size_t nodes = 0;
  std::vector<Time<>> cost;
  std::vector<Time<>> ending;    // per node: what is still to be paid after it when it is the last; empty: nothing
  std::vector<Edge> precedence;  // no cycle
};

/// The problem as the searches read it: a last node is added, and the arcs that precedence rules out are infinite: v
/// before u, or another node always between them.
struct PairNet {
  std::size_t nodes = 0, words = 0;
  std::vector<Time<>> cost;
  std::vector<std::uint64_t> before;                       // [v * words ...]: bits of all that stand before v
  std::vector<std::vector<std::uint32_t>> follows, leads;  // per node: neighbours that no third node comes between

  Time<> arc(std::size_t u, std::size_t v) const { return cost[u * nodes + v]; }
  bool must_precede(std::size_t u, std::size_t v) const { return (before[v * words + u / 64] >> (u % 64) & 1U) != 0; }
};

/// What an arc costs that no order may use.
inline constexpr Time<> never_next{std::numeric_limits<double>::infinity()};

PairNet pair_net(const PairProblem&);

/// Whether most pairs that may stand either way round cost the same both ways.
bool same_both_ways(const PairNet&);

/// Node 0 first, the last node last; every node once.
using PairOrder = std::vector<std::uint32_t>;
Time<> cost_of(const PairNet&, std::span<const std::uint32_t> order);

}  // namespace seambook
