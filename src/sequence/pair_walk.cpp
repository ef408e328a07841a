#include "sequence/pair_walk.hpp"

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

// Arcs considered from each node, cheapest first. One that costs the same as the one before hardly counts: else, where
// many set-ups are alike, few other set-ups would be considered.
constexpr std::size_t most_kept = 48;
constexpr double weight_kept = 8, weight_of_tie = 0.02;
constexpr double gain_that_counts = 1e-9;  // of the dearest arc: below, it is rounding

std::vector<std::vector<Head>> nearest_of(const PairNet& net) {
  std::vector<std::vector<Head>> nearest(net.nodes);
  for (std::uint32_t u = 0; u < net.nodes; ++u) {
    std::vector<Head>& heads = nearest[u];
    for (std::uint32_t v = 0; v < net.nodes; ++v)
      if (std::isfinite(net.arc(u, v).si)) heads.push_back({v, net.arc(u, v)});
    std::ranges::stable_sort(heads, {}, &Head::cost);
    std::size_t kept = 0;
    for (double weight = 0; kept < std::min(heads.size(), most_kept) && weight < weight_kept; ++kept)
      weight += kept > 0 && heads[kept - 1].cost == heads[kept].cost ? weight_of_tie : 1;
    heads.resize(kept);
    heads.shrink_to_fit();
  }
  return nearest;
}

std::vector<Time<>> least_into(const PairNet& net) {
  std::vector<Time<>> least(net.cost.begin(), net.cost.begin() + static_cast<std::ptrdiff_t>(net.nodes));
  for (std::size_t u = 1; u < net.nodes; ++u)
    for (std::size_t v = 0; v < net.nodes; ++v) least[v] = std::min(least[v], net.arc(u, v));
  return least;
}

}  // namespace

PairWalk begin_walk(const PairNet& net, const PairOrder& order, std::uint32_t seed) {
  PairWalk walk{net,
                nearest_of(net),
                order,
                std::vector<std::uint32_t>(net.nodes),
                std::vector<Time<>>(net.nodes),
                least_into(net),
                cost_of(net, order),
                {},
                {},
                std::vector<std::uint8_t>(net.nodes),
                std::mt19937{seed},
                same_both_ways(net)};
  for (const Time<> cost : net.cost)
    if (std::isfinite(cost.si)) walk.least_gain = std::max(walk.least_gain, cost * gain_that_counts);
  place_again(walk, 0, order.size() - 1);
  for (std::size_t p = 1; p < order.size(); ++p) reach_again(walk, p);
  for (std::size_t p = order.size(); p-- > 0;) look_again(walk, order[p]);
  return walk;
}

}  // namespace seambook
