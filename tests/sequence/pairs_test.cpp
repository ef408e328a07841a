// Orders by pairs against all permutations, and assignments likewise.
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>

#include "sequence/assignment.hpp"
#include "sequence/pair_descent.hpp"
#include "sequence/pair_search.hpp"

using namespace seambook;

namespace {

std::size_t below(std::mt19937& random, std::size_t n) { return random() % n; }

/// Costs of a few sizes, so that many orders tie; precedence among a shuffled order of the nodes.
PairProblem random_pairs(std::mt19937& random, std::size_t nodes, std::size_t percent_precedence) {
  PairProblem problem;
  problem.nodes = nodes;
  problem.cost.resize(nodes * nodes);
  const std::size_t most = 2 + below(random, 40);
  for (Time<>& cost : problem.cost) cost = Time<>{static_cast<double>(below(random, most))};
  if (below(random, 2) == 0)
    for (std::size_t v = 0; v < nodes; ++v) problem.ending.push_back(Time<>{static_cast<double>(below(random, most))});
  std::vector<std::size_t> rank(nodes - 1);
  std::iota(rank.begin(), rank.end(), 1);
  std::shuffle(rank.begin(), rank.end(), random);
  for (std::size_t i = 0; i < rank.size(); ++i)
    for (std::size_t j = i + 1; j < rank.size(); ++j)
      if (below(random, 100) < percent_precedence) problem.precedence.emplace_back(rank[i], rank[j]);
  return problem;
}

bool allowed(const PairProblem& problem, const std::vector<std::uint32_t>& order) {
  std::vector<std::size_t> place(problem.nodes);
  for (std::size_t p = 0; p < order.size(); ++p) place[order[p]] = p;
  return std::ranges::all_of(problem.precedence,
                             [&](const Edge& edge) { return place[edge.first] < place[edge.second]; });
}

double cost_in(const PairProblem& problem, const std::vector<std::uint32_t>& order) {
  double cost = problem.ending.empty() ? 0 : problem.ending[order.back()].si;
  for (std::size_t p = 0; p + 1 < order.size(); ++p) cost += problem.cost[order[p] * problem.nodes + order[p + 1]].si;
  return cost;
}

double least_of_all(const PairProblem& problem) {
  std::vector<std::uint32_t> order(problem.nodes);
  std::iota(order.begin(), order.end(), 0);
  double least = std::numeric_limits<double>::infinity();
  do
    if (allowed(problem, order)) least = std::min(least, cost_in(problem, order));
  while (std::next_permutation(order.begin() + 1, order.end()));
  return least;
}

}  // namespace

TEST_CASE("orders by pairs cost the least of all permutations") {
  std::mt19937 random{5};
  for (int i = 0; i < 1500; ++i) {
    const PairProblem problem = random_pairs(random, 2 + below(random, 6), below(random, 60));
    CAPTURE(i);
    const PairNet net = pair_net(problem);
    const PairOrder first = cheapest_next(net);
    const double least = least_of_all(problem);
    const PairResult found = pair_search(net, first, {});
    REQUIRE(found.order.size() == problem.nodes + 1);
    const std::vector<std::uint32_t> order(found.order.begin(), found.order.end() - 1);
    CHECK(order.front() == 0);
    CHECK(allowed(problem, order));
    CHECK(cost_in(problem, order) == least);
    CHECK(cost_of(net, found.order).si == least);
    CHECK(found.proved);
    CHECK(found.bound.si <= least);
    // With hardly any budget there is an order still, and a floor under the least.
    const PairResult hasty = pair_search(net, first, {1, 1});
    CHECK(allowed(problem, {hasty.order.begin(), hasty.order.end() - 1}));
    CHECK(hasty.bound.si <= least + 1e-9);
    if (hasty.proved) CHECK(cost_of(net, hasty.order).si == doctest::Approx(least));
  }
}

TEST_CASE("descent keeps precedence and never ends above where it began") {
  std::mt19937 random{6};
  for (int i = 0; i < 60; ++i) {
    const PairProblem problem = random_pairs(random, 20 + below(random, 100), below(random, 12));
    CAPTURE(i);
    const PairNet net = pair_net(problem);
    const PairOrder first = cheapest_next(net);
    REQUIRE(allowed(problem, {first.begin(), first.end() - 1}));
    const PairOrder order = descended(net, first, Time<>{}, 300, 1);
    CHECK(allowed(problem, {order.begin(), order.end() - 1}));
    CHECK(cost_of(net, order) <= cost_of(net, first));
    CHECK(cost_of(net, order).si == doctest::Approx(cost_in(problem, {order.begin(), order.end() - 1})));
    CHECK(order == descended(net, first, Time<>{}, 300, 1));
  }
}

TEST_CASE("assignments cost the least of all, and their prices prove it") {
  std::mt19937 random{7};
  for (int i = 0; i < 2000; ++i) {
    const std::size_t size = 1 + below(random, 6);
    CAPTURE(i);
    std::vector<Time<>> cost(size * size);
    for (std::size_t at = 0; at < cost.size(); ++at)
      cost[at] = below(random, 4) == 0 && at % (size + 1) != 0 ? Time<>{std::numeric_limits<double>::infinity()}
                                                               : Time<>{static_cast<double>(below(random, 30)) - 8};
    std::vector<std::size_t> columns(size);
    std::iota(columns.begin(), columns.end(), 0);
    double least = std::numeric_limits<double>::infinity();
    do {
      double sum = 0;
      for (std::size_t row = 0; row < size; ++row) sum += cost[row * size + columns[row]].si;
      least = std::min(least, sum);
    } while (std::next_permutation(columns.begin(), columns.end()));
    const Assignment found = cheapest_assignment(cost, size);
    CHECK(found.cost.si == least);
    double priced = 0;
    for (std::size_t row = 0; row < size; ++row) {
      priced += found.row_price[row].si + found.column_price[row].si;
      for (std::size_t v = 0; v < size; ++v)
        CHECK(found.row_price[row].si + found.column_price[v].si <= cost[row * size + v].si + 1e-9);
    }
    CHECK(priced == doctest::Approx(least));
  }
}
