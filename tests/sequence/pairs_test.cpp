// Orders by pairs against all permutations, and assignments likewise.
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>

#include "random_pairs.hpp"
#include "sequence/assignment.hpp"
#include "sequence/pair_descent.hpp"
#include "sequence/pair_layers.hpp"
#include "sequence/pair_prices.hpp"
#include "sequence/pair_search.hpp"

using namespace seambook;

TEST_CASE("orders by pairs cost the least of all permutations") {
  std::mt19937 random{5};
  for (int i = 0; i < 3000; ++i) {
    const PairProblem problem = random_pairs(random, 2 + below(random, 6), below(random, 60));
    CAPTURE(i);
    const PairNet net = pair_net(problem);
    const PairOrder first = cheapest_next(net);
    const double least = least_of_all(problem);
    const PairResult found = pair_search(net, first, {20'000, 2'000});
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

namespace {

PairResult searched(const PairProblem& problem, const SearchBudget& budget = {20'000, 2'000}) {
  const PairNet net = pair_net(problem);
  return pair_search(net, cheapest_next(net), budget);
}

double least_by_search(const PairProblem& problem) {
  const PairResult found = searched(problem);
  REQUIRE(found.proved);
  return cost_of(pair_net(problem), found.order).si;
}

/// The same problem with the nodes but the first numbered otherwise.
PairProblem renumbered(const PairProblem& problem, std::mt19937& random) {
  const std::size_t nodes = problem.nodes;
  std::vector<std::size_t> number(nodes);
  std::iota(number.begin(), number.end(), 0);
  std::shuffle(number.begin() + 1, number.end(), random);
  PairProblem other = problem;
  for (std::size_t u = 0; u < nodes; ++u) {
    if (!problem.ending.empty()) other.ending[number[u]] = problem.ending[u];
    for (std::size_t v = 0; v < nodes; ++v) other.cost[number[u] * nodes + number[v]] = problem.cost[u * nodes + v];
  }
  for (Edge& edge : other.precedence) edge = {number[edge.first], number[edge.second]};
  return other;
}

/// Stations of machines that serve a few places each: going on at one place costs nothing, so that followers close
/// into rings for nothing, the assignment's floor is zero, and states differ by little.
PairProblem few_places(std::mt19937& random, std::size_t nodes, std::size_t places) {
  PairProblem problem;
  problem.nodes = nodes;
  std::vector<std::size_t> place(nodes);
  for (std::size_t& at : place) at = below(random, places);
  std::vector<double> way(places * places);
  for (double& time : way) time = 3.0 * static_cast<double>(1 + below(random, 16));
  for (std::size_t u = 0; u < nodes; ++u)
    for (std::size_t v = 0; v < nodes; ++v)
      problem.cost.push_back(Time<>{place[u] == place[v] ? 0 : way[place[u] * places + place[v]]});
  for (std::size_t i = 0; i < nodes / 2; ++i) {
    const std::size_t u = 1 + below(random, nodes - 1), v = 1 + below(random, nodes - 1);
    if (u < v) problem.precedence.emplace_back(u, v);
  }
  return problem;
}

/// By states of what is done and what comes last, all of them and without any floor (Held and Karp 1962).
double least_by_states(const PairProblem& problem) {
  const std::size_t nodes = problem.nodes, sets = std::size_t{1} << nodes;
  std::vector<std::size_t> before(nodes);
  for (const auto& [u, v] : problem.precedence) before[v] |= std::size_t{1} << u;
  std::vector<double> least(sets * nodes, std::numeric_limits<double>::infinity());
  least[1 * nodes] = 0;
  for (std::size_t done = 1; done < sets; done += 2)
    for (std::size_t u = 0; u < nodes; ++u)
      for (std::size_t v = 1; v < nodes && least[done * nodes + u] < std::numeric_limits<double>::infinity(); ++v) {
        if ((done >> v & 1U) != 0 || (before[v] & ~done) != 0) continue;
        double& to = least[(done | std::size_t{1} << v) * nodes + v];
        to = std::min(to, least[done * nodes + u] + problem.cost[u * nodes + v].si);
      }
  return *std::min_element(least.end() - static_cast<std::ptrdiff_t>(nodes), least.end());
}

}  // namespace

TEST_CASE("nothing is proved falsely where changes cost nothing and repeat") {
  std::mt19937 random{11};
  for (int i = 0; i < 150; ++i) {
    const PairProblem problem = few_places(random, 10 + below(random, 4), 2 + below(random, 5));
    CAPTURE(i);
    const double least = least_by_states(problem);
    CHECK(least_by_search(problem) == least);
    // Beams that drop states, and floors alone, must not say more than they know.
    const PairResult hasty = searched(problem, {20, 1});
    CHECK(hasty.bound.si <= least);
    if (hasty.proved) CHECK(cost_of(pair_net(problem), hasty.order).si == least);
  }
}

TEST_CASE("floors stay under the least, and no arc of a cheapest order is left out") {
  std::mt19937 random{12};
  for (int i = 0; i < 1000; ++i) {
    const PairProblem problem = i % 2 == 0 ? random_pairs(random, 4 + below(random, 4), below(random, 60))
                                           : few_places(random, 4 + below(random, 4), 3);
    CAPTURE(i);
    const PairNet net = pair_net(problem);
    const double least = least_of_all(problem);
    const NodePrices pairs = assignment_prices(net);
    const NodePrices trees = tree_prices(net, pairs, Time<>{least + 5}, 60);
    const Time<> grain = grain_of(net);
    for (const NodePrices& prices : {pairs, trees}) {
      CHECK(prices.together.si <= least + 1e-9);
      CHECK(up_to_grain(prices.together, grain).si <= least);
      const PairNet thinned = without_dear_arcs(net, prices, Time<>{least + 0.5});
      const LayersResult layers =
          layered_order(thinned, std::span(&prices, 1), Time<>{least + 0.5}, 1'000'000, 1'000'000);
      REQUIRE(layers.order);
      CHECK(layers.whole);
      CHECK(cost_of(net, *layers.order).si == least);
    }
  }
}

TEST_CASE("more precedence never makes the proved least cheaper") {
  std::mt19937 random{13};
  for (int i = 0; i < 150; ++i) {
    PairProblem problem = random_pairs(random, 9 + below(random, 5), 40);
    CAPTURE(i);
    std::vector<Edge> later;
    std::swap(later, problem.precedence);
    std::shuffle(later.begin(), later.end(), random);
    double least = least_by_search(problem);
    for (std::size_t begin = 0; begin < later.size(); begin += 8) {
      for (std::size_t e = begin; e < std::min(begin + 8, later.size()); ++e) problem.precedence.push_back(later[e]);
      const double now = least_by_search(problem);
      CHECK(least <= now);
      least = now;
    }
  }
}

TEST_CASE("another numbering of the nodes changes nothing about the proved least") {
  std::mt19937 random{14};
  for (int i = 0; i < 150; ++i) {
    const PairProblem problem = i % 2 == 0 ? random_pairs(random, 8 + below(random, 8), 10 + below(random, 40))
                                           : few_places(random, 8 + below(random, 8), 4);
    CAPTURE(i);
    CHECK(least_by_search(renumbered(problem, random)) == least_by_search(problem));
  }
}

TEST_CASE("costs share a grain only where all are whole") {
  const auto grain = [](std::vector<double> costs) {
    PairProblem problem{2, {}, {}, {}};
    for (const double cost : costs) problem.cost.push_back(Time<>{cost});
    return grain_of(pair_net(problem)).si;
  };
  CHECK(grain({0, 60, 0, 0}) == 60);
  CHECK(grain({0, 0.5, 0, 0}) == 0);
  CHECK(grain({0, 0, 0, 0}) == 0);
  CHECK(up_to_grain(Time<>{61}, Time<>{60}).si == 120);
  CHECK(up_to_grain(Time<>{120.00000001}, Time<>{60}).si == 120);
  CHECK(up_to_grain(Time<>{61}, Time<>{}).si == 61);
}

TEST_CASE("descent keeps precedence and never ends above where it began") {
  std::mt19937 random{6};
  for (int i = 0; i < 60; ++i) {
    const PairProblem problem = random_pairs(random, 20 + below(random, 100), below(random, 12));
    CAPTURE(i);
    const PairNet net = pair_net(problem);
    const PairOrder first = cheapest_next(net);
    REQUIRE(allowed(problem, {first.begin(), first.end() - 1}));
    const PairOrder order = descended(net, first, Time<>{}, {300, Time<>{5}, Time<>{1}}, 1).best;
    CHECK(allowed(problem, {order.begin(), order.end() - 1}));
    CHECK(cost_of(net, order) <= cost_of(net, first));
    CHECK(cost_of(net, order).si == doctest::Approx(cost_in(problem, {order.begin(), order.end() - 1})));
    CHECK(order == descended(net, first, Time<>{}, {300, Time<>{5}, Time<>{1}}, 1).best);
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
