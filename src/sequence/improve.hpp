// Good orders without a proof: one built step by step, one made better by moving runs of operations.
#pragma once

#include <cstdint>

#include "sequence/work_net.hpp"

namespace seambook {

/// Always the ready operation that costs the least change now; among equals the first in the input.
Order cheapest_next_order(MountedStates&, const WorkNet&);

/// Moves runs of operations with one need, or single ones at a run's ends, to where they cost less, keeping precedence.
/// When no move helps, a few arbitrary moves are made and the descent begins again; the best order found is given,
/// which is `order` itself when nothing cheaper was found. Stops after `moves` moves tried or when the cost is down to
/// `floor`.
Order improved_order(MountedStates&, const WorkNet&, const Order& order, Time<> floor, std::size_t moves);

}  // namespace seambook
