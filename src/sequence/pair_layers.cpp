#include "sequence/pair_layers.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace seambook {
namespace {

constexpr std::uint32_t no_trail = UINT32_MAX;

/// States with one number of nodes done, in parallel.
struct Layer {
  std::vector<std::uint64_t> done;  // words per state
  std::vector<std::uint32_t> last, trail;
  std::vector<Time<>> spent;
  std::vector<Time<>> rest;  // per state and price: what remains costs at least this
  std::size_t size() const { return last.size(); }
};

/// Where a state came from: kept for all layers, so that the order can be told.
struct TrailStep {
  std::uint32_t node = 0, before = no_trail;
};

struct LayerSearch {
  const PairNet& net;
  std::span<const NodePrices> prices;
  Time<> limit;                                           // a state that cannot come below it is left out
  std::size_t most_states = 0;                            // the search ends when it has looked at more
  std::vector<std::vector<std::uint32_t>> nexts;          // per node: heads of its arcs
  std::vector<std::vector<const std::uint64_t*>> groups;  // per price and node, [price * nodes + node]: those with it
  std::vector<std::vector<Time<>>> group_prices;          // parallel
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

LayerSearch begin_layers(const PairNet& net, std::span<const NodePrices> prices, Time<> limit, std::size_t states) {
  LayerSearch search{net, prices, limit,           states, std::vector<std::vector<std::uint32_t>>(net.nodes),
                     {},  {},     {{0, no_trail}}, 0};
  for (std::size_t u = 0; u < net.nodes; ++u)
    for (std::uint32_t v = 1; v < net.nodes; ++v)
      if (std::isfinite(net.arc(u, v).si)) search.nexts[u].push_back(v);
  search.groups.resize(prices.size() * net.nodes), search.group_prices.resize(prices.size() * net.nodes);
  for (std::size_t p = 0; p < prices.size(); ++p)
    for (const GroupPrice& group : prices[p].groups)
      for (std::size_t v = 0; v < net.nodes; ++v) {
        if ((group.nodes[v / 64] >> (v % 64) & 1U) == 0) continue;
        search.groups[p * net.nodes + v].push_back(group.nodes.data());
        search.group_prices[p * net.nodes + v].push_back(group.price);
      }
  return search;
}

bool disjoint(const std::uint64_t* a, const std::uint64_t* b, std::size_t words) {
  for (std::size_t w = 0; w < words; ++w)
    if ((a[w] & b[w]) != 0) return false;
  return true;
}

/// What remains after going on with `node` costs at least this by one price: the rest before, less what that step uses
/// up, namely its last node's leaving, the new node's reaching and the groups that it is the first of.
Time<> rest_after(const LayerSearch& search, std::size_t price, const Layer& layer, std::size_t state,
                  std::uint32_t node) {
  const NodePrices& prices = search.prices[price];
  const std::size_t words = search.net.words, at = price * search.net.nodes + node;
  Time<> rest =
      layer.rest[state * search.prices.size() + price] - prices.leaving[layer.last[state]] - prices.reaching[node];
  for (std::size_t g = 0; g < search.groups[at].size(); ++g)
    if (disjoint(search.groups[at][g], &layer.done[state * words], words)) rest = rest - search.group_prices[at][g];
  return rest;
}

Time<> to_come(const Layer& layer, std::size_t prices, std::size_t state) {
  return *std::max_element(&layer.rest[state * prices], &layer.rest[state * prices] + prices);
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

/// The state after going on from another with `node`, new or reached more cheaply; its trail is laid when it is
/// cheaper.
void reach(LayerSearch& search, Growing& growing, const std::vector<std::uint64_t>& done, const Layer& from,
           std::size_t state, std::uint32_t node) {
  const std::size_t words = search.net.words, prices = search.prices.size();
  const Time<> spent = from.spent[state] + search.net.arc(from.last[state], node);
  const std::size_t slot = slot_of(growing, words, done.data(), node);
  Layer& layer = growing.layer;
  if (growing.slots[slot] != no_trail) {
    const std::uint32_t known = growing.slots[slot];
    if (!(spent < layer.spent[known])) return;
    layer.spent[known] = spent;
    search.trail[layer.trail[known]].before = from.trail[state];
    return;
  }
  ++search.looked_at;
  const std::size_t begin = layer.rest.size();
  bool hopeful = true;
  for (std::size_t p = 0; p < prices && hopeful; ++p) {
    layer.rest.push_back(rest_after(search, p, from, state, node));
    hopeful = spent + layer.rest.back() < search.limit;
  }
  if (!hopeful) return layer.rest.resize(begin);
  growing.slots[slot] = static_cast<std::uint32_t>(layer.size());
  layer.done.insert(layer.done.end(), done.begin(), done.end());
  layer.last.push_back(node);
  layer.spent.push_back(spent);
  layer.trail.push_back(static_cast<std::uint32_t>(search.trail.size()));
  search.trail.push_back({node, from.trail[state]});
  if (layer.size() * 2 > growing.slots.size()) widen(growing, words);
}

Layer next_layer(LayerSearch& search, const Layer& layer) {
  const PairNet& net = search.net;
  Growing growing;
  std::vector<std::uint64_t> done(net.words);
  for (std::size_t s = 0; s < layer.size() && search.looked_at <= search.most_states; ++s) {
    const std::uint64_t* const own = &layer.done[s * net.words];
    for (const std::uint32_t v : search.nexts[layer.last[s]]) {
      if (!(layer.spent[s] + net.arc(layer.last[s], v) < search.limit) || !may_follow(net, own, v)) continue;
      done.assign(own, own + net.words);
      done[v / 64] |= std::uint64_t{1} << (v % 64);
      reach(search, growing, done, layer, s, v);
    }
  }
  return std::move(growing.layer);
}

/// The most promising ones; among equals those found first.
Layer best_of(const Layer& layer, std::size_t words, std::size_t width) {
  const std::size_t prices = layer.rest.size() / layer.size();
  std::vector<std::uint32_t> ranks(layer.size());
  for (std::uint32_t s = 0; s < ranks.size(); ++s) ranks[s] = s;
  const auto key = [&](std::uint32_t s) { return std::tuple(layer.spent[s] + to_come(layer, prices, s), s); };
  std::ranges::nth_element(ranks, ranks.begin() + static_cast<std::ptrdiff_t>(width), {}, key);
  ranks.resize(width);
  std::ranges::sort(ranks);
  Layer kept;
  for (const std::uint32_t s : ranks) {
    kept.done.insert(kept.done.end(), &layer.done[s * words], &layer.done[s * words] + words);
    kept.rest.insert(kept.rest.end(), &layer.rest[s * prices], &layer.rest[s * prices] + prices);
    kept.last.push_back(layer.last[s]), kept.trail.push_back(layer.trail[s]);
    kept.spent.push_back(layer.spent[s]);
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

LayersResult layered_order(const PairNet& net, std::span<const NodePrices> prices, Time<> limit, std::size_t width,
                           std::size_t states) {
  LayerSearch search = begin_layers(net, prices, limit, states);
  Layer layer;
  layer.done.assign(net.words, 0);
  layer.done[0] = 1;
  layer.last = {0}, layer.trail = {0};
  layer.spent = {Time<>{}};
  layer.rest.reserve(prices.size());
  for (const NodePrices& of : prices) layer.rest.push_back(of.together);
  LayersResult result{std::nullopt, true, 0};
  for (std::size_t depth = 1; depth < net.nodes && layer.size() > 0; ++depth) {
    layer = next_layer(search, layer);
    result.states = search.looked_at;
    if (search.looked_at > states) return {std::nullopt, false, search.looked_at};
    if (layer.size() > width) layer = best_of(layer, net.words, width), result.whole = false;
  }
  if (layer.size() > 0) {
    const auto best = std::ranges::min_element(layer.spent);
    result.order = order_of(search, layer.trail[static_cast<std::size_t>(best - layer.spent.begin())]);
  }
  return result;
}

}  // namespace seambook
