// Turning a run around, worth a try where most arcs cost the same both ways (Croes 1958).
#pragma once

#include <optional>

#include "sequence/pair_walk.hpp"

namespace seambook {

/// The run [first, last] is turned around.
struct Turn {
  std::size_t first = 0, last = 0;
  Time<> gain{};
};

/// The best turn that brings an arc between the node and one near to it, if it gains more than `least`.
std::optional<Turn> best_turn(const PairWalk&, std::uint32_t node, Time<> least);
void turn(PairWalk&, const Turn&);

}  // namespace seambook
