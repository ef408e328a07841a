#include "sequence/pair_union.hpp"

#include <algorithm>

#include "sequence/pair_layers.hpp"

namespace seambook {
namespace {

constexpr std::size_t first_width = 256, wider = 8;
constexpr std::size_t rounds_of_trees = 20;  // few arcs are left: prices settle soon

PairNet with_arcs_of(const PairNet& net, std::span<const PairOrder> orders) {
  PairNet kept = net;
  kept.cost.assign(net.cost.size(), never_next);
  for (const PairOrder& order : orders)
    for (std::size_t p = 0; p + 1 < order.size(); ++p)
      kept.cost[order[p] * net.nodes + order[p + 1]] = net.arc(order[p], order[p + 1]);
  return kept;
}

}  // namespace

std::optional<PairOrder> united_order(const PairNet& net, std::span<const PairOrder> orders, Time<> limit,
                                      std::size_t states) {
  PairNet united = with_arcs_of(net, orders);
  std::vector<NodePrices> prices{assignment_prices(united)};
  prices.push_back(tree_prices(united, prices.front(), limit, rounds_of_trees));
  for (const NodePrices& of : prices) united = without_dear_arcs(std::move(united), of, limit);
  for (std::size_t width = first_width; states > 0; width *= wider) {
    LayersResult layers = layered_order(united, prices, limit, width, states);
    if (layers.order || layers.whole) return std::move(layers.order);
    states -= std::min(states, layers.states);
  }
  return std::nullopt;
}

}  // namespace seambook
