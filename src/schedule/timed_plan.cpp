#include <algorithm>
#include <tuple>

#include "schedule/plan.hpp"
#include "schedule/timeline.hpp"

namespace seambook {
namespace {

/// What the task waited for: of all that had to be there, the last.
std::pair<Waited, std::optional<std::size_t>> waited_for(const ShopNet& net, const Timeline& before,
                                                         const Finishes& finishes, const Listed& at,
                                                         const Placed& placed,
                                                         const std::vector<std::uint32_t>& last_of_person) {
  const NetTask& task = net.tasks[at.task];
  const NetWay& way = task.ways[at.way];
  Instant latest = net.start;
  std::pair<Waited, std::optional<std::size_t>> out{Waited::nothing, std::nullopt};
  const auto look = [&](Instant free, Waited waited, std::optional<std::size_t> by) {
    if (free <= latest) return;
    latest = free;
    out = {waited, by};
  };
  look(way.not_before, Waited::ready_date, std::nullopt);
  if (way.station != away && before.last[way.station] != away)
    look(before.station_free[way.station], Waited::station, before.last[way.station]);
  for (std::uint32_t p = 0; p < way.people; ++p) {
    const std::uint32_t person = net.people[way.first_person + p];
    if (last_of_person[person] != away) look(before.person_free[person], Waited::person, last_of_person[person]);
  }
  for (const std::uint32_t b : task.before) look(finishes[b] + net.tasks[b].rest, Waited::earlier_work, b);
  if (placed.set_up > latest) return {Waited::working_time, std::nullopt};
  return out;
}

std::string why_unplaced(const ShopProblem& problem, const ShopNet& net, const Finishes& finishes, std::size_t t) {
  if (problem.tasks[t].ways.empty()) return "no station and welder can do it";
  for (const std::uint32_t before : net.tasks[t].before)
    if (finishes[before] == never_done) return "waits for " + problem.tasks[before].name + ", which cannot be done";
  return "its station and welders have no time left before a qualification or the planned days end, or it calls a "
         "change "
         "that the station never makes";
}

}  // namespace

Plan timed_plan(const ShopProblem& problem, const TaskList& list) {
  ShopNet net = shop_net(problem);
  Timeline line = nothing_placed(net);
  Finishes finishes(net.tasks.size(), never_done);
  std::vector<std::uint32_t> last_of_person(net.persons, away);
  std::vector<Attributes> mounted;
  for (const ShopStation& station : problem.stations) mounted.push_back(station.start);
  Plan plan;
  for (const Listed& at : list) {
    const Timeline before = line;
    const Placed placed =
        place(net, line, finishes, static_cast<std::uint32_t>(at.task), static_cast<std::uint32_t>(at.way));
    if (!placed.done) continue;
    PlannedTask task{at.task, at.way, placed.set_up, placed.start, placed.finish, {}, {}, {}, {}};
    std::tie(task.waited, task.waited_for) = waited_for(net, before, finishes, at, placed, last_of_person);
    const Way& way = problem.tasks[at.task].ways[at.way];
    if (way.station) {
      task.change = change(problem.model, mounted[*way.station], problem.tasks[at.task].needs);
      mounted[*way.station] = mounted_after(mounted[*way.station], problem.tasks[at.task].needs);
    }
    for (const std::size_t person : way.people) last_of_person[person] = static_cast<std::uint32_t>(at.task);
    plan.tasks.push_back(std::move(task));
  }
  plan.levels = final_levels(net, line);
  plan.levels.unplaced += static_cast<std::int64_t>(problem.tasks.size() - list.size());
  for (std::size_t t = 0; t < problem.tasks.size(); ++t)
    if (finishes[t] == never_done) plan.unplaced.push_back({t, why_unplaced(problem, net, finishes, t)});
  for (std::size_t o = 0; o < problem.orders.size(); ++o)
    if (line.order_finish[o] > problem.orders[o].due)
      plan.late.push_back({o, line.order_finish[o], line.order_finish[o] - problem.orders[o].due});
  const auto place_of = [&](const PlannedTask& p) {
    const auto& station = problem.tasks[p.task].ways[p.way].station;
    return station.value_or(problem.stations.size());
  };
  std::stable_sort(plan.tasks.begin(), plan.tasks.end(), [&](const PlannedTask& a, const PlannedTask& b) {
    return std::tuple(a.set_up, place_of(a)) < std::tuple(b.set_up, place_of(b));
  });
  return plan;
}

}  // namespace seambook
