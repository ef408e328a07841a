#include "sequence/pair_prices.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "sequence/arborescence.hpp"
#include "sequence/assignment.hpp"

namespace seambook {
namespace {

/// What is subtracted and added again must give the same: charges are parts of a second that binary numbers hold.
Time<> whole_ticks(Time<> time) { return {std::round(time.si * 1024) / 1024}; }

Arcs charged_arcs(const PairNet& net, const std::vector<Time<>>& charges) {
  Arcs arcs{net.nodes, net.cost};
  for (std::size_t u = 0; u < net.nodes; ++u)
    for (std::size_t v = 0; v < net.nodes; ++v)
      arcs.cost[u * net.nodes + v] = arcs.cost[u * net.nodes + v] + charges[u];
  return arcs;
}

Time<> sum_of(const std::vector<Time<>>& times) { return std::accumulate(times.begin(), times.end(), Time<>{}); }

/// Leaving is charged once for each node but the last, whatever the order; the tree's own prices come on top.
NodePrices prices_of(const PairNet& net, const std::vector<Time<>>& charges) {
  std::vector<PaidArrival> paid;
  const Arborescence tree = cheapest_arborescence(charged_arcs(net, charges), &paid);
  NodePrices prices{std::vector<Time<>>(net.nodes), std::vector<Time<>>(net.nodes), {}, tree.cost - sum_of(charges)};
  for (std::size_t u = 0; u < net.nodes; ++u) prices.leaving[u] = Time<>{} - charges[u];
  for (const PaidArrival& arrival : paid) {
    if (arrival.nodes.size() == 1) {
      prices.reaching[arrival.nodes.front()] = prices.reaching[arrival.nodes.front()] + arrival.price;
    } else if (Time<>{} < arrival.price) {
      GroupPrice group{std::vector<std::uint64_t>(net.words), arrival.price};
      for (const std::size_t v : arrival.nodes) group.nodes[v / 64] |= std::uint64_t{1} << (v % 64);
      prices.groups.push_back(std::move(group));
    }
  }
  return prices;
}

/// Per node how often the tree goes on from it beyond once; the last node is not left.
std::vector<double> excess_of(const Arborescence& tree) {
  std::vector<double> excess(tree.from.size(), -1.0);
  excess.back() = 0;
  for (std::size_t v = 1; v < tree.from.size(); ++v) excess[tree.from[v]] += 1;
  return excess;
}

bool holds(const GroupPrice& group, std::size_t node) { return (group.nodes[node / 64] >> (node % 64) & 1U) != 0; }

}  // namespace

NodePrices assignment_prices(const PairNet& net) {
  // Every node but the last is left, every node but the first is reached: the first's column is the last's row.
  std::vector<Time<>> cost = net.cost;
  const std::size_t last = net.nodes - 1;
  cost[last * net.nodes] = Time<>{};
  Assignment assignment = cheapest_assignment(cost, net.nodes);
  // The arc from the last back to the first is paid by nobody.
  const Time<> back = assignment.row_price[last] + assignment.column_price[0];
  NodePrices prices{std::move(assignment.row_price), std::move(assignment.column_price), {}, assignment.cost - back};
  prices.leaving[last] = prices.reaching[0] = Time<>{};
  return prices;
}

NodePrices tree_prices(const PairNet& net, const NodePrices& begin, Time<> known, std::size_t rounds) {
  std::vector<Time<>> charges(net.nodes), best;
  for (std::size_t u = 0; u + 1 < net.nodes; ++u) charges[u] = whole_ticks(Time<>{} - begin.leaving[u]);
  Time<> best_floor{};
  double reach = 1;
  for (std::size_t round = 0; round < rounds; ++round) {
    const Arborescence tree = cheapest_arborescence(charged_arcs(net, charges));
    const Time<> floor = tree.cost - sum_of(charges);
    if (best.empty() || best_floor < floor) {
      best_floor = floor, best = charges;
    } else {
      reach *= 0.95;
    }
    const std::vector<double> excess = excess_of(tree);
    const double square = std::inner_product(excess.begin(), excess.end(), excess.begin(), 0.0);
    if (!(best_floor < known) || square == 0) break;
    const Time<> step = (known - floor) * (reach / square);
    for (std::size_t u = 0; u < net.nodes; ++u) charges[u] = whole_ticks(charges[u] + step * excess[u]);
  }
  return prices_of(net, best.empty() ? charges : best);
}

PairNet with_paid_ends(PairNet net, const NodePrices& prices) {
  for (std::size_t u = 0; u < net.nodes; ++u)
    for (std::size_t v = 0; v < net.nodes; ++v)
      net.cost[u * net.nodes + v] = net.cost[u * net.nodes + v] - prices.leaving[u] - prices.reaching[v];
  return net;
}

Time<> grain_of(const PairNet& net) {
  constexpr double most = 9e15;  // whole numbers up to here are exact
  std::int64_t grain = 0;
  for (const Time<> cost : net.cost) {
    if (!std::isfinite(cost.si)) continue;
    if (std::abs(cost.si) > most || std::floor(cost.si) != cost.si) return {};
    grain = std::gcd(grain, static_cast<std::int64_t>(cost.si));
  }
  return Time<>{static_cast<double>(grain)};
}

Time<> up_to_grain(Time<> floor, Time<> grain) {
  constexpr double rounding = 1e-6;  // of a grain
  return Time<>{} < grain ? grain * std::ceil(floor.si / grain.si - rounding) : floor;
}

PairNet without_dear_arcs(PairNet net, const NodePrices& prices, Time<> limit) {
  for (std::size_t u = 0; u < net.nodes; ++u) {
    for (std::size_t v = 0; v < net.nodes; ++v) {
      Time<>& cost = net.cost[u * net.nodes + v];
      Time<> over = cost - prices.leaving[u] - prices.reaching[v];
      for (const GroupPrice& group : prices.groups)
        if (holds(group, v) && !holds(group, u)) over = over - group.price;
      if (!(prices.together + over < limit)) cost = Time<>{std::numeric_limits<double>::infinity()};
    }
  }
  return net;
}

}  // namespace seambook
