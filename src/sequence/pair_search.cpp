#include "sequence/pair_search.hpp"

#include <algorithm>

#include "sequence/pair_descent.hpp"
#include "sequence/pair_layers.hpp"
#include "sequence/pair_union.hpp"

namespace seambook {
namespace {

constexpr std::size_t moves_of_kick = 10;         // what a kick and its descent try, about
constexpr std::size_t kicks_ahead_per_node = 50;  // a good order lets layers drop more
constexpr std::size_t descents = 3;               // parts of the kicks: one hot descent, several, one warm
constexpr std::size_t kicks_to_unite = 300;       // per node: with fewer, several descents end worse than one
constexpr std::uint32_t far_descents = 4, seed_step = 77;
constexpr std::size_t states_of_union = 200'000;
constexpr std::size_t narrowest = 64, widening = 8;
constexpr std::size_t states_of_pairs = 8;  // of a small net: looked at in the time of one of what is mounted
constexpr std::size_t work_of_trees = 4'000'000, fewest_trees = 20, most_trees = 200;
constexpr std::size_t most_units_paired = 4096;  // the tables of pairs have units^2 cells
constexpr double rounding = 1e-9;                // of what is known: closer than that is no gain

bool same_slots(const Attributes& a, const Attributes& b) {
  return std::ranges::equal(
      a.slots, b.slots, {}, [](const auto& slot) { return slot.has_value(); },
      [](const auto& slot) { return slot.has_value(); });
}

/// A cheaper order costs less than this: by a whole grain less, where there is one.
Time<> limit_under(Time<> known, Time<> grain) { return known - std::max(known * rounding, grain * (1 - rounding)); }

/// Descends with the ends of arcs paid: first heads are then sought where the prices say that they are cheap.
Descent descended_by(const PairNet& net, const NodePrices& prices, const PairOrder& known, Time<> bound,
                     const Annealing& annealing, std::uint32_t seed) {
  const PairNet paid = with_paid_ends(net, prices);
  const Time<> all_ends = cost_of(net, known) - cost_of(paid, known);
  return descended(paid, known, bound - all_ends, annealing, seed);
}

/// Hot enough to accept nearly all at first: precedence makes valleys that lie far apart.
Annealing far_annealing(const PairNet& net, Time<> cost, Time<> bound, std::size_t kicks) {
  const double nodes = static_cast<double>(net.nodes);
  return {kicks, cost * (8 / nodes), (cost - bound) * (0.3 / nodes)};
}

/// Warm enough to rearrange what is dearer than the prices say: slow where arcs differ much and bind little.
Annealing near_annealing(const PairNet& net, Time<> cost, Time<> bound, std::size_t kicks) {
  const double nodes = static_cast<double>(net.nodes);
  return {kicks, (cost - bound) * (0.7 / nodes), {}};
}

struct PricedSearch {
  const PairNet& net;
  std::vector<NodePrices> prices;
  Time<> grain{};
  PairResult result;
  std::vector<PairOrder> ends;  // of descents
};

/// A descent's best may be dearer than what is known: costs with paid ends are rounded.
void take(PricedSearch& search, Descent descent) {
  if (cost_of(search.net, descent.best) < cost_of(search.net, search.result.order))
    search.result.order = std::move(descent.best);
  search.ends.push_back(std::move(descent.last));
}

/// The best of what the descents ended with and the best order together.
void unite(PricedSearch& search) {
  std::vector<PairOrder> orders = search.ends;
  orders.push_back(search.result.order);
  const Time<> limit = limit_under(cost_of(search.net, search.result.order), search.grain);
  if (auto united = united_order(search.net, orders, limit, states_of_union)) search.result.order = std::move(*united);
}

void raise_bound(PricedSearch& search, Time<> floor) {
  search.result.bound = std::max(search.result.bound, up_to_grain(floor, search.grain));
}

/// Whether layers of that width drop nothing; takes the states looked at off `states`.
bool layers_prove(PricedSearch& search, std::size_t width, std::size_t allowed, std::size_t& states) {
  PairOrder& order = search.result.order;
  const Time<> limit = limit_under(cost_of(search.net, order), search.grain);
  PairNet net = search.net;
  for (const NodePrices& prices : search.prices) net = without_dear_arcs(std::move(net), prices, limit);
  const LayersResult layers = layered_order(net, search.prices, limit, width, allowed);
  if (layers.order) order = *layers.order;
  states -= std::min(states, layers.states);
  if (layers.whole) search.result.bound = cost_of(search.net, order);
  return layers.whole;
}

/// Layers of growing width until one drops nothing or the states are used up.
void search_layers(PricedSearch& search, std::size_t& states) {
  for (std::size_t width = narrowest; states > 0; width *= widening)
    if (layers_prove(search, width, states, states)) return;
}

void descend_far(PricedSearch& search, std::size_t kicks, std::uint32_t seed) {
  const PairResult& result = search.result;
  const NodePrices& prices = search.prices.front();
  const Annealing annealing = far_annealing(search.net, cost_of(search.net, result.order), prices.together, kicks);
  take(search, descended_by(search.net, prices, result.order, result.bound, annealing, seed));
}

/// Several hot descents end in different valleys: what is best in each comes together.
void descend_far_and_unite(PricedSearch& search, std::size_t kicks, std::uint32_t seed) {
  for (std::uint32_t i = 0; i < far_descents && search.result.bound < cost_of(search.net, search.result.order); ++i) {
    descend_far(search, kicks / far_descents, seed + i * seed_step);
    unite(search);
  }
}

void descend_near(PricedSearch& search, std::size_t kicks, std::uint32_t seed) {
  const PairResult& result = search.result;
  const Time<> cost = cost_of(search.net, result.order);
  if (same_both_ways(search.net)) {  // runs may be turned around, which paid ends would hide
    const Annealing annealing{kicks, cost * (1 / static_cast<double>(search.net.nodes)), {}};
    take(search, descended(search.net, result.order, result.bound, annealing, seed));
  } else {
    const NodePrices& prices = search.prices.back();
    const Annealing annealing = near_annealing(search.net, cost, prices.together, kicks);
    take(search, descended_by(search.net, prices, result.order, result.bound, annealing, seed));
  }
}

}  // namespace

PairResult pair_search(const PairNet& net, const PairOrder& known, const SearchBudget& budget, std::uint32_t seed) {
  PricedSearch search{net, {assignment_prices(net)}, grain_of(net), {known, {}, false}, {}};
  PairResult& result = search.result;
  const auto open = [&] { return result.bound < cost_of(net, result.order); };
  raise_bound(search, search.prices.front().together);
  const std::size_t kicks = budget.moves / moves_of_kick;
  std::size_t states = budget.states * states_of_pairs / (net.words * net.words);
  descend_far(search, std::min(kicks / 8, kicks_ahead_per_node * net.nodes), seed);
  if (open()) {
    const std::size_t rounds = std::clamp(work_of_trees / (net.nodes * net.nodes), fewest_trees, most_trees);
    search.prices.push_back(tree_prices(net, search.prices.front(), cost_of(net, result.order), rounds));
    raise_bound(search, search.prices.back().together);
  }
  // A small net may have few enough states to look at them all, by far the quickest proof.
  if (open() && net.words == 1) layers_prove(search, SIZE_MAX, states - states / 4, states);
  if (open()) descend_far(search, kicks / descents, seed);
  if (open()) search_layers(search, states);
  const bool unites = kicks >= kicks_to_unite * net.nodes;
  if (open() && unites) descend_far_and_unite(search, kicks / descents, seed + 1);
  if (open()) descend_near(search, (unites ? 1 : 2) * (kicks / descents), seed + 1);
  if (open() && unites) unite(search);
  result.proved = !open();
  return result;
}

std::optional<PairProblem> pairs_of(MountedStates& mounted, const WorkNet& net) {
  if (net.need_of.size() > most_units_paired) return std::nullopt;
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
