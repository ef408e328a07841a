#include "basics/digraph.hpp"

#include <doctest/doctest.h>

#include <random>
#include <string>

using namespace seambook;

namespace {

std::string joined(const std::vector<std::size_t>& nodes) {
  std::string text;
  for (const std::size_t node : nodes) text += std::to_string(node) + " ";
  return text;
}

bool has_edge(const std::vector<Edge>& edges, std::size_t from, std::size_t to) {
  for (const Edge& edge : edges)
    if (edge == Edge{from, to}) return true;
  return false;
}

std::vector<Edge> random_edges(std::mt19937& random, std::size_t nodes, std::size_t count, bool forward_only) {
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < count; ++i) {
    std::size_t from = random() % nodes, to = random() % nodes;
    if (forward_only && from > to) std::swap(from, to);
    if (forward_only && from == to) continue;
    edges.emplace_back(from, to);
  }
  return edges;
}

/// Second way to the same answer: strip nodes without predecessors until none is left to strip.
bool strips_to_nothing(std::size_t nodes, const std::vector<Edge>& edges) {
  std::vector<bool> gone(nodes);
  for (std::size_t round = 0; round < nodes; ++round)
    for (std::size_t node = 0; node < nodes; ++node) {
      bool held = false;
      for (const Edge& edge : edges) held = held || (edge.second == node && !gone[edge.first]);
      if (!held) gone[node] = true;
    }
  for (const bool stripped : gone)
    if (!stripped) return false;
  return true;
}

}  // namespace

TEST_CASE("a ring is named from its smallest node and only the ring is named") {
  const std::vector<Edge> edges{{0, 3}, {5, 2}, {2, 4}, {4, 5}, {4, 1}, {3, 2}};
  CHECK(joined(find_cycle(6, edges)) == "2 4 5 ");
}

TEST_CASE("a node before itself is a ring of one") {
  CHECK(joined(find_cycle(3, std::vector<Edge>{{0, 1}, {2, 2}})) == "2 ");
}

TEST_CASE("the shortest ring through the smallest node is told") {
  CHECK(joined(find_cycle(4, std::vector<Edge>{{0, 1}, {1, 2}, {2, 3}, {3, 0}, {1, 0}})) == "0 1 ");
}

TEST_CASE("graphs without a ring have none") {
  CHECK(find_cycle(0, {}).empty());
  CHECK(find_cycle(3, std::vector<Edge>{{2, 1}, {1, 0}, {2, 0}, {2, 0}}).empty());
}

TEST_CASE("an order without edges is the input order and edges pull as little as they must") {
  CHECK(joined(topological_order(4, {})) == "0 1 2 3 ");
  CHECK(joined(topological_order(4, std::vector<Edge>{{0, 3}, {1, 2}})) == "0 1 2 3 ");
  CHECK(joined(topological_order(4, std::vector<Edge>{{2, 0}})) == "1 2 0 3 ");
  CHECK(joined(topological_order(3, std::vector<Edge>{{2, 1}, {1, 0}, {2, 1}})) == "2 1 0 ");
}

TEST_CASE("random graphs: a ring is found exactly when stripping leaves something and every arc of it exists") {
  std::mt19937 random(7);
  int rings = 0;
  for (int trial = 0; trial < 2000; ++trial) {
    CAPTURE(trial);
    const std::size_t nodes = 1 + random() % 8;
    const auto edges = random_edges(random, nodes, random() % 10, false);
    const auto ring = find_cycle(nodes, edges);
    CHECK(ring.empty() == strips_to_nothing(nodes, edges));
    for (std::size_t i = 0; i < ring.size(); ++i) {
      CHECK(has_edge(edges, ring[i], ring[(i + 1) % ring.size()]));
      CHECK(ring[i] >= ring.front());
    }
    rings += ring.empty() ? 0 : 1;
  }
  CHECK(rings > 200);
  CHECK(rings < 1800);
}

TEST_CASE("random graphs without a ring: every edge is respected") {
  std::mt19937 random(8);
  for (int trial = 0; trial < 500; ++trial) {
    CAPTURE(trial);
    const std::size_t nodes = 2 + random() % 30;
    std::vector<Edge> edges = random_edges(random, nodes, random() % 60, true);
    for (Edge& edge : edges) edge = {nodes - 1 - edge.first, nodes - 1 - edge.second};  // against the input order
    const auto order = topological_order(nodes, edges);
    REQUIRE(order.size() == nodes);
    std::vector<std::size_t> position(nodes);
    for (std::size_t i = 0; i < nodes; ++i) position[order[i]] = i;
    for (const Edge& edge : edges) CHECK(position[edge.first] < position[edge.second]);
  }
}

TEST_CASE("a long chain does not exhaust the stack") {
  std::vector<Edge> edges;
  for (std::size_t i = 1; i < 20'000; ++i) edges.emplace_back(i, i - 1);
  CHECK(topological_order(20'000, edges).front() == 19'999);
  edges.emplace_back(0, 19'999);
  CHECK(find_cycle(20'000, edges).size() == 20'000);
}
