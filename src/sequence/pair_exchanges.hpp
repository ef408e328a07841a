// Moves of a descent: two runs that stand next to each other change places, or a run is turned around.
#pragma once

#include <optional>

#include "sequence/pair_walk.hpp"

namespace seambook {

/// Runs [from + 1, middle] and [middle + 1, to] change places.
struct Exchange {
  std::size_t from = 0, middle = 0, to = 0;
};

/// Whether nothing in the first run must precede something in the second.
bool keeps_precedence(const PairWalk&, const Exchange&);
/// Infinite or NaN where an arc is not to be used.
Time<> gain_of(const PairWalk&, const Exchange&);
void exchange(PairWalk&, const Exchange&);

/// Does the best move among those that put a near head right after the node; false when none gains.
bool improve_at(PairWalk&, std::uint32_t node);

}  // namespace seambook
