// What is best in several orders together, against all permutations of their arcs.
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>
#include <set>

#include "random_pairs.hpp"
#include "sequence/pair_union.hpp"

using namespace seambook;

namespace {

/// A permutation that respects precedence, node 0 first and the end last.
PairOrder random_order(const PairProblem& problem, std::mt19937& random) {
  PairOrder order(problem.nodes + 1);
  std::iota(order.begin(), order.end(), 0);
  do std::shuffle(order.begin() + 1, order.end() - 1, random);
  while (!allowed(problem, {order.begin(), order.end() - 1}));
  return order;
}

/// Of all permutations that respect precedence and use no other arcs.
double least_of_arcs(const PairProblem& problem, const std::vector<PairOrder>& orders) {
  std::set<std::pair<std::uint32_t, std::uint32_t>> arcs;
  for (const PairOrder& order : orders)
    for (std::size_t p = 0; p + 1 < order.size(); ++p) arcs.emplace(order[p], order[p + 1]);
  PairOrder order = orders.front();
  std::sort(order.begin() + 1, order.end() - 1);
  double least = std::numeric_limits<double>::infinity();
  do {
    bool uses = allowed(problem, {order.begin(), order.end() - 1});
    for (std::size_t p = 0; p + 1 < order.size() && uses; ++p) uses = arcs.contains({order[p], order[p + 1]});
    if (uses) least = std::min(least, cost_in(problem, {order.begin(), order.end() - 1}));
  } while (std::next_permutation(order.begin() + 1, order.end() - 1));
  return least;
}

}  // namespace

TEST_CASE("orders united cost the least of all permutations of their arcs") {
  std::mt19937 random{21};
  std::size_t cheaper = 0;
  for (int i = 0; i < 300; ++i) {
    const PairProblem problem = random_pairs(random, 4 + below(random, 5), below(random, 20));
    const PairNet net = pair_net(problem);
    std::vector<PairOrder> orders;
    for (std::size_t k = 0; k < 4; ++k) orders.push_back(random_order(problem, random));
    Time<> limit{std::numeric_limits<double>::infinity()};
    for (const PairOrder& order : orders) limit = std::min(limit, cost_of(net, order));
    const double least = least_of_arcs(problem, orders);
    CAPTURE(i);
    CHECK_FALSE(united_order(net, orders, Time<>{least}, 100'000));
    const auto united = united_order(net, orders, limit, 100'000);
    REQUIRE(united.has_value() == (least < limit.si));
    if (!united) continue;
    ++cheaper;
    CHECK(allowed(problem, {united->begin(), united->end() - 1}));
    CHECK(cost_of(net, *united).si == least);
    CHECK_FALSE(united_order(net, orders, limit, 0));
  }
  CHECK(cheaper > 50);
}
