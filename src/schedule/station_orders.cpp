#include "schedule/station_orders.hpp"

#include <algorithm>
#include <cmath>

#include "schedule/floors.hpp"
#include "sequence/bound.hpp"
#include "sequence/edges.hpp"

namespace seambook {
namespace {

/// The only station of a task; nothing when it has none, or a choice.
std::optional<std::size_t> only_station(const ShopTask& task) {
  if (task.ways.empty()) return std::nullopt;
  const auto same = [&](const Way& way) { return way.station == task.ways.front().station; };
  return std::all_of(task.ways.begin(), task.ways.end(), same) ? task.ways.front().station : std::nullopt;
}

struct AtStation {
  SequenceProblem problem;
  std::vector<std::size_t> tasks;  // that can go nowhere else; parallel to the problem's operations
  std::vector<Operation> perhaps;  // other work that may come here
};

AtStation work_at(const ShopProblem& problem, std::size_t station, const std::vector<bool>& possible,
                  const std::vector<std::vector<std::size_t>>& followers) {
  AtStation at;
  at.problem.model = problem.model, at.problem.start = problem.stations[station].start;
  std::vector<std::optional<std::size_t>> number(problem.tasks.size());
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    const ShopTask& task = problem.tasks[t];
    const auto here = [&](const Way& way) { return way.station == station; };
    if (!possible[t] || std::none_of(task.ways.begin(), task.ways.end(), here)) continue;
    if (only_station(task) != station) {
      at.perhaps.push_back({task.name, task.needs});
      continue;
    }
    number[t] = at.tasks.size();
    at.tasks.push_back(t);
    at.problem.operations.push_back({task.name, task.needs});
  }
  at.problem.precedence = edges_among(followers, number);
  return at;
}

/// Other work in between may make set-ups cheaper than those of this work alone. Each attribute's walk over its values,
/// by way of any other that may come here, stays under that too.
double shared_floor(const AtStation& at) {
  SequenceProblem all = at.problem;
  all.operations.insert(all.operations.end(), at.perhaps.begin(), at.perhaps.end());
  const WorkNet net = work_net(all);
  Progress progress = nothing_done(net);
  for (std::size_t o = at.tasks.size(); o < all.operations.size(); ++o) {
    --progress.left[net.need_of[o]];
    --progress.remaining;
  }
  Attributes start = all.start;
  start.slots.resize(all.model.attributes.size());
  return walks_to_come(attribute_walks(all, net), start, progress).si;
}

/// Whether all other work asks only for what each piece of this station's own work asks for too: wherever it comes in
/// between, it finds everything mounted and leaves it so, and makes nothing cheaper.
bool changes_nothing(const AtStation& at) {
  return std::all_of(at.perhaps.begin(), at.perhaps.end(), [&](const Operation& other) {
    return std::all_of(at.problem.operations.begin(), at.problem.operations.end(), [&](const Operation& own) {
      for (std::size_t a = 0; a < other.needs.slots.size(); ++a)
        if (other.needs.slots[a] && (a >= own.needs.slots.size() || other.needs.slots[a] != own.needs.slots[a]))
          return false;
      return true;
    });
  });
}

}  // namespace

StationOrders station_orders(const ShopProblem& problem, const std::vector<bool>& possible,
                             const SearchBudget& budget) {
  std::vector<std::vector<std::size_t>> followers(problem.tasks.size());
  for (const auto& [before, after] : problem.precedence) followers[before].push_back(after);
  StationOrders out;
  std::vector<Edge> edges = problem.precedence;
  bool fixed = true;
  for (std::size_t s = 0; s < problem.stations.size(); ++s) {
    const AtStation at = work_at(problem, s, possible, followers);
    fixed = fixed && at.perhaps.empty();
    if (at.tasks.empty()) continue;
    if (!changes_nothing(at)) {
      out.floor += static_cast<std::int64_t>(std::floor(shared_floor(at)));
      continue;
    }
    const Sequence found = sequence(at.problem, budget);
    out.floor += static_cast<std::int64_t>(std::ceil(found.bound.si - 1e-6));
    for (std::size_t k = 1; k < found.steps.size(); ++k)
      edges.emplace_back(at.tasks[found.steps[k - 1].operation], at.tasks[found.steps[k].operation]);
  }
  out.floor = std::max(out.floor, arrivals_floor(problem, possible));
  if (!fixed || !find_cycle(problem.tasks.size(), edges).empty()) return out;
  for (const std::size_t t : topological_order(problem.tasks.size(), edges))
    out.order.push_back(static_cast<std::uint32_t>(t));
  return out;
}

}  // namespace seambook
