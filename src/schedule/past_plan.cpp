#include "schedule/past_plan.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "schedule/instants.hpp"
#include "schedule/starts.hpp"

namespace seambook {
namespace {

std::map<std::string, std::size_t> tasks_by_name(const ShopProblem& problem) {
  std::map<std::string, std::size_t> numbers;
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) numbers[problem.tasks[t].name] = t;
  return numbers;
}

template <class T>
std::optional<std::size_t> called(const std::vector<T>& all, std::string T::*name, const std::string& word) {
  const auto at = std::find_if(all.begin(), all.end(), [&](const T& one) { return one.*name == word; });
  return at == all.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - all.begin()));
}

/// The way that a step takes; nothing when the task has none such.
std::optional<std::size_t> way_of(const ShopProblem& problem, std::size_t task, const PastStep& step) {
  const auto& ways = problem.tasks[task].ways;
  for (std::size_t w = 0; w < ways.size(); ++w) {
    if ((ways[w].station ? problem.stations[*ways[w].station].name : "") != step.station) continue;
    const bool same = std::equal(ways[w].people.begin(), ways[w].people.end(), step.people.begin(), step.people.end(),
                                 [&](std::size_t p, const std::string& s) { return problem.people[p].stamp == s; });
    if (same) return w;
  }
  return std::nullopt;
}

std::string who_and_where(const PastStep& step) {
  return fmt::format("{} at {}", step.people.empty() ? "nobody" : step.people.front(), step.station);
}

/// Set-ups follow from the order at each station; where a step does not say when its own begins, it may begin as soon
/// as station and people are free.
void add_set_ups(const ShopProblem& problem, const std::vector<bool>& told, Plan& plan) {
  std::vector<Attributes> mounted;
  for (const ShopStation& station : problem.stations) mounted.push_back(station.start);
  std::vector<Instant> station_free(problem.stations.size(), problem.start);
  std::vector<Instant> person_free(problem.people.size(), problem.start);
  for (PlannedTask& task : plan.tasks) {
    const Way& way = problem.tasks[task.task].ways[task.way];
    Instant free = std::max({problem.start, problem.tasks[task.task].ready, way.first_start});
    for (const std::size_t p : way.people) free = std::max(free, person_free[p]);
    for (const std::size_t p : way.people) person_free[p] = task.finish;
    if (!way.station) continue;
    free = std::max(free, station_free[*way.station]);
    station_free[*way.station] = task.finish;
    const Attributes& needs = problem.tasks[task.task].needs;
    task.change = change(problem.model, mounted[*way.station], needs);
    mounted[*way.station] = mounted_after(mounted[*way.station], needs);
    if (!told[task.task]) task.set_up = task.change.tasks.empty() ? task.start : std::min(free, task.start);
  }
}

}  // namespace

Plan plan_of_steps(const ShopWork& work, const PastPlan& past, std::vector<std::string>& wrong) {
  const ShopProblem& problem = work.problem;
  const auto numbers = tasks_by_name(problem);
  Plan plan;
  std::vector<bool> told(problem.tasks.size()), seen(problem.tasks.size());
  for (const PastStep& step : past.steps) {
    const auto at = numbers.find(step.operation);
    if (at == numbers.end()) {
      wrong.push_back(fmt::format("{} is no work of these jobs that may be done", step.operation));
      continue;
    }
    const auto way = way_of(problem, at->second, step);
    if (!way) {
      wrong.push_back(fmt::format("{} cannot be done by {}", step.operation, who_and_where(step)));
      continue;
    }
    if (seen[at->second]) wrong.push_back(step.operation + " stands in the plan twice");
    if (seen[at->second]) continue;
    seen[at->second] = true, told[at->second] = step.set_up.has_value();
    plan.tasks.push_back({at->second, *way, step.set_up.value_or(step.start), step.start, step.finish, {}, {}, {}, {}});
  }
  std::stable_sort(plan.tasks.begin(), plan.tasks.end(), [](const PlannedTask& a, const PlannedTask& b) {
    return std::tuple(a.start, a.finish) < std::tuple(b.start, b.finish);
  });
  add_set_ups(problem, told, plan);
  for (std::size_t t = 0; t < seen.size(); ++t)
    if (!seen[t]) plan.unplaced.push_back({t, "not in the plan"});
  plan.levels = checked_levels(problem, plan);
  return plan;
}

