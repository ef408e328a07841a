#include "sequence/arborescence.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <random>

using namespace seambook;

namespace {

bool leads_to_root(const std::vector<std::size_t>& from, std::size_t node) {
  for (std::size_t steps = 0; steps < from.size(); ++steps) node = node == 0 ? 0 : from[node];
  return node == 0;
}

bool is_tree(const std::vector<std::size_t>& from) {
  for (std::size_t node = 1; node < from.size(); ++node)
    if (!leads_to_root(from, node)) return false;
  return true;
}

Time<> cost_of(const Arcs& arcs, const std::vector<std::size_t>& from) {
  Time<> total{};
  for (std::size_t node = 1; node < arcs.nodes; ++node) total = total + arcs.cost[from[node] * arcs.nodes + node];
  return total;
}

/// The least over every choice of one arrival per node that makes a tree.
Time<> least_of_all(const Arcs& arcs) {
  Time<> least{std::numeric_limits<double>::infinity()};
  std::vector<std::size_t> from(arcs.nodes);
  while (true) {
    if (is_tree(from)) least = std::min(least, cost_of(arcs, from));
    std::size_t node = 1;
    while (node < arcs.nodes && ++from[node] == arcs.nodes) from[node++] = 0;
    if (node == arcs.nodes) return least;
  }
}

}  // namespace

TEST_CASE("the arborescence is a tree and the least of all") {
  std::mt19937 random(51);
  for (int trial = 0; trial < 1500; ++trial) {
    CAPTURE(trial);
    Arcs arcs{2 + random() % 4, {}};
    for (std::size_t arc = 0; arc < arcs.nodes * arcs.nodes; ++arc) {
      const bool missing = random() % 5 == 0 && arc >= arcs.nodes;  // the root reaches every node
      arcs.cost.push_back({missing ? std::numeric_limits<double>::infinity() : static_cast<double>(random() % 6)});
    }
    const Arborescence found = cheapest_arborescence(arcs);
    REQUIRE(is_tree(found.from));
    CHECK(found.cost.si == least_of_all(arcs).si);
    CHECK(found.cost.si == cost_of(arcs, found.from).si);
  }
}

TEST_CASE("what is paid for arrivals makes up the cost, and no arc costs less than what it enters") {
  std::mt19937 random(52);
  for (int trial = 0; trial < 1000; ++trial) {
    CAPTURE(trial);
    Arcs arcs{2 + random() % 6, {}};
    for (std::size_t arc = 0; arc < arcs.nodes * arcs.nodes; ++arc)
      arcs.cost.push_back({static_cast<double>(random() % 9) - 2});
    std::vector<PaidArrival> paid;
    Time<> sum{};
    const Arborescence found = cheapest_arborescence(arcs, &paid);
    for (const PaidArrival& arrival : paid) {
      sum = sum + arrival.price;
      if (arrival.nodes.size() > 1) CHECK(Time<>{} < arrival.price);
    }
    CHECK(sum.si == found.cost.si);
    for (std::size_t u = 0; u < arcs.nodes; ++u)
      for (std::size_t v = 1; v < arcs.nodes; ++v) {
        if (u == v) continue;
        Time<> entered{};
        for (const PaidArrival& arrival : paid)
          if (std::ranges::count(arrival.nodes, v) > std::ranges::count(arrival.nodes, u))
            entered = entered + arrival.price;
        CHECK(entered <= arcs.cost[u * arcs.nodes + v]);
      }
  }
}

TEST_CASE("rings inside rings are opened") {
  // 1 and 2 are cheap from each other, 3 is cheap from 2 and the pair is cheap from 3; the root comes dear but for 3.
  const double infinite = std::numeric_limits<double>::infinity();
  Arcs arcs{4, {}};
  for (const double cost : {infinite, 20.0, 20.0, 9.0, infinite, infinite, 1.0, 8.0, infinite, 1.0, infinite, 2.0,
                            infinite, 6.0, 3.0, infinite})
    arcs.cost.push_back({cost});
  const Arborescence found = cheapest_arborescence(arcs);
  CHECK(found.cost.si == 9 + 3 + 1);
  CHECK(found.from[3] == 0);
  CHECK(found.from[2] == 3);
  CHECK(found.from[1] == 2);
}
