// An order that a descent walks through, with what its moves read and keep in step.
#pragma once

#include <cstdint>
#include <random>
#include <vector>

#include "sequence/pair_net.hpp"

namespace seambook {

/// The end of an arc, and what the arc costs.
struct Head {
  std::uint32_t node = 0;
  Time<> cost{};
};

struct PairWalk {
  const PairNet& net;
  std::vector<std::vector<Head>> nearest;  // per node: heads of its cheapest arcs, cheapest first
  PairOrder order;
  std::vector<std::uint32_t> position;
  std::vector<Time<>> into, least_into;  // per node: what the arc to it costs in the order, and its cheapest one
  Time<> total{}, least_gain{};          // below the least gain it is rounding
  std::vector<std::uint32_t> dirty;      // nodes whose arcs are worth another look
  std::vector<std::uint8_t> queued;
  std::mt19937 random;
  bool turns = false;  // whether turning a run around is worth a try: most arcs cost the same both ways
};

PairWalk begin_walk(const PairNet&, const PairOrder&, std::uint32_t seed);

/// The arc from the node at one place to the node at another.
inline Time<> arc_between(const PairWalk& walk, std::size_t p, std::size_t q) {
  return walk.net.arc(walk.order[p], walk.order[q]);
}

inline void look_again(PairWalk& walk, std::uint32_t node) {
  if (walk.queued[node] != 0) return;
  walk.queued[node] = 1;
  walk.dirty.push_back(node);
}

/// After the arc to the node at a place, not the first, has become another.
inline void reach_again(PairWalk& walk, std::size_t p) { walk.into[walk.order[p]] = arc_between(walk, p - 1, p); }

/// After the nodes at places `first` to `last` have been put in another order.
inline void place_again(PairWalk& walk, std::size_t first, std::size_t last) {
  for (std::size_t p = first; p <= last; ++p) walk.position[walk.order[p]] = static_cast<std::uint32_t>(p);
}

}  // namespace seambook
