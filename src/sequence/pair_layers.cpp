#include "sequence/pair_layers.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "sequence/assignment.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t no_trail = UINT32_MAX;
constexpr double rounding = 1e-9;  // of the known cost: closer than that is no gain

/// States with one number of nodes done, in parallel.
struct Layer {
  std::vector<std::uint64_t> done;  // words per state
  std::vector<std::uint32_t> last, trail;
  std::vector<Time<>> spent, to_come;
  std::size_t size() const { return last.size(); }
};

/// Where a state came from: kept for all layers, so that the order can be told.
struct TrailStep {
  std::uint32_t node = 0, before = no_trail;
};

struct LayerSearch {
  const PairNet& net;
  std::span<const NodePrices> prices;
  Time<> limit;  // a state that cannot come below it is left out
  std::vector<TrailStep> trail;
  std::size_t looked_at = 0;
};

std::uint64_t hash_of(const std::uint64_t* done, std::size_t words, std::uint32_t last) {
  std::uint64_t hash = last * 0x9E3779B97F4A7C15U;
  for (std::size_t w = 0; w < words; ++w) {
    hash = (hash ^ done[w]) * 0xBF58476D1CE4E5B9U;
    hash ^= hash >> 29U;
  }
  return hash;
}

bool may_follow(const PairNet& net, const std::uint64_t* done, std::uint32_t node) {
  if ((done[node / 64] >> (node % 64) & 1U) != 0) return false;
  const std::uint64_t* const before = net.before.data() + node * net.words;
  for (std::size_t w = 0; w < net.words; ++w)
    if ((before[w] & ~done[w]) != 0) return false;
  return true;
}

/// What remains of an order costs at least this, by the best of the prices.
Time<> to_come(const LayerSearch& search, const std::uint64_t* done, std::uint32_t last) {
  Time<> most{};
  for (const NodePrices& prices : search.prices) {
    Time<> sum = prices.leaving[last];
    for (std::uint32_t v = 0; v < search.net.nodes; ++v)
      if ((done[v / 64] >> (v % 64) & 1U) == 0) sum = sum + prices.leaving[v] + prices.reaching[v];
    most = std::max(most, sum);
  }
  return most;
}

/// A layer in the making, with its states found again by what they have done and end with.
struct Growing {
  Layer layer;
  std::vector<std::uint32_t> slots = std::vector<std::uint32_t>(1024, no_trail);
};

std::size_t slot_of(const Growing& growing, std::size_t words, const std::uint64_t* done, std::uint32_t last) {
  const std::size_t mask = growing.slots.size() - 1;
  for (std::size_t at = hash_of(done, words, last) & mask;; at = (at + 1) & mask) {
    const std::uint32_t state = growing.slots[at];
    if (state == no_trail) return at;
    if (growing.layer.last[state] == last && std::equal(done, done + words, &growing.layer.done[state * words]))
      return at;
  }
}

void widen(Growing& growing, std::size_t words) {
  growing.slots.assign(growing.slots.size() * 4, no_trail);
  for (std::uint32_t s = 0; s < growing.layer.size(); ++s)
    growing.slots[slot_of(growing, words, &growing.layer.done[s * words], growing.layer.last[s])] = s;
}

/// The state, new or reached more cheaply; its trail is laid when it is cheaper.
void reach(LayerSearch& search, Growing& growing, const std::vector<std::uint64_t>& done, std::uint32_t node,
           std::uint32_t before, Time<> spent) {
  const std::size_t words = search.net.words;
  const std::size_t slot = slot_of(growing, words, done.data(), node);
  Layer& layer = growing.layer;
  if (growing.slots[slot] != no_trail) {
    const std::uint32_t state = growing.slots[slot];
    if (!(spent < layer.spent[state])) return;
    layer.spent[state] = spent;
    search.trail[layer.trail[state]].before = before;
    return;
  }
  const Time<> rest = to_come(search, done.data(), node);
  ++search.looked_at;
  if (!(spent + rest < search.limit)) return;
  growing.slots[slot] = static_cast<std::uint32_t>(layer.size());
  layer.done.insert(layer.done.end(), done.begin(), done.end());
  layer.last.push_back(node);
  layer.spent.push_back(spent), layer.to_come.push_back(rest);
  layer.trail.push_back(static_cast<std::uint32_t>(search.trail.size()));
  search.trail.push_back({node, before});
  if (layer.size() * 2 > growing.slots.size()) widen(growing, words);
}

