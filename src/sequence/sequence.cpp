#include "sequence/sequence.hpp"

#include <algorithm>
#include <cassert>

#include "sequence/exact.hpp"
#include "sequence/improve.hpp"
#include "sequence/pair_search.hpp"
#include "sequence/reasons.hpp"
#include "sequence/units.hpp"

namespace seambook {

namespace {

// Some moves go ahead, since a good order lets the exact search leave out more: at most half, few for little work.
constexpr std::size_t share_of_moves_ahead = 2, moves_ahead_per_unit = 200;

struct FoundOrder {
  Order order;  // of operations
  Time<> bound{};
  bool proved = false;
};

Order order_in_file(const SequenceProblem& problem) {
  Order order;
  for (const std::size_t o : topological_order(problem.operations.size(), problem.precedence))
    order.push_back(static_cast<std::uint32_t>(o));
  return order;
}

/// The units in the order in which their first operations stand; they are numbered so.
Order cheapest_start(MountedStates& mounted, const WorkNet& units) {
  Order greedy = cheapest_next_order(mounted, units);
  std::vector<Edge> edges;
  for (std::size_t u = 0; u < units.after.size(); ++u)
    for (const std::uint32_t next : units.after[u]) edges.emplace_back(u, next);
  Order as_in_file;
  for (const std::size_t u : topological_order(units.after.size(), edges))
    as_in_file.push_back(static_cast<std::uint32_t>(u));
  return change_total(mounted, units, greedy) < change_total(mounted, units, as_in_file) ? greedy : as_in_file;
}

/// Units that may stand for each other take their places in the order of the file.
Order twins_in_turn(const WorkNet& units, const Order& order) {
  std::vector<Order> twins(order.size());
  for (std::uint32_t u = 0; u < order.size(); ++u) twins[units.twin[u]].push_back(u);
  std::vector<std::size_t> placed(order.size());
  Order result;
  for (const std::uint32_t u : order) result.push_back(twins[units.twin[u]][placed[units.twin[u]]++]);
  return result;
}

/// The same by pairs, where those say all; else nothing.
std::optional<PairResult> order_by_pairs(MountedStates& mounted, const WorkNet& units, const Order& known,
                                         const SearchBudget& budget) {
  const auto pairs = pairs_of(mounted, units);
  if (!pairs) return std::nullopt;
  PairOrder order{0};
  for (const std::uint32_t unit : known) order.push_back(unit + 1);
  order.push_back(static_cast<std::uint32_t>(pairs->nodes));
  return pair_search(pair_net(*pairs), order, budget);
}

Order units_in(const PairOrder& order) {
  Order units;
  for (std::size_t p = 1; p + 1 < order.size(); ++p) units.push_back(order[p] - 1);
  return units;
}

/// What the search over states of what is mounted reads and may use.
struct StateSearch {
  const std::vector<AttributeGroup>& groups;
  MountedStates& mounted;
  const WorkNet& units;
  std::size_t moves = 0, states = 0;
};

/// A cheaper order of units than `order`, or that one; `found` learns the floor and whether it is proved.
Order order_by_states(const StateSearch& search, Floors& floors, Order order, FoundOrder& found) {
  const Time<> known = change_total(search.mounted, search.units, order);
  floors.chain = unit_chain(search.mounted, search.units, known);
  const auto closer = chain_to_come(floors.chain, search.mounted, search.units, nothing_done(search.units), 0);
  if (!closer || *closer <= found.bound) floors.chain = {};  // not closer here: not worth building for every state
  const ExactResult exact = cheapest_order(search.groups, floors, search.mounted, search.units, known, search.states);
  if (exact.order) order = *exact.order;
  found.bound = std::max(found.bound, exact.bound);
  found.proved = exact.proved;
  if (exact.proved) return order;
  return improved_order(search.mounted, search.units, order, found.bound, search.moves);
}

FoundOrder find_order(const SequenceProblem& problem, const SearchBudget& budget) {
  const WorkNet net = work_net(problem);
  MountedStates mounted = mounted_states(problem);
  const std::vector<AttributeGroup> groups = attribute_groups(problem.model, net);
  const Order in_file = order_in_file(problem);
  const Units units = units_of(net, groups, in_file);

  Floors floors{attribute_walks(problem, net), {}};
  const Time<> quick = walks_to_come(floors.walks, mounted.states[0], nothing_done(units.net));
  const std::size_t ahead = std::min(budget.moves / share_of_moves_ahead, moves_ahead_per_unit * units.members.size());
  Order order = improved_order(mounted, units.net, cheapest_start(mounted, units.net), quick, ahead);

  FoundOrder found{{}, quick, false};
  const bool prove = budget.states > 0;
  if (const auto pairs = prove ? order_by_pairs(mounted, units.net, order, budget) : std::nullopt) {
    const Order by_pairs = units_in(pairs->order);
    if (change_total(mounted, units.net, by_pairs) < change_total(mounted, units.net, order)) order = by_pairs;
    found.bound = std::max(quick, pairs->bound), found.proved = pairs->proved;
  }
  if (!prove)
    order = improved_order(mounted, units.net, order, quick, budget.moves - ahead);
  else if (!found.proved)
    order = order_by_states({groups, mounted, units.net, budget.moves - ahead, budget.states}, floors, order, found);
  // Another order replaces the file's own only when it is cheaper.
  const bool gained = change_total(mounted, units.net, order) < change_total(mounted, net, in_file);
  found.order = gained ? operations_of(units, twins_in_turn(units.net, order)) : in_file;
  return found;
}

}  // namespace

Sequence sequence(const SequenceProblem& problem, const SearchBudget& budget) {
  const FoundOrder found = find_order(problem, budget);
  const std::vector<std::size_t> order(found.order.begin(), found.order.end());
  assert(violations(problem, order).empty());
  Sequence result = time_order(problem, order);
  result.proved = found.proved || !(found.bound < result.change_total);
  result.bound = result.proved ? result.change_total : found.bound;
  give_reasons(problem, result);
  return result;
}

}  // namespace seambook