std::vector<std::optional<Earlier>> earlier_places(const ShopWork& work, const PastPlan& past) {
  const ShopProblem& problem = work.problem;
  const auto numbers = tasks_by_name(problem);
  std::vector<std::optional<Earlier>> out(problem.tasks.size());
  std::vector<const PastStep*> steps;
  for (const PastStep& step : past.steps) steps.push_back(&step);
  std::stable_sort(steps.begin(), steps.end(), [](auto* a, auto* b) { return a->start < b->start; });
  std::vector<std::optional<std::size_t>> last(problem.stations.size());
  for (const PastStep* step : steps) {
    const auto at = numbers.find(step->operation);
    const auto station = called(problem.stations, &ShopStation::name, step->station);
    if (at == numbers.end() || !station || step->people.empty()) continue;
    const auto person = called(problem.people, &ShopPerson::stamp, step->people.front());
    if (!person) continue;
    out[at->second] = Earlier{*station, *person, last[*station], step->start};
    last[*station] = at->second;
  }
  return out;
}

void as_planned(const PastPlan& past, Instant now, const RateBook& book, Day& day) {
  std::set<std::string> spoken;
  for (const DoneWork& done : day.done) spoken.insert(done.operation.name);
  for (const StartedWork& started : day.started) spoken.insert(started.operation.name);
  const auto moment = [](Instant t) {
    return Moment{date_of(t), std::chrono::floor<std::chrono::minutes>(t - midnight(date_of(t)))};
  };
  std::vector<PastStep> begun = past.before;
  for (const PastStep& step : past.steps)
    if (step.set_up.value_or(step.start) < now) begun.push_back(step);
  for (const PastStep& step : begun) {
    const auto station = called(book.stations, &Station::name, step.station);
    if ((!station && !step.station.empty()) || spoken.count(step.operation) > 0) continue;
    const auto welder = step.people.empty() ? std::nullopt : called(book.welders, &Welder::stamp, step.people.front());
    if (step.finish <= now)
      day.done.push_back({{step.operation, {}}, moment(step.start), moment(step.finish), station, welder});
    else
      day.started.push_back({{step.operation, {}}, moment(step.start), station, welder});
  }
}

std::optional<TaskList> list_of_names(const ShopProblem& problem, const std::vector<std::string>& names,
                                      std::vector<std::string>& wrong) {
  const auto numbers = tasks_by_name(problem);
  std::vector<std::optional<std::size_t>> position(problem.tasks.size());
  std::vector<std::uint32_t> order;
  for (const std::string& name : names) {
    const auto at = numbers.find(name);
    if (at == numbers.end()) {
      wrong.push_back(name + " is no work of these jobs that may be done");
    } else if (position[at->second]) {
      wrong.push_back(name + " stands in the order twice");
    } else {
      position[at->second] = order.size();
      order.push_back(static_cast<std::uint32_t>(at->second));
    }
  }
  for (std::size_t t = 0; t < position.size(); ++t)
    if (!position[t]) wrong.push_back(problem.tasks[t].name + " is not in the order");
  for (const auto& [before, after] : problem.precedence)
    if (position[before] && position[after] && *position[before] > *position[after])
      wrong.push_back(
          fmt::format("{} stands before {}, which it follows", problem.tasks[after].name, problem.tasks[before].name));
  if (!wrong.empty()) return std::nullopt;
  ShopNet net = shop_net(problem);
  return list_of(net, order);
}

std::vector<Moved> moved_tasks(const ShopWork& work, const Plan& plan) {
  const ShopProblem& problem = work.problem;
  std::vector<Moved> out;
  if (problem.earlier.empty()) return out;
  std::vector<std::optional<std::size_t>> last(problem.stations.size());
  const auto words = [&](std::size_t station, std::size_t person, Instant start) {
    return fmt::format("{} {} {}", problem.stations[station].name, problem.people[person].stamp, clock_word(start));
  };
  for (const PlannedTask& task : plan.tasks) {
    const Way& way = problem.tasks[task.task].ways[task.way];
    if (!way.station || way.people.empty()) continue;
    const auto after = std::exchange(last[*way.station], task.task);
    const auto& was = problem.earlier[task.task];
    if (!was || (was->station == *way.station && was->person == way.people.front() && was->after == after)) continue;
    out.push_back({task.task, words(was->station, was->person, was->start),
                   words(*way.station, way.people.front(), task.start), task.reason});
  }
  return out;
}

}  // namespace seambook
