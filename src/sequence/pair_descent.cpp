#include "sequence/pair_descent.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <random>

#include "sequence/pair_exchanges.hpp"

namespace seambook {
namespace {

// Runs of at most 2, 4, 8 or 16 nodes, by chance: small kicks suit some nets, large ones others.
constexpr std::size_t kick_sizes = 4;

void descend(PairWalk& walk) {
  while (!walk.dirty.empty()) {
    const std::uint32_t node = walk.dirty.back();
    walk.dirty.pop_back();
    walk.queued[node] = 0;
    while (improve_at(walk, node)) {
    }
  }
}

std::size_t pick(PairWalk& walk, std::size_t below) { return walk.random() % below; }

/// Two short runs somewhere change places, when precedence and the arcs allow it.
void kick(PairWalk& walk) {
  constexpr int tries = 20;
  const std::size_t last = walk.order.size() - 1;
  const std::size_t longest = std::size_t{2} << pick(walk, kick_sizes);
  for (int i = 0; i < tries; ++i) {
    const std::size_t middle = 1 + pick(walk, last - 1);
    const std::size_t first_run = 1 + pick(walk, std::min(longest, middle));
    if (middle + 1 >= last) continue;
    const std::size_t second_run = 1 + pick(walk, std::min(longest, last - 1 - middle));
    const Exchange e{middle - first_run, middle, middle + second_run};
    if (!keeps_precedence(walk, e) || !std::isfinite(gain_of(walk, e).si)) continue;
    exchange(walk, e);
    return;
  }
}

struct KeptOrder {
  PairOrder order;
  std::vector<std::uint32_t> position;
  std::vector<Time<>> into;
  Time<> total{};
};

KeptOrder kept(const PairWalk& walk) { return {walk.order, walk.position, walk.into, walk.total}; }

Time<> heat_at(const Annealing& annealing, double done) {
  if (!(Time<>{} < annealing.cold)) return annealing.hot * (1 - done);
  return annealing.hot * std::pow(annealing.cold.si / annealing.hot.si, done);
}

}  // namespace

Descent descended(const PairNet& net, const PairOrder& order, Time<> floor, const Annealing& annealing,
                  std::uint32_t seed) {
  if (net.nodes < 4) return {order, order};
  PairWalk walk = begin_walk(net, order, seed);
  descend(walk);
  KeptOrder at = kept(walk), best = at;
  for (std::size_t k = 0; k < annealing.kicks && floor < best.total; ++k) {
    kick(walk);
    if (pick(walk, 2) == 0) kick(walk);
    descend(walk);
    const double done = static_cast<double>(k) / static_cast<double>(annealing.kicks);
    const double chance = (static_cast<double>(walk.random()) + 1) / (static_cast<double>(std::mt19937::max()) + 2);
    const Time<> limit = heat_at(annealing, done) * -std::log(chance);
    if (walk.total - at.total <= limit) {
      at = kept(walk);
      if (at.total < best.total) best = at;
    } else {
      walk.order = at.order, walk.position = at.position, walk.into = at.into, walk.total = at.total;
    }
  }
  return {std::move(best.order), std::move(at.order)};
}

PairOrder cheapest_next(const PairNet& net) {
  PairOrder order{0};
  std::vector<std::size_t> waiting(net.nodes);
  std::vector<std::uint8_t> done(net.nodes);
  for (std::size_t v = 0; v < net.nodes; ++v) waiting[v] = net.leads[v].size();
  for (std::uint32_t u = 0; order.size() < net.nodes; u = order.back()) {
    done[u] = 1;
    for (const std::uint32_t v : net.follows[u]) --waiting[v];
    std::optional<std::uint32_t> next;
    for (std::uint32_t v = 0; v < net.nodes; ++v) {
      if (done[v] != 0 || waiting[v] != 0) continue;
      if (!next || net.arc(u, v) < net.arc(u, *next)) next = v;
    }
    order.push_back(*next);
  }
  return order;
}

}  // namespace seambook