Layer next_layer(LayerSearch& search, const Layer& layer) {
  const PairNet& net = search.net;
  Growing growing;
  std::vector<std::uint64_t> done(net.words);
  for (std::size_t s = 0; s < layer.size(); ++s) {
    const std::uint64_t* const own = &layer.done[s * net.words];
    for (std::uint32_t v = 1; v < net.nodes; ++v) {
      const Time<> arc = net.arc(layer.last[s], v);
      if (!(layer.spent[s] + arc < search.limit) || !may_follow(net, own, v)) continue;
      done.assign(own, own + net.words);
      done[v / 64] |= std::uint64_t{1} << (v % 64);
      reach(search, growing, done, v, layer.trail[s], layer.spent[s] + arc);
    }
  }
  return std::move(growing.layer);
}

/// The most promising ones; among equals those found first.
Layer best_of(const Layer& layer, std::size_t words, std::size_t width) {
  std::vector<std::uint32_t> ranks(layer.size());
  for (std::uint32_t s = 0; s < ranks.size(); ++s) ranks[s] = s;
  const auto key = [&](std::uint32_t s) { return std::tuple(layer.spent[s] + layer.to_come[s], s); };
  std::ranges::nth_element(ranks, ranks.begin() + static_cast<std::ptrdiff_t>(width), {}, key);
  ranks.resize(width);
  std::ranges::sort(ranks);
  Layer kept;
  for (const std::uint32_t s : ranks) {
    kept.done.insert(kept.done.end(), &layer.done[s * words], &layer.done[s * words] + words);
    kept.last.push_back(layer.last[s]), kept.trail.push_back(layer.trail[s]);
    kept.spent.push_back(layer.spent[s]), kept.to_come.push_back(layer.to_come[s]);
  }
  return kept;
}

PairOrder order_of(const LayerSearch& search, std::uint32_t trail) {
  PairOrder order;
  for (; trail != no_trail; trail = search.trail[trail].before) order.push_back(search.trail[trail].node);
  std::ranges::reverse(order);
  return order;
}

}  // namespace

NodePrices assignment_prices(const PairNet& net) {
  // Every node but the last is left, every node but the first is reached: the first's column is the last's row.
  std::vector<Time<>> cost(net.nodes * net.nodes);
  const std::size_t last = net.nodes - 1;
  for (std::size_t u = 0; u < net.nodes; ++u)
    for (std::size_t v = 0; v < net.nodes; ++v) cost[u * net.nodes + v] = net.arc(u, v);
  cost[last * net.nodes] = Time<>{};
  Assignment assignment = cheapest_assignment(cost, net.nodes);
  // The arc from the last back to the first is paid by nobody.
  const Time<> back = assignment.row_price[last] + assignment.column_price[0];
  NodePrices prices{std::move(assignment.row_price), std::move(assignment.column_price), assignment.cost - back};
  prices.leaving[last] = prices.reaching[0] = Time<>{};
  return prices;
}

LayersResult layered_order(const PairNet& net, std::span<const NodePrices> prices, Time<> known, std::size_t width,
                           std::size_t states) {
  LayerSearch search{net, prices, known - known * rounding, {{0, no_trail}}, 0};
  Layer layer;
  layer.done.assign(net.words, 0);
  layer.done[0] = 1;
  layer.last = {0}, layer.trail = {0};
  layer.spent = {Time<>{}}, layer.to_come = {Time<>{}};
  LayersResult result{std::nullopt, true, 0};
  for (std::size_t depth = 1; depth < net.nodes && layer.size() > 0; ++depth) {
    layer = next_layer(search, layer);
    if (layer.size() > width) layer = best_of(layer, net.words, width), result.whole = false;
    result.states = search.looked_at;
    if (search.looked_at > states && depth + 1 < net.nodes) return {std::nullopt, false, search.looked_at};
  }
  if (layer.size() > 0) {
    const auto best = std::ranges::min_element(layer.spent);
    result.order = order_of(search, layer.trail[static_cast<std::size_t>(best - layer.spent.begin())]);
  }
  return result;
}

}  // namespace seambook
