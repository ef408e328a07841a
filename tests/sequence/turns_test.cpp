// Descents that turn runs around, against all turns and all permutations.
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <random>

#include "random_pairs.hpp"
#include "sequence/pair_descent.hpp"

using namespace seambook;

TEST_CASE("no run turned around makes a descended order cheaper where arcs cost the same both ways") {
  std::mt19937 random{15};
  for (int i = 0; i < 200; ++i) {
    PairProblem problem = random_pairs(random, 12, 0);
    same_back(problem);
    problem.ending.clear();  // the way out is not the same both ways
    const PairNet net = pair_net(problem);
    CAPTURE(i);
    CHECK(same_both_ways(net));
    PairOrder order = cheapest_next(net);
    for (Time<> cost{std::numeric_limits<double>::infinity()}; cost_of(net, order) < cost;) {
      cost = cost_of(net, order);
      order = descended(net, order, Time<>{}, {}, 1).best;
    }
    for (std::size_t first = 1; first + 2 < order.size(); ++first) {
      for (std::size_t last = first + 1; last + 1 < order.size(); ++last) {
        PairOrder turned = order;
        std::reverse(turned.begin() + static_cast<std::ptrdiff_t>(first),
                     turned.begin() + static_cast<std::ptrdiff_t>(last + 1));
        if (allowed(problem, {turned.begin(), turned.end() - 1})) CHECK(cost_of(net, order) <= cost_of(net, turned));
      }
    }
  }
}

TEST_CASE("symmetric nets are descended to the least of all permutations") {
  std::mt19937 random{16};
  for (int i = 0; i < 100; ++i) {
    PairProblem problem = random_pairs(random, 8, below(random, 20));
    for (std::size_t u = 0; u < problem.nodes; ++u)
      for (std::size_t v = 0; v < u; ++v) problem.cost[u * problem.nodes + v] = problem.cost[v * problem.nodes + u];
    const PairNet net = pair_net(problem);
    CAPTURE(i);
    const PairOrder order = descended(net, cheapest_next(net), Time<>{}, {1000, Time<>{10}, Time<>{}}, 1).best;
    CHECK(allowed(problem, {order.begin(), order.end() - 1}));
    CHECK(cost_of(net, order).si == doctest::Approx(least_of_all(problem)));
  }
}
