#include "sequence/pair_walk.hpp"

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

// Arcs considered from each node, cheapest first. One that costs the same as the one before counts for less: else,
// where many set-ups are alike, no arc to another set-up would be considered.
constexpr std::size_t most_kept = 48;
constexpr double weight_kept = 12, weight_of_tie = 0.3;
constexpr double gain_that_counts = 1e-9;  // of the dearest arc: below, it is rounding

std::vector<std::vector<std::uint32_t>> nearest_of(const PairNet& net) {
  std::vector<std::vector<std::uint32_t>> nearest(net.nodes);
  for (std::size_t u = 0; u < net.nodes; ++u) {
    std::vector<std::uint32_t>& heads = nearest[u];
    for (std::uint32_t v = 0; v < net.nodes; ++v)
      if (std::isfinite(net.arc(u, v).si)) heads.push_back(v);
    std::ranges::stable_sort(heads, [&](std::uint32_t a, std::uint32_t b) { return net.arc(u, a) < net.arc(u, b); });
    std::size_t kept = 0;
    for (double weight = 0; kept < std::min(heads.size(), most_kept) && weight < weight_kept; ++kept) {
      const bool tie = kept > 0 && !(net.arc(u, heads[kept - 1]) < net.arc(u, heads[kept]));
      weight += tie ? weight_of_tie : 1;
    }
    heads.resize(kept);
  }
  return nearest;
}

}  // namespace

PairWalk begin_walk(const PairNet& net, const PairOrder& order, std::uint32_t seed) {
  PairWalk walk{net,
                nearest_of(net),
                order,
                std::vector<std::uint32_t>(net.nodes),
                cost_of(net, order),
                {},
                {},
                std::vector<std::uint8_t>(net.nodes),
                std::mt19937{seed},
                same_both_ways(net)};
  for (const Time<> cost : net.cost)
    if (std::isfinite(cost.si)) walk.least_gain = std::max(walk.least_gain, cost * gain_that_counts);
  place_again(walk, 0, order.size() - 1);
  for (std::size_t p = order.size(); p-- > 0;) look_again(walk, order[p]);
  return walk;
}

}  // namespace seambook
