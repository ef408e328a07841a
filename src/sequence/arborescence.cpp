#include "sequence/arborescence.hpp"

#include <algorithm>

namespace seambook {

namespace {

using ArcCosts = std::vector<std::vector<Time<>>>;
using Nodes = std::vector<std::size_t>;

/// Takes each node's cheapest arrival off all its arrivals. Gives what was taken and notes where that arrival comes
/// from.
Time<> pay_cheapest_arrivals(ArcCosts& arc, const Nodes& nodes, Nodes& from) {
  Time<> paid{};
  for (const std::size_t v : nodes) {
    if (v == 0) continue;
    from[v] = 0;
    for (const std::size_t u : nodes)
      if (u != v && arc[u][v] < arc[from[v]][v]) from[v] = u;
    const Time<> cheapest = arc[from[v]][v];
    paid = paid + cheapest;
    for (const std::size_t u : nodes) arc[u][v] = arc[u][v] - cheapest;
  }
  return paid;
}

/// A ring among the cheapest arrivals, empty when they all lead back to the root.
Nodes ring_of_arrivals(const Nodes& nodes, const Nodes& from, std::size_t count) {
  std::vector<std::size_t> walk_of(count, count);
  walk_of[0] = 0;
  for (const std::size_t start : nodes) {
    std::size_t v = start;
    while (walk_of[v] == count) {
      walk_of[v] = start;
      v = from[v];
    }
    if (start == 0 || walk_of[v] != start) continue;  // led to the root or into an earlier walk
    Nodes ring{v};
    for (std::size_t u = from[v]; u != v; u = from[u]) ring.push_back(u);
    return ring;
  }
  return {};
}

/// The ring becomes one node, kept under the number of its first; its inner arcs are paid already.
void contract(ArcCosts& arc, Nodes& nodes, const Nodes& ring) {
  const std::size_t kept = ring.front();
  const auto in_ring = [&](std::size_t v) { return std::find(ring.begin(), ring.end(), v) != ring.end(); };
  for (const std::size_t u : nodes) {
    if (in_ring(u)) continue;
    for (const std::size_t v : ring) {
      arc[u][kept] = std::min(arc[u][kept], arc[u][v]);
      arc[kept][u] = std::min(arc[kept][u], arc[v][u]);
    }
  }
  std::erase_if(nodes, [&](std::size_t v) { return v != kept && in_ring(v); });
}

}  // namespace

Time<> cheapest_arborescence(ArcCosts arc) {
  Nodes nodes(arc.size()), from(arc.size());
  for (std::size_t v = 0; v < nodes.size(); ++v) nodes[v] = v;
  Time<> total{};
  while (nodes.size() > 1) {
    total = total + pay_cheapest_arrivals(arc, nodes, from);
    const Nodes ring = ring_of_arrivals(nodes, from, arc.size());
    if (ring.empty()) break;
    contract(arc, nodes, ring);
  }
  return total;
}

}  // namespace seambook
