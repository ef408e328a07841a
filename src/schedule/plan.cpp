#include "schedule/plan.hpp"

#include <algorithm>
#include <cassert>
#include <tuple>

#include "schedule/exact_plan.hpp"
#include "schedule/floors.hpp"
#include "schedule/improve_plan.hpp"
#include "schedule/plan_reasons.hpp"
#include "schedule/starts.hpp"
#include "schedule/station_orders.hpp"

namespace seambook {
namespace {

struct Found {
  TaskList list;
  Levels levels, floor;
  bool proved = false;
};

void keep_better(Found& found, ShopNet& net, TaskList list) {
  const Levels levels = levels_of(net, list);
  if (!found.list.empty() && found.levels <= levels) return;
  found.list = std::move(list), found.levels = levels;
}

/// The floor under all plans, each level for plans that leave only impossible tasks undone.
Levels floor_of(const ShopProblem& problem, const ShopNet& net, const std::vector<bool>& possible,
                std::int64_t change) {
  Levels floor = floor_from(net, nothing_placed(net), Finishes(net.tasks.size(), never_done), 0);
  floor.late = std::max(floor.late, lateness_floor(problem, net, possible));
  floor.change = std::max(floor.change, change);
  floor.loads = std::max(floor.loads, loads_floor(problem, possible));
  return floor;
}

/// What is still open is sought by all lists where there are few, else by moving tasks about.
void search(ShopNet& net, const PlanBudget& budget, Found& found) {
  found.proved = found.levels <= found.floor;
  if (found.proved) return;
  const ExactPlan exact = best_plan(net, found.levels, found.floor, budget.states);
  if (exact.list) keep_better(found, net, *exact.list);
  found.proved = exact.proved;
  if (found.proved) return;
  const Improved better = improved_list(net, found.list, found.floor, {budget.moves, budget.seconds, 1});
  if (better.levels < found.levels) found.list = better.list, found.levels = better.levels;
  found.proved = found.levels <= found.floor;
}

std::vector<PlanLevel> judged(const Found& found, bool replanned) {
  const Levels &value = found.levels, &floor = found.floor;
  const std::tuple<const char*, std::int64_t, std::int64_t, bool> levels[] = {
      {"cannot be done", value.unplaced, floor.unplaced, true}, {"late", value.late, floor.late, true},
      {"moved", value.moved, floor.moved, replanned},           {"set-up", value.change, floor.change, true},
      {"fixture loads", value.loads, floor.loads, true},        {"finish", value.finish, floor.finish, true}};
  std::vector<PlanLevel> out;
  for (const auto& [name, is, least, counts] : levels) {
    if (!counts) continue;
    // Behind tasks that cannot be done the floors of the other levels say nothing.
    const std::int64_t bound = found.proved ? is : std::min(is, least);
    out.push_back({name, is, bound, bound == is});
    if (bound != is) break;
  }
  return out;
}

void compare(ShopNet& net, const std::vector<std::uint32_t>& least_set_up, Plan& plan) {
  plan.others.push_back({"order in the files", levels_of(net, list_by(net, Rule::input_order))});
  plan.others.push_back({"due-date order", levels_of(net, list_by(net, Rule::due_date))});
  if (!least_set_up.empty())
    plan.others.push_back({"least set-up, whatever is late", levels_of(net, list_of(net, least_set_up))});
}

}  // namespace

Plan plan(const ShopProblem& problem, const PlanBudget& budget) {
  ShopNet net = shop_net(problem);
  const std::vector<bool> possible = possible_tasks(net);
  const StationOrders by_station = station_orders(problem, possible, budget.stations);
  Found found;
  found.floor = floor_of(problem, net, possible, by_station.floor);
  for (const Rule rule : {Rule::input_order, Rule::due_date, Rule::start, Rule::set_up})
    keep_better(found, net, list_by(net, rule));
  if (!problem.earlier.empty()) keep_better(found, net, list_as_before(net));
  if (!by_station.order.empty()) keep_better(found, net, list_of(net, by_station.order));
  if (!problem.tasks.empty()) search(net, budget, found);
  Plan out = timed_plan(problem, found.list);
  out.judged = judged(found, !problem.earlier.empty());
  compare(net, by_station.order, out);
  give_plan_reasons(problem, out);
  assert(plan_violations(problem, out).empty());
  return out;
}

}  // namespace seambook
