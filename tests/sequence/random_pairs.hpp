// Random problems by pairs, and what all permutations cost.
#pragma once

#include <algorithm>
#include <limits>
#include <numeric>
#include <random>

#include "sequence/pair_net.hpp"

namespace seambook {

inline std::size_t below(std::mt19937& random, std::size_t n) { return random() % n; }

/// Makes arcs cost the same both ways: then searches turn runs around.
inline void same_back(PairProblem& problem) {
  for (std::size_t u = 0; u < problem.nodes; ++u)
    for (std::size_t v = 0; v < u; ++v) problem.cost[u * problem.nodes + v] = problem.cost[v * problem.nodes + u];
}

/// Costs of a few sizes, so that many orders tie; precedence among a shuffled order of the nodes.
inline PairProblem random_pairs(std::mt19937& random, std::size_t nodes, std::size_t percent_precedence) {
  PairProblem problem;
  problem.nodes = nodes;
  problem.cost.resize(nodes * nodes);
  const std::size_t most = 2 + below(random, 40);
  for (Time<>& cost : problem.cost) cost = Time<>{static_cast<double>(below(random, most))};
  if (below(random, 3) == 0) same_back(problem);
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

inline bool allowed(const PairProblem& problem, const std::vector<std::uint32_t>& order) {
  std::vector<std::size_t> place(problem.nodes);
  for (std::size_t p = 0; p < order.size(); ++p) place[order[p]] = p;
  return std::ranges::all_of(problem.precedence,
                             [&](const Edge& edge) { return place[edge.first] < place[edge.second]; });
}

inline double cost_in(const PairProblem& problem, const std::vector<std::uint32_t>& order) {
  double cost = problem.ending.empty() ? 0 : problem.ending[order.back()].si;
  for (std::size_t p = 0; p + 1 < order.size(); ++p) cost += problem.cost[order[p] * problem.nodes + order[p + 1]].si;
  return cost;
}

inline double least_of_all(const PairProblem& problem) {
  std::vector<std::uint32_t> order(problem.nodes);
  std::iota(order.begin(), order.end(), 0);
  double least = std::numeric_limits<double>::infinity();
  do
    if (allowed(problem, order)) least = std::min(least, cost_in(problem, order));
  while (std::next_permutation(order.begin() + 1, order.end()));
  return least;
}

}  // namespace seambook
