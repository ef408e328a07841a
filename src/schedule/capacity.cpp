#include "schedule/capacity.hpp"

#include <algorithm>

#include "schedule/clock.hpp"

namespace seambook {
namespace {

/// The least time of a task's ways, where all of them use the station or person; else nothing.
Seconds forced_time(const ShopTask& task, bool person, std::size_t number) {
  Seconds least = Seconds::max();
  for (const Way& way : task.ways) {
    const bool here = person ? std::count(way.people.begin(), way.people.end(), number) > 0 : way.station == number;
    if (!here) return {};
    least = std::min(least, way.time);
  }
  return task.ways.empty() ? Seconds{} : least;
}

/// By when each task must be done: for its own order, and for work that follows it in another one.
std::vector<Instant> due_dates(const ShopProblem& problem) {
  std::vector<Instant> due;
  due.reserve(problem.tasks.size());
  for (const ShopTask& task : problem.tasks) due.push_back(problem.orders[task.order].due);
  std::vector<std::vector<std::size_t>> before(problem.tasks.size());
  for (const auto& [earlier, later] : problem.precedence) before[later].push_back(earlier);
  std::vector<std::size_t> order = topological_order(problem.tasks.size(), problem.precedence);
  std::reverse(order.begin(), order.end());
  for (const std::size_t t : order)
    for (const std::size_t b : before[t]) due[b] = std::min(due[b], due[t]);
  return due;
}

std::optional<Overload> worst_of(const ShopProblem& problem, const std::vector<Instant>& wanted, bool person,
                                 std::size_t number) {
  const WorkingTime& time = person ? problem.people[number].present : problem.stations[number].open;
  std::optional<Overload> worst;
  for (std::size_t o = 0; o < problem.orders.size(); ++o) {
    const Instant due = problem.orders[o].due;
    if (due == Instant::max()) continue;
    Overload at{person, number, due, o, {}, working_between(time, problem.start, due)};
    for (std::size_t t = 0; t < problem.tasks.size(); ++t)
      if (wanted[t] <= due) at.needed += forced_time(problem.tasks[t], person, number);
    if (at.needed <= at.open) continue;
    if (!worst || at.needed - at.open > worst->needed - worst->open) worst = at;
  }
  return worst;
}

}  // namespace

std::vector<Overload> overloads(const ShopProblem& problem) {
  std::vector<Overload> out;
  const std::vector<Instant> wanted = due_dates(problem);
  for (const bool person : {false, true}) {
    const std::size_t count = person ? problem.people.size() : problem.stations.size();
    for (std::size_t n = 0; n < count; ++n)
      if (const auto worst = worst_of(problem, wanted, person, n)) out.push_back(*worst);
  }
  return out;
}

}  // namespace seambook
