// What is best in several good orders together: of all orders that take each arc from one of them the cheapest (tour
// merging; Cook and Seymour 2003). So few arcs are left that layers seldom have to drop a state.
#pragma once

#include <optional>
#include <span>

#include "sequence/pair_net.hpp"

namespace seambook {

/// An order of the arcs of `orders` that costs less than `limit`, when one was found by looking at about `states`
/// states at most. None found says nothing of other arcs.
std::optional<PairOrder> united_order(const PairNet&, std::span<const PairOrder> orders, Time<> limit,
                                      std::size_t states);

}  // namespace seambook
