// Orders built one node after the other, all that have done the same and end alike kept as one state (dynamic
// programming; Held and Karp 1962, Bellman 1962), layer by layer; only the most promising are kept when there are more
// than the width (beam search). Where nothing was dropped, the result is proved.
#pragma once

#include <optional>

#include "sequence/pair_prices.hpp"

namespace seambook {

struct LayersResult {
  std::optional<PairOrder> order;  // cheaper than the limit
  bool whole = false;      // no state was dropped: `order` is a cheapest one, or else none is cheaper than the limit
  std::size_t states = 0;  // looked at
};

/// Looks for an order cheaper than `limit`. At most `width` states a layer, at most `states` in all.
LayersResult layered_order(const PairNet&, std::span<const NodePrices>, Time<> limit, std::size_t width,
                           std::size_t states);

}  // namespace seambook
