// Good orders without a proof, by exchanging two runs that stand next to each other. That keeps the direction within
// each run, so arcs need not cost the same both ways, and it holds the move of one run elsewhere as a special case.
// Where most arcs do cost the same both ways, runs are turned around too.
// (Savelsbergh 1990 for precedence in exchanges; Or 1976; Martin, Otto and Felten 1991 for descent, kick, accept.)
#pragma once

#include <cstdint>

#include "sequence/pair_net.hpp"

namespace seambook {

/// Always the cheapest node that may come next; among equals the first.
PairOrder cheapest_next(const PairNet&);

/// How often runs are exchanged at random, and up to about how much more an order may cost to be kept for a while: at
/// first and at last. The limit falls by the same share with every kick; where nothing is kept at last, by the same
/// time.
struct Annealing {
  std::size_t kicks = 0;
  Time<> hot{}, cold{};
};

struct Descent {
  PairOrder best, last;  // the cheapest, and where it ended
};

/// Descends, then again and again exchanges a few runs at random and descends from there; a worse order is kept with a
/// chance that falls as the annealing cools (Kirkpatrick, Gelatt and Vecchi 1983). The best is `order` itself when none
/// is cheaper. Stops early at `floor`. The same seed gives the same orders.
Descent descended(const PairNet&, const PairOrder& order, Time<> floor, const Annealing&, std::uint32_t seed);

}  // namespace seambook
