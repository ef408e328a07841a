#include "schedule/plan_reasons.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "schedule/instants.hpp"
#include "sequence/reasons.hpp"

namespace seambook {
namespace {

constexpr Seconds qualification_near = std::chrono::days(14);  // a later end puts nothing before other work

/// The tasks of one station in turn, as positions in Plan::tasks.
using Turn = std::vector<std::size_t>;

const ShopTask& task_at(const ShopProblem& problem, const Plan& plan, std::size_t k) {
  return problem.tasks[plan.tasks[k].task];
}

/// What the order at a station says about set-ups, from the reasons of an order by itself.
void give_set_up_reasons(const ShopProblem& problem, std::size_t station, const Turn& turn, Plan& plan) {
  SequenceProblem at{problem.model, problem.stations[station].start, {}, {}};
  Sequence order;
  std::vector<std::optional<std::size_t>> number(problem.tasks.size());
  for (std::size_t k = 0; k < turn.size(); ++k) {
    const ShopTask& task = task_at(problem, plan, turn[k]);
    number[plan.tasks[turn[k]].task] = k;
    at.operations.push_back({task.name, task.needs});
    order.steps.push_back({k, plan.tasks[turn[k]].change, {}});
  }
  for (const auto& [before, after] : problem.precedence)
    if (number[before] && number[after]) at.precedence.emplace_back(*number[before], *number[after]);
  give_reasons(at, order);
  for (std::size_t k = 0; k < turn.size(); ++k) plan.tasks[turn[k]].reason = order.steps[k].reason;
}

std::string waited_words(const ShopProblem& problem, const PlannedTask& task) {
  const std::string other = task.waited_for ? problem.tasks[*task.waited_for].name : "";
  switch (task.waited) {
    case Waited::person:
      return fmt::format("; {} comes from {}", problem.people[problem.tasks[task.task].ways[task.way].people[0]].stamp,
                         other);
    case Waited::earlier_work:
      return "; after " + other;
    case Waited::ready_date:
      return "; not ready or not wanted before " + clock_word(task.set_up);
    case Waited::nothing:
    case Waited::station:
    case Waited::working_time:
      return {};
  }
  return {};
}

/// The first work later at the station that could have been done now without this change, and is less urgent.
std::string urgency_words(const ShopProblem& problem, const Plan& plan, const Turn& turn, std::size_t k) {
  const PlannedTask& now = plan.tasks[turn[k]];
  if (k == 0 || now.change.tasks.empty()) return {};
  const ShopTask& task = problem.tasks[now.task];
  const Attributes& mounted = task_at(problem, plan, turn[k - 1]).needs;
  for (std::size_t later = k + 1; later < turn.size(); ++later) {
    const PlannedTask& other = plan.tasks[turn[later]];
    const ShopTask& left = problem.tasks[other.task];
    if (left.needs != mounted || left.order == task.order) continue;
    const ShopOrder &urgent = problem.orders[task.order], &calm = problem.orders[left.order];
    const Instant until = task.ways[now.way].last_finish;
    if (until < left.ways[other.way].last_finish && until < other.finish + qualification_near)
      return fmt::format("; before {}: the qualification ends {}", left.name, day_word(until - Seconds(1)));
    if (urgent.due < calm.due)
      return fmt::format("; before {}: {} is due {}", left.name, urgent.name, clock_word(urgent.due));
  }
  return {};
}

}  // namespace

void give_plan_reasons(const ShopProblem& problem, Plan& plan) {
  std::vector<Turn> turns(problem.stations.size());
  for (std::size_t k = 0; k < plan.tasks.size(); ++k) {
    const auto& station = task_at(problem, plan, k).ways[plan.tasks[k].way].station;
    if (station)
      turns[*station].push_back(k);
    else
      plan.tasks[k].reason = "away from the shop";
  }
  for (std::size_t s = 0; s < turns.size(); ++s) {
    give_set_up_reasons(problem, s, turns[s], plan);
    for (std::size_t k = 0; k < turns[s].size(); ++k) {
      PlannedTask& task = plan.tasks[turns[s][k]];
      task.reason += urgency_words(problem, plan, turns[s], k) + waited_words(problem, task);
    }
  }
}

}  // namespace seambook
