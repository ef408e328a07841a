// Good orders without a proof, by exchanging two runs that stand next to each other. That keeps the direction within
// each run, so arcs need not cost the same both ways, and it holds the move of one run elsewhere as a special case.
// (Savelsbergh 1990 for precedence in exchanges; Or 1976; Martin, Otto and Felten 1991 for descent, kick, accept.)
#pragma once

#include <cstdint>

#include "sequence/pair_net.hpp"

namespace seambook {

/// Always the cheapest node that may come next; among equals the first.
PairOrder cheapest_next(const PairNet&);

/// At most `kicks` times a few runs are exchanged at random and the order descends again; worse orders are kept with a
/// chance that falls to nothing. Gives the best order found: `order` itself when none is cheaper. Stops early at
/// `floor`. The same seed gives the same order.
PairOrder descended(const PairNet&, const PairOrder& order, Time<> floor, std::size_t kicks, std::uint32_t seed);

}  // namespace seambook
