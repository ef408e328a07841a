#include "schedule/plan.hpp"

#include <algorithm>
#include <cassert>
#include <ctime>
#include <tuple>

#include "schedule/earliest_end.hpp"
#include "schedule/exact_plan.hpp"
#include "schedule/fixed_stations.hpp"
#include "schedule/floors.hpp"
#include "schedule/improve_plan.hpp"
#include "schedule/order_starts.hpp"
#include "schedule/plan_reasons.hpp"
#include "schedule/starts.hpp"
#include "schedule/station_orders.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_exact_tasks = 16;
constexpr std::size_t most_improved = 3;  // starts
constexpr std::size_t rounds = 3;
constexpr double share_of_orders = 0.5;  // of the budget, where there are whole ones
constexpr double least_seconds = 1e-3;   // 0 would mean that moves are counted

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
  floor.late = std::max({floor.late, lateness_floor(problem, net, possible), orders_floor(problem, net, possible)});
  floor.change = std::max(floor.change, change);
  floor.loads = std::max(floor.loads, loads_floor(problem, possible));
  floor.finish = std::max(floor.finish, finish_floor(problem, net, possible, floor.change));
  return floor;
}

/// What is looked at, and what is known of it.
struct Looked {
  const ShopProblem& problem;
  ShopNet& net;
  const std::vector<bool>& possible;
  const PlanBudget& budget;
  std::clock_t begun = 0;
};

/// A share of the placements, and of the seconds that are left.
PlanBudget part_of(const Looked& at, double of_placements, double of_seconds_left) {
  PlanBudget budget = at.budget;
  budget.placements = static_cast<std::size_t>(of_placements * static_cast<double>(budget.placements));
  if (budget.seconds <= 0) return budget;
  const double used = static_cast<double>(std::clock() - at.begun) / CLOCKS_PER_SEC;
  budget.seconds = std::max(least_seconds, of_seconds_left * (budget.seconds - used));
  return budget;
}

/// Lists to begin from, by rules and from the stations by themselves.
std::vector<TaskList> starts(const Looked& at, const std::vector<std::uint32_t>& by_station) {
  std::vector<TaskList> lists;
  if (!at.problem.earlier.empty()) lists.push_back(list_as_before(at.net));
  for (const Rule rule : {Rule::input_order, Rule::due_date, Rule::start, Rule::set_up})
    lists.push_back(list_by(at.net, rule));
  if (!by_station.empty()) lists.push_back(list_of(at.net, by_station));
  TaskList by_order = list_with_stations(at.problem, stations_by_order(at.problem), at.possible, at.budget.stations);
  if (!by_order.empty()) lists.push_back(std::move(by_order));
  return lists;
}

/// Moves tasks about from a list, then puts the stations that were chosen in order of least set-up, each by itself.
void improve(const Looked& at, const TaskList& from, const PlanBudget& budget, std::uint32_t seed, Found& found) {
  const std::size_t moves = budget.placements / at.problem.tasks.size();
  const Improved better = improved_list(at.net, from, found.floor, {moves, budget.seconds, seed, budget.stop});
  TaskList list = list_with_stations(at.problem, stations_of(at.problem, better.list), at.possible, at.budget.stations);
  if (better.levels < found.levels) found.list = better.list, found.levels = better.levels;
  if (!list.empty()) keep_better(found, at.net, std::move(list));
}

/// What is still open is sought by all lists where there are few, else by whole orders, and by improving the best
/// starts one by one, then the best of all, each for as long.
void search(const Looked& at, std::vector<TaskList> lists, Found& found) {
  const auto done = [&] {
    found.proved = found.proved || found.levels <= found.floor;
    return found.proved || is_stopped(at.budget);
  };
  if (!done()) seek_earliest_end(at.net, found.list, found.levels, found.floor);
  if (done()) return;
  if (at.problem.tasks.size() <= most_exact_tasks) {
    const ExactPlan exact = best_plan(at.net, found.levels, found.floor, at.budget.states);
    if (exact.list) keep_better(found, at.net, *exact.list);
    found.proved = exact.proved;
  }
  const bool whole_orders = !done() && has_whole_orders(at.net);
  if (whole_orders) {
    lists.push_back(list_by_whole_orders(at.net, found.floor, part_of(at, share_of_orders, share_of_orders)));
    keep_better(found, at.net, lists.back());
  }
  std::ranges::stable_sort(lists, {}, [&](const TaskList& list) { return levels_of(at.net, list); });
  lists.resize(std::min(lists.size(), most_improved));
  const std::size_t searches = lists.size() + rounds;
  const double share = (whole_orders ? 1 - share_of_orders : 1) / static_cast<double>(searches);
  for (std::size_t k = 0; k < searches && !done(); ++k) {
    const PlanBudget budget = part_of(at, share, 1.0 / static_cast<double>(searches - k));
    improve(at, k < lists.size() ? lists[k] : TaskList(found.list), budget, static_cast<std::uint32_t>(k + 1), found);
  }
  done();
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
  const std::clock_t begun = std::clock();
  ShopNet net = shop_net(problem);
  const std::vector<bool> possible = possible_tasks(net);
  const StationOrders by_station = station_orders(problem, possible, budget.stations);
  Found found;
  found.floor = floor_of(problem, net, possible, by_station.floor);
  const Looked at{problem, net, possible, budget, begun};
  std::vector<TaskList> lists = starts(at, by_station.order);
  for (const TaskList& list : lists) keep_better(found, net, list);
  if (!problem.tasks.empty()) search(at, std::move(lists), found);
  Plan out = timed_plan(problem, found.list);
  out.judged = judged(found, !problem.earlier.empty());
  compare(net, by_station.order, out);
  give_plan_reasons(problem, out);
  assert(plan_violations(problem, out).empty());
  return out;
}

}  // namespace seambook
