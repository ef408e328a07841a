#include "sequence/pair_descent.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <random>

namespace seambook {
namespace {

// Arcs considered from each node, cheapest first. One that costs the same as the one before counts for less: else,
// where many set-ups are alike, no arc to another set-up would be considered.
constexpr std::size_t most_kept = 48;
constexpr double weight_kept = 12, weight_of_tie = 0.3;
// Runs of at most 2, 4, 8 or 16 nodes, by chance: small kicks suit some nets, large ones others.
constexpr std::size_t kick_sizes = 4;
constexpr double gain_that_counts = 1e-9;  // of the dearest arc: below, it is rounding

/// Runs [from + 1, middle] and [middle + 1, to] change places.
struct Exchange {
  std::size_t from = 0, middle = 0, to = 0;
};

struct PairWalk {
  const PairNet& net;
  std::vector<std::vector<std::uint32_t>> nearest;
  PairOrder order;
  std::vector<std::uint32_t> position;
  Time<> total{}, least_gain{};
  std::vector<std::uint32_t> dirty;  // nodes whose arcs are worth another look
  std::vector<std::uint8_t> queued;
  std::mt19937 random;
};

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

/// Whether nothing in the first run must precede something in the second. A chain from one to the other passes through
/// the runs only, so direct neighbours tell.
bool keeps_precedence(const PairWalk& walk, const Exchange& e) {
  const auto within = [&](std::uint32_t node, std::size_t begin, std::size_t end) {
    return walk.position[node] > begin && walk.position[node] <= end;
  };
  if (e.middle - e.from <= e.to - e.middle) {
    for (std::size_t p = e.from + 1; p <= e.middle; ++p)
      for (const std::uint32_t v : walk.net.follows[walk.order[p]])
        if (within(v, e.middle, e.to)) return false;
  } else {
    for (std::size_t p = e.middle + 1; p <= e.to; ++p)
      for (const std::uint32_t u : walk.net.leads[walk.order[p]])
        if (within(u, e.from, e.middle)) return false;
  }
  return true;
}

Time<> gain_of(const PairWalk& walk, const Exchange& e) {
  const auto arc = [&](std::size_t p, std::size_t q) { return walk.net.arc(walk.order[p], walk.order[q]); };
  return arc(e.from, e.from + 1) + arc(e.middle, e.middle + 1) + arc(e.to, e.to + 1) - arc(e.from, e.middle + 1) -
         arc(e.to, e.from + 1) - arc(e.middle, e.to + 1);
}

void look_again(PairWalk& walk, std::uint32_t node) {
  if (walk.queued[node] != 0) return;
  walk.queued[node] = 1;
  walk.dirty.push_back(node);
}

void exchange(PairWalk& walk, const Exchange& e) {
  walk.total = walk.total - gain_of(walk, e);
  for (const std::size_t p : {e.from, e.from + 1, e.middle, e.middle + 1, e.to, e.to + 1})
    look_again(walk, walk.order[p]);
  const auto at = [&](std::size_t p) { return walk.order.begin() + static_cast<std::ptrdiff_t>(p); };
  std::rotate(at(e.from + 1), at(e.middle + 1), at(e.to + 1));
  for (std::size_t p = e.from + 1; p <= e.to; ++p) walk.position[walk.order[p]] = static_cast<std::uint32_t>(p);
}

/// The best exchange found so far.
struct BestExchange {
  Time<> gain{};
  std::optional<Exchange> exchange;
};

void consider(const PairWalk& walk, const Exchange& e, BestExchange& best) {
  const Time<> gain = gain_of(walk, e);
  if (!(best.gain < gain) || !keeps_precedence(walk, e)) return;
  best = {gain, e};
}

/// Exchanges that put `head` right after the node at p, whatever the third arc: of the three arcs that an exchange
/// brings in, some two in a row cost less than what they replace (Lin and Kernighan 1973), so the second head is sought
/// among the nearest only while the sum still gains.
void exchanges_by(const PairWalk& walk, std::size_t p, std::uint32_t head, Time<> gained, BestExchange& best) {
  const std::size_t h = walk.position[head];
  const auto heads_from = [&](std::size_t tail, auto allowed, auto made) {
    const Time<> open = gained + walk.net.arc(walk.order[tail], head);
    for (const std::uint32_t next : walk.nearest[walk.order[tail]]) {
      if (!(walk.net.arc(walk.order[tail], next) < open)) break;
      const std::size_t q = walk.position[next];
      if (allowed(q)) consider(walk, made(q), best);
    }
  };
  if (h > p + 1) {
    heads_from(
        h - 1, [&](std::size_t q) { return q > h; },
        [&](std::size_t q) {
          return Exchange{p, h - 1, q - 1};
        });
    heads_from(
        h - 1, [&](std::size_t q) { return q > 0 && q <= p; },
        [&](std::size_t q) {
          return Exchange{q - 1, p, h - 1};
        });
  } else if (h > 0 && h < p) {
    heads_from(
        h - 1, [&](std::size_t q) { return q > h && q <= p; },
        [&](std::size_t q) {
          return Exchange{h - 1, q - 1, p};
        });
  }
}

bool improve_at(PairWalk& walk, std::uint32_t node) {
  const std::size_t p = walk.position[node];
  if (p + 1 >= walk.order.size()) return false;
  BestExchange best{walk.least_gain, std::nullopt};
  const Time<> old = walk.net.arc(node, walk.order[p + 1]);
  for (const std::uint32_t head : walk.nearest[node]) {
    const Time<> fresh = walk.net.arc(node, head);
    if (!(fresh < old)) break;
    exchanges_by(walk, p, head, old - fresh, best);
  }
  if (!best.exchange) return false;
  exchange(walk, *best.exchange);
  return true;
}

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
  Time<> total{};
};

PairWalk begin(const PairNet& net, const PairOrder& order, std::uint32_t seed) {
  PairWalk walk{net,
                nearest_of(net),
                order,
                std::vector<std::uint32_t>(net.nodes),
                cost_of(net, order),
                {},
                {},
                std::vector<std::uint8_t>(net.nodes),
                std::mt19937{seed}};
  for (const Time<> cost : net.cost)
    if (std::isfinite(cost.si)) walk.least_gain = std::max(walk.least_gain, cost * gain_that_counts);
  for (std::uint32_t p = 0; p < order.size(); ++p) walk.position[order[p]] = p;
  for (std::size_t p = order.size(); p-- > 0;) look_again(walk, order[p]);
  return walk;
}

Time<> heat_at(const Annealing& annealing, double done) {
  if (!(Time<>{} < annealing.cold)) return annealing.hot * (1 - done);
  return annealing.hot * std::pow(annealing.cold.si / annealing.hot.si, done);
}

}  // namespace

PairOrder descended(const PairNet& net, const PairOrder& order, Time<> floor, const Annealing& annealing,
                    std::uint32_t seed) {
  if (net.nodes < 4) return order;
  PairWalk walk = begin(net, order, seed);
  descend(walk);
  KeptOrder at{walk.order, walk.position, walk.total}, best = at;
  for (std::size_t k = 0; k < annealing.kicks && floor < best.total; ++k) {
    kick(walk);
    if (pick(walk, 2) == 0) kick(walk);
    descend(walk);
    const double done = static_cast<double>(k) / static_cast<double>(annealing.kicks);
    const double chance = (static_cast<double>(walk.random()) + 1) / (static_cast<double>(std::mt19937::max()) + 2);
    const Time<> limit = heat_at(annealing, done) * -std::log(chance);
    if (walk.total - at.total <= limit) {
      at = {walk.order, walk.position, walk.total};
      if (at.total < best.total) best = at;
    } else {
      walk.order = at.order, walk.position = at.position, walk.total = at.total;
    }
  }
  return best.order;
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
