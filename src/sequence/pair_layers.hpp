// Orders built one node after the other, all that have done the same and end alike kept as one state (dynamic
// programming; Held and Karp 1962, Bellman 1962), layer by layer; only the most promising are kept when there are more
// than the width (beam search). Where nothing was dropped, the result is proved.
#pragma once

#include <optional>

#include "sequence/pair_net.hpp"

namespace seambook {

/// Prices of leaving and of reaching a node. For any order, arcs cost at least what leaving and reaching are worth, so
/// what remains of an order costs at least the prices of what is still to be left and reached.
struct NodePrices {
  std::vector<Time<>> leaving, reaching;
  Time<> together{};  // of all: a floor under every order
};
/// By the cheapest assignment of followers. Misses that followers may close into rings.
NodePrices assignment_prices(const PairNet&);

struct LayersResult {
  std::optional<PairOrder> order;  // cheaper than known
  bool whole = false;              // no state was dropped: `order`, or else the known one, is a cheapest one
  std::size_t states = 0;          // looked at
};

/// Looks for an order cheaper than `known`. At most `width` states a layer, at most `states` in all.
LayersResult layered_order(const PairNet&, std::span<const NodePrices>, Time<> known, std::size_t width,
                           std::size_t states);

}  // namespace seambook
