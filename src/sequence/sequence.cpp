#include "sequence/sequence.hpp"

#include <algorithm>
#include <cassert>

#include "sequence/exact.hpp"
#include "sequence/improve.hpp"
#include "sequence/reasons.hpp"

namespace seambook {

namespace {

// Some moves go ahead, since a good order lets the exact search leave out more: at most a tenth, few for little work.
constexpr std::size_t share_of_moves_ahead = 10, moves_ahead_per_operation = 20;

struct FoundOrder {
  Order order;
  Time<> bound{};
  bool proved = false;
};

Order order_in_file(const SequenceProblem& problem) {
  Order order;
  for (const std::size_t o : topological_order(problem.operations.size(), problem.precedence))
    order.push_back(static_cast<std::uint32_t>(o));
  return order;
}

/// An order replaces another only when it is cheaper, so that the file's own order stands when nothing is gained.
FoundOrder find_order(const SequenceProblem& problem, const SearchBudget& budget) {
  const WorkNet net = work_net(problem);
  MountedStates mounted = mounted_states(problem);
  const std::vector<AttributeGroup> groups = attribute_groups(problem.model, net);
  const Floors below = floors(problem, net);
  FoundOrder found{order_in_file(problem), least_to_come(below, mounted, net, nothing_done(net), 0, true), false};

  const Order greedy = cheapest_next_order(mounted, net);
  if (change_total(mounted, net, greedy) < change_total(mounted, net, found.order)) found.order = greedy;
  const std::size_t ahead =
      std::min(budget.moves / share_of_moves_ahead, moves_ahead_per_operation * problem.operations.size());
  found.order = improved_order(mounted, net, found.order, found.bound, ahead);

  const Time<> known = change_total(mounted, net, found.order);
  const ExactResult exact = cheapest_order(groups, below, mounted, net, known, budget.states);
  if (exact.order) found.order = *exact.order;
  found.bound = std::max(found.bound, exact.bound);
  found.proved = exact.proved;
  if (!found.proved) found.order = improved_order(mounted, net, found.order, found.bound, budget.moves - ahead);
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
