#include "schedule/fixed_stations.hpp"

#include <algorithm>

#include "schedule/station_orders.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_proved = 120;  // tasks

bool can_be_at(const ShopTask& task, std::size_t station) {
  return std::any_of(task.ways.begin(), task.ways.end(), [&](const Way& way) { return way.station == station; });
}

}  // namespace

StationOfTask stations_by_order(const ShopProblem& problem) {
  std::vector<std::vector<Seconds>> work(problem.orders.size(), std::vector<Seconds>(problem.stations.size()));
  for (const ShopTask& task : problem.tasks)
    for (std::size_t s = 0; s < problem.stations.size(); ++s)
      if (can_be_at(task, s)) work[task.order][s] += std::max(Seconds(1), task.ways.front().time);
  StationOfTask stations(problem.tasks.size());
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    const ShopTask& task = problem.tasks[t];
    for (std::size_t s = 0; s < problem.stations.size(); ++s) {
      if (!can_be_at(task, s)) continue;
      if (!stations[t] || work[task.order][s] > work[task.order][*stations[t]]) stations[t] = s;
    }
  }
  return stations;
}

StationOfTask stations_of(const ShopProblem& problem, const TaskList& list) {
  StationOfTask stations(problem.tasks.size());
  for (const Listed& at : list)
    if (at.way < problem.tasks[at.task].ways.size()) stations[at.task] = problem.tasks[at.task].ways[at.way].station;
  return stations;
}

TaskList list_with_stations(const ShopProblem& problem, const StationOfTask& stations,
                            const std::vector<bool>& possible, const SearchBudget& budget) {
  ShopProblem fixed = problem;
  std::vector<std::vector<std::size_t>> kept(problem.tasks.size());  // ways, by their numbers in the problem
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    fixed.tasks[t].ways.clear();
    for (std::size_t w = 0; w < problem.tasks[t].ways.size(); ++w) {
      if (stations[t] && problem.tasks[t].ways[w].station != stations[t]) continue;
      fixed.tasks[t].ways.push_back(problem.tasks[t].ways[w]);
      kept[t].push_back(w);
    }
  }
  // Orders are wanted, not bounds: those of long ones take longer than all the rest of the search.
  const SearchBudget quick{problem.tasks.size() > most_proved ? 0 : budget.states, budget.moves};
  const StationOrders orders = station_orders(fixed, possible, quick);
  if (orders.order.empty()) return {};
  ShopNet net = shop_net(fixed);
  TaskList list = list_of(net, orders.order);
  for (Listed& at : list)
    if (at.way < kept[at.task].size()) at.way = kept[at.task][at.way];
  return list;
}

}  // namespace seambook
