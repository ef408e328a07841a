#include "sequence/pair_search.hpp"

#include <algorithm>

#include "sequence/pair_descent.hpp"
#include "sequence/pair_layers.hpp"

namespace seambook {
namespace {

constexpr std::size_t moves_of_kick = 10;  // what a kick and its descent try, about
constexpr std::size_t narrowest = 64, widening = 8;

bool same_slots(const Attributes& a, const Attributes& b) {
  return std::ranges::equal(
      a.slots, b.slots, {}, [](const auto& slot) { return slot.has_value(); },
      [](const auto& slot) { return slot.has_value(); });
}

}  // namespace

PairResult pair_search(const PairNet& net, const PairOrder& known, const SearchBudget& budget, std::uint32_t seed) {
  PairResult result;
  const NodePrices prices = assignment_prices(net);
  result.bound = prices.together;
  const std::size_t kicks = budget.moves / moves_of_kick / 2;
  result.order = descended(net, known, result.bound, kicks, seed);
  std::size_t states = budget.states;
  for (std::size_t width = narrowest; states > 0; width *= widening) {
    const Time<> cost = cost_of(net, result.order);
    const LayersResult layers = layered_order(net, std::span(&prices, 1), cost, width, states);
    if (layers.order) result.order = *layers.order;
    states -= std::min(states, layers.states);
    if (!layers.whole) continue;
    result.proved = true;
    result.bound = cost_of(net, result.order);
    return result;
  }
  result.order = descended(net, result.order, result.bound, kicks, seed + 1);
  result.proved = !(result.bound < cost_of(net, result.order));
  return result;
}

std::optional<PairProblem> pairs_of(MountedStates& mounted, const WorkNet& net) {
  for (const Attributes& need : net.needs)
    if (!same_slots(need, net.needs.front())) return std::nullopt;
  PairProblem pairs;
  pairs.nodes = net.need_of.size() + 1;
  pairs.cost.resize(pairs.nodes * pairs.nodes);
  for (std::size_t v = 1; v < pairs.nodes; ++v) {
    const std::uint32_t need = net.need_of[v - 1];
    pairs.cost[v] = mount(mounted, net, 0, need).cost;
    const std::uint32_t after = mount(mounted, net, 0, need).state;
    for (std::size_t w = 1; w < pairs.nodes; ++w)
      pairs.cost[v * pairs.nodes + w] = mount(mounted, net, after, net.need_of[w - 1]).cost;
    for (const std::uint32_t next : net.after[v - 1]) pairs.precedence.emplace_back(v, next + 1);
  }
  return pairs;
}

}  // namespace seambook
