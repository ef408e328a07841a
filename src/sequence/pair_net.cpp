#include "sequence/pair_net.hpp"

namespace seambook {
namespace {

/// Everything that stands before each node, in an order that respects precedence.
void close(PairNet& net, const std::vector<Edge>& edges) {
  std::vector<std::vector<std::uint32_t>> direct(net.nodes);
  for (const auto& [u, v] : edges) direct[v].push_back(static_cast<std::uint32_t>(u));
  for (const std::size_t v : topological_order(net.nodes, edges)) {
    std::uint64_t* const own = net.before.data() + v * net.words;
    for (const std::uint32_t u : direct[v]) {
      const std::uint64_t* const of = net.before.data() + u * net.words;
      for (std::size_t w = 0; w < net.words; ++w) own[w] |= of[w];
      own[u / 64] |= std::uint64_t{1} << (u % 64);
    }
  }
}

/// Whether some node stands after u and before v.
bool parted(const PairNet& net, const std::vector<std::uint64_t>& after, std::size_t u, std::size_t v) {
  for (std::size_t w = 0; w < net.words; ++w)
    if ((after[u * net.words + w] & net.before[v * net.words + w]) != 0) return true;
  return false;
}

std::vector<std::uint64_t> all_after(const PairNet& net) {
  std::vector<std::uint64_t> after(net.nodes * net.words);
  for (std::size_t v = 0; v < net.nodes; ++v)
    for (std::size_t u = 0; u < net.nodes; ++u)
      if (net.must_precede(u, v)) after[u * net.words + v / 64] |= std::uint64_t{1} << (v % 64);
  return after;
}

}  // namespace

PairNet pair_net(const PairProblem& problem) {
  PairNet net;
  const std::size_t last = problem.nodes;
  net.nodes = last + 1;
  net.words = (net.nodes + 63) / 64;
  net.before.resize(net.nodes * net.words);
  net.follows.resize(net.nodes), net.leads.resize(net.nodes);
  std::vector<Edge> edges = problem.precedence;
  for (std::size_t v = 1; v < last; ++v) edges.emplace_back(0, v), edges.emplace_back(v, last);
  if (last == 1) edges.emplace_back(0, last);
  close(net, edges);
  const std::vector<std::uint64_t> after = all_after(net);
  net.cost.assign(net.nodes * net.nodes, never_next);
  for (std::size_t u = 0; u < net.nodes; ++u) {
    for (std::size_t v = 0; v < net.nodes; ++v) {
      if (u == v || net.must_precede(v, u) || parted(net, after, u, v)) continue;
      net.cost[u * net.nodes + v] = v < last                 ? problem.cost[u * problem.nodes + v]
                                    : problem.ending.empty() ? Time<>{}
                                                             : problem.ending[u];
      if (!net.must_precede(u, v)) continue;
      net.follows[u].push_back(static_cast<std::uint32_t>(v));
      net.leads[v].push_back(static_cast<std::uint32_t>(u));
    }
  }
  return net;
}

bool same_both_ways(const PairNet& net) {
  std::size_t same = 0, pairs = 0;
  for (std::size_t u = 0; u < net.nodes; ++u) {
    for (std::size_t v = u + 1; v < net.nodes; ++v) {
      const Time<> there = net.arc(u, v), back = net.arc(v, u);
      if (!(there < never_next) || !(back < never_next)) continue;
      ++pairs;
      same += there == back ? 1 : 0;
    }
  }
  return 2 * same > pairs;
}

Time<> cost_of(const PairNet& net, std::span<const std::uint32_t> order) {
  Time<> total{};
  for (std::size_t i = 0; i + 1 < order.size(); ++i) total = total + net.arc(order[i], order[i + 1]);
  return total;
}

}  // namespace seambook
