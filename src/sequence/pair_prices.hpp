// Prices of leaving and of reaching nodes that no order can undercut: floors under whole orders and under what remains
// of one, and a reason to leave out arcs that no cheaper order uses.
#pragma once

#include <cstdint>
#include <vector>

#include "sequence/pair_net.hpp"

namespace seambook {

/// Nodes of which one at least is reached from outside, if all of them are still to come.
struct GroupPrice {
  std::vector<std::uint64_t> nodes;  // bits, words as in the net
  Time<> price{};                    // never negative
};

/// Every arc costs at least what leaving its tail, reaching its head and entering groups are worth together. So what
/// remains of an order costs at least the prices of what is still to be left and reached, and of groups wholly to come.
struct NodePrices {
  std::vector<Time<>> leaving, reaching;
  std::vector<GroupPrice> groups;
  Time<> together{};  // of all: a floor under every order
};

/// By the cheapest assignment of followers. Misses that followers may close into rings.
NodePrices assignment_prices(const PairNet&);

/// By the cheapest arborescence from the first node, with leaving charged so that it branches little: subgradient steps
/// from the charges of `begin`, at most `rounds` (Held and Karp 1970). Sees rings, and so costs that repeat.
NodePrices tree_prices(const PairNet&, const NodePrices& begin, Time<> known, std::size_t rounds);

/// The net with leaving and reaching paid: every order costs less by the same, so that arcs tell which are cheap for
/// where they lead from and to.
PairNet with_paid_ends(PairNet, const NodePrices&);

/// The largest time of which every cost is a whole multiple, so that no two orders differ by less; zero if there is
/// none.
Time<> grain_of(const PairNet&);
/// The least whole multiple of the grain that is no less than a floor, but for rounding; the floor itself without one.
Time<> up_to_grain(Time<> floor, Time<> grain);

/// The net without the arcs whose use alone makes an order cost `limit` or more by one of the prices.
PairNet without_dear_arcs(PairNet, const NodePrices&, Time<> limit);

}  // namespace seambook
