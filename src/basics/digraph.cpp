#include "basics/digraph.hpp"

#include <algorithm>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/breadth_first_search.hpp>
#include <boost/graph/strong_components.hpp>
#include <boost/property_map/property_map.hpp>
#include <cassert>
#include <functional>
#include <queue>

namespace seambook {

namespace {

using PrecedenceGraph = boost::adjacency_list<boost::vecS, boost::vecS, boost::bidirectionalS>;

/// The smallest node that lies on a cycle: it shares its strong component with another node, or has an edge to itself.
std::size_t smallest_on_a_cycle(const PrecedenceGraph& graph) {
  const std::size_t nodes = num_vertices(graph);
  std::vector<std::size_t> component(nodes), members(nodes);
  strong_components(graph, boost::make_iterator_property_map(component.begin(), get(boost::vertex_index, graph)));
  for (const std::size_t c : component) ++members[c];
  for (std::size_t node = 0; node < nodes; ++node)
    if (members[component[node]] > 1 || edge(node, node, graph).second) return node;
  return nodes;
}

/// The shortest ring through `start`, by breadth first search back to it.
std::vector<std::size_t> shortest_ring(const PrecedenceGraph& graph, std::size_t start) {
  const std::size_t nodes = num_vertices(graph);
  std::vector<std::size_t> distance(nodes, nodes), parent(nodes, nodes);
  distance[start] = 0;
  const auto index = get(boost::vertex_index, graph);
  const auto record = boost::make_bfs_visitor(std::make_pair(
      boost::record_distances(boost::make_iterator_property_map(distance.begin(), index), boost::on_tree_edge()),
      boost::record_predecessors(boost::make_iterator_property_map(parent.begin(), index), boost::on_tree_edge())));
  breadth_first_search(graph, start, boost::visitor(record));

  std::size_t last = nodes;
  for (std::size_t node = 0; node < nodes; ++node)
    if (distance[node] < nodes && edge(node, start, graph).second && (last == nodes || distance[node] < distance[last]))
      last = node;
  std::vector<std::size_t> ring;
  for (std::size_t node = last; node != start; node = parent[node]) ring.push_back(node);
  ring.push_back(start);
  std::reverse(ring.begin(), ring.end());
  return ring;
}

}  // namespace

std::vector<std::size_t> find_cycle(std::size_t nodes, std::span<const Edge> edges) {
  const PrecedenceGraph graph(edges.begin(), edges.end(), nodes);
  const std::size_t start = smallest_on_a_cycle(graph);
  return start == nodes ? std::vector<std::size_t>{} : shortest_ring(graph, start);
}

std::vector<std::size_t> topological_order(std::size_t nodes, std::span<const Edge> edges) {
  // boost::topological_sort orders by finishing times and would scatter nodes that nothing binds; taking the first
  // node of the input that is free keeps an order that already respects the edges as it is.
  const PrecedenceGraph graph(edges.begin(), edges.end(), nodes);
  std::vector<std::size_t> waiting_for(nodes), order;
  std::priority_queue<std::size_t, std::vector<std::size_t>, std::greater<>> ready;
  for (std::size_t node = 0; node < nodes; ++node) {
    waiting_for[node] = in_degree(node, graph);
    if (waiting_for[node] == 0) ready.push(node);
  }
  order.reserve(nodes);
  while (!ready.empty()) {
    const std::size_t node = ready.top();
    ready.pop();
    order.push_back(node);
    for (auto [edge, end] = out_edges(node, graph); edge != end; ++edge)
      if (--waiting_for[target(*edge, graph)] == 0) ready.push(target(*edge, graph));
  }
  assert(order.size() == nodes && "topological_order was given a cycle");
  return order;
}

}  // namespace seambook
