#include "sequence/arborescence.hpp"

#include <cstdint>
#include <limits>

namespace seambook {

namespace {

constexpr Time<> no_arc{std::numeric_limits<double>::infinity()};

struct Arrivals {
  Arborescence tree;
  std::vector<Time<>> price;  // per node
};

/// Takes each node's cheapest arrival off all its arrivals. Gives what was taken and notes where that arrival comes
/// from. Goes row by row, as the costs lie.
Arrivals pay_cheapest_arrivals(Arcs& arcs) {
  const std::size_t nodes = arcs.nodes;
  Arrivals paid{{{}, std::vector<std::size_t>(nodes)},
                {arcs.cost.begin(), arcs.cost.begin() + static_cast<std::ptrdiff_t>(nodes)}};
  for (std::size_t u = 1; u < nodes; ++u)
    for (std::size_t v = 1; v < nodes; ++v)
      if (u != v && arcs.cost[u * nodes + v] < paid.price[v])
        paid.price[v] = arcs.cost[u * nodes + v], paid.tree.from[v] = u;
  paid.price[0] = Time<>{};
  for (const Time<> price : paid.price) paid.tree.cost = paid.tree.cost + price;
  for (std::size_t u = 0; u < nodes; ++u)
    for (std::size_t v = 1; v < nodes; ++v) arcs.cost[u * nodes + v] = arcs.cost[u * nodes + v] - paid.price[v];
  return paid;
}

constexpr std::size_t no_ring = SIZE_MAX;

/// Rings among the cheapest arrivals: per node the number of its ring, or `no_ring`.
struct Rings {
  std::vector<std::size_t> ring_of;
  std::size_t count = 0;
};

Rings rings_of_arrivals(const std::vector<std::size_t>& from) {
  Rings rings{std::vector<std::size_t>(from.size(), no_ring)};
  std::vector<std::size_t> walk_of(from.size(), from.size());
  for (std::size_t start = 1; start < from.size(); ++start) {
    std::size_t v = start;
    while (v != 0 && walk_of[v] == from.size()) {
      walk_of[v] = start;
      v = from[v];
    }
    if (v == 0 || walk_of[v] != start) continue;  // led to the root or into an earlier walk
    for (; rings.ring_of[v] == no_ring; v = from[v]) rings.ring_of[v] = rings.count;
    ++rings.count;
  }
  return rings;
}

/// The arcs with each ring drawn together into one hub, and which node of a ring each arc really ends or begins at.
struct DrawnTogether {
  std::vector<std::size_t> number;  // node -> new number; hubs are numbered first after the root
  Arcs arcs;
  std::vector<std::size_t> tail, head;  // parallel to arcs.cost: the nodes that the arc stands for
};

DrawnTogether draw_together(const Arcs& arcs, const Rings& rings) {
  DrawnTogether drawn;
  drawn.number.resize(arcs.nodes);
  std::size_t count = 1 + rings.count;
  for (std::size_t v = 1; v < arcs.nodes; ++v)
    drawn.number[v] = rings.ring_of[v] == no_ring ? count++ : 1 + rings.ring_of[v];
  drawn.arcs = {count, std::vector<Time<>>(count * count, no_arc)};
  drawn.tail.resize(count * count);
  drawn.head.resize(count * count);
  for (std::size_t u = 0; u < arcs.nodes; ++u)
    for (std::size_t v = 1; v < arcs.nodes; ++v) {
      const std::size_t arc = drawn.number[u] * count + drawn.number[v];
      const Time<> cost = arcs.cost[u * arcs.nodes + v];
      if (drawn.number[u] == drawn.number[v] || !(cost < drawn.arcs.cost[arc])) continue;
      drawn.arcs.cost[arc] = cost;
      drawn.tail[arc] = u;
      drawn.head[arc] = v;
    }
  return drawn;
}

using Members = std::vector<std::vector<std::size_t>>;  // per node the original ones that it stands for

Members members_together(const Members& members, const DrawnTogether& drawn) {
  Members together(drawn.arcs.nodes);
  for (std::size_t v = 1; v < members.size(); ++v) {
    std::vector<std::size_t>& into = together[drawn.number[v]];
    into.insert(into.end(), members[v].begin(), members[v].end());
  }
  return together;
}

/// `members` is read only where what is paid is noted.
Arborescence arborescence_of(Arcs arcs, const Members& members, std::vector<PaidArrival>* paid) {
  Arrivals arrivals = pay_cheapest_arrivals(arcs);
  Arborescence result = std::move(arrivals.tree);
  for (std::size_t v = 1; paid != nullptr && v < arcs.nodes; ++v)
    if (arrivals.price[v] != Time<>{}) paid->push_back({members[v], arrivals.price[v]});
  const Rings rings = rings_of_arrivals(result.from);
  if (rings.count == 0) return result;
  // A ring's inner arcs are paid, all but the one that its arrival from outside replaces (and that costs nothing now).
  DrawnTogether drawn = draw_together(arcs, rings);
  const Members together = paid == nullptr ? Members{} : members_together(members, drawn);
  const Arborescence inner = arborescence_of(std::move(drawn.arcs), together, paid);
  result.cost = result.cost + inner.cost;
  for (std::size_t to = 1; to < inner.from.size(); ++to) {
    const std::size_t arc = inner.from[to] * inner.from.size() + to;
    result.from[drawn.head[arc]] = drawn.tail[arc];
  }
  return result;
}

}  // namespace

Arborescence cheapest_arborescence(Arcs arcs, std::vector<PaidArrival>* paid) {
  Members alone(paid == nullptr ? 0 : arcs.nodes);
  for (std::size_t v = 0; v < alone.size(); ++v) alone[v] = {v};
  return arborescence_of(std::move(arcs), alone, paid);
}

}  // namespace seambook
