// The rules of a plan, written apart from the search: from the problem and the instants alone.
#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "schedule/instants.hpp"
#include "schedule/plan.hpp"
#include "schedule/set_up_table.hpp"

namespace seambook {
namespace {

struct Checking {
  const ShopProblem& problem;
  const Plan& plan;
  std::vector<std::optional<std::size_t>> step_of;  // per task, in Plan::tasks
  std::vector<std::string> found;

  template <class... Args>
  void say(fmt::format_string<Args...> words, Args&&... args) {
    found.push_back(fmt::format(words, std::forward<Args>(args)...));
  }
  const ShopTask& task(const PlannedTask& p) const { return problem.tasks[p.task]; }
  const Way& way(const PlannedTask& p) const { return problem.tasks[p.task].ways[p.way]; }
};

/// Time of a window inside [from, to).
Seconds inside(const Window& w, Instant from, Instant to) {
  return std::max(Seconds{}, std::min(w.to, to) - std::max(w.from, from));
}

/// Time in which everybody and everything is there, between two instants.
std::vector<Window> attended(const Checking& at, const Way& way, Instant from, Instant to) {
  std::vector<Window> open = {{from, to}};
  const auto cut = [&](const WorkingTime& time) {
    std::vector<Window> left;
    for (const Window& a : open)
      for (const Window& b : time)
        if (inside(b, a.from, a.to) > Seconds{}) left.push_back({std::max(a.from, b.from), std::min(a.to, b.to)});
    open = std::move(left);
  };
  cut(at.problem.stations[*way.station].open);
  for (const std::size_t person : way.people) cut(at.problem.people[person].present);
  return open;
}

Seconds sum_of(const std::vector<Window>& windows) {
  Seconds sum{};
  for (const Window& w : windows) sum += w.to - w.from;
  return sum;
}

void check_once(Checking& at) {
  at.step_of.resize(at.problem.tasks.size());
  std::vector<int> seen(at.problem.tasks.size());
  for (std::size_t k = 0; k < at.plan.tasks.size(); ++k) {
    at.step_of[at.plan.tasks[k].task] = k;
    ++seen[at.plan.tasks[k].task];
  }
  for (const UnplacedTask& unplaced : at.plan.unplaced) ++seen[unplaced.task];
  for (std::size_t t = 0; t < seen.size(); ++t)
    if (seen[t] != 1) at.say("{} stands in the plan {} times", at.problem.tasks[t].name, seen[t]);
}

void check_times(Checking& at, const PlannedTask& p) {
  const std::string& name = at.task(p).name;
  const Way& way = at.way(p);
  if (p.set_up > p.start || p.start > p.finish) at.say("{} ends before it begins", name);
  if (p.set_up < std::max({at.problem.start, at.task(p).ready, way.first_start}))
    at.say("{} begins {}, before it may", name, clock_word(p.set_up));
  if (p.finish > way.last_finish) at.say("{} ends {}, after its last day", name, clock_word(p.finish));
  if (!way.station) {
    if (p.finish - p.start < way.time) at.say("{} is away for too short a time", name);
    return;
  }
  const Seconds change = whole_seconds(p.change.duration);
  if (sum_of(attended(at, way, p.set_up, p.start)) < change) at.say("{} has too little time for its set-up", name);
  const std::vector<Window> work = attended(at, way, p.start, p.finish);
  if (sum_of(work) < way.time) at.say("{} has too little time for its work", name);
  Seconds done{};
  for (std::size_t k = 0; k + 1 < work.size(); ++k) {
    done += work[k].to - work[k].from;
    if (done < at.task(p).held && work[k + 1].from - work[k].to > at.problem.longest_pause)
      at.say("{} is left at {} before it has come to a safe stop", name, clock_word(work[k].to));
  }
}

void check_precedence(Checking& at) {
  for (const auto& [before, after] : at.problem.precedence) {
    if (!at.step_of[after]) continue;
    const PlannedTask& later = at.plan.tasks[*at.step_of[after]];
    if (!at.step_of[before]) {
      at.say("{} is done though {} is not", at.problem.tasks[after].name, at.problem.tasks[before].name);
    } else if (at.plan.tasks[*at.step_of[before]].finish + at.problem.tasks[before].rest > later.set_up) {
      at.say("{} begins before {} is done and has rested", at.problem.tasks[after].name, at.problem.tasks[before].name);
    }
  }
}

/// One thing at a time: at a station, by a person.
void check_apart(Checking& at, std::vector<const PlannedTask*> steps, const std::string& where) {
  std::sort(steps.begin(), steps.end(), [](const PlannedTask* a, const PlannedTask* b) {
    return std::tuple(a->set_up, a->finish) < std::tuple(b->set_up, b->finish);
  });
  for (std::size_t k = 1; k < steps.size(); ++k)
    if (steps[k]->set_up < steps[k - 1]->finish)
      at.say("{} and {} at the same time: {}", at.task(*steps[k - 1]).name, at.task(*steps[k]).name, where);
}

bool calls_never(const Checking& at, const ShopStation& station, const Attributes& mounted, const Attributes& needs) {
  SetupModel never = at.problem.model;
  never.tasks = station.never;
  return !change(never, mounted, needs).tasks.empty();
}

void check_set_ups(Checking& at, std::size_t station) {
  Attributes mounted = at.problem.stations[station].start;
  for (const PlannedTask& p : at.plan.tasks) {
    if (at.way(p).station != station) continue;
    const Change needed = change(at.problem.model, mounted, at.task(p).needs);
    if (needed.duration != p.change.duration) at.say("{} does not have the set-up that it needs", at.task(p).name);
    if (calls_never(at, at.problem.stations[station], mounted, at.task(p).needs))
      at.say("{} calls a change that {} never makes", at.task(p).name, at.problem.stations[station].name);
    mounted = mounted_after(mounted, at.task(p).needs);
  }
}

/// Set-ups to the state that must stand mounted at the end.
void add_end_states(const ShopProblem& problem, const Plan& plan, Levels& levels) {
  for (std::size_t s = 0; s < problem.stations.size(); ++s) {
    const ShopStation& station = problem.stations[s];
    Attributes mounted = station.start;
    bool used = false;
    for (const PlannedTask& p : plan.tasks) {
      if (problem.tasks[p.task].ways[p.way].station != s) continue;
      mounted = mounted_after(mounted, problem.tasks[p.task].needs);
      used = true;
    }
    if (!used || !station.end) continue;
    const Change last = change(problem.model, mounted, *station.end);
    levels.change += whole_seconds(last.duration).count();
    levels.loads += problem.load_attribute
                        ? std::count(last.attributes.begin(), last.attributes.end(), *problem.load_attribute)
                        : 0;
  }
}

std::int64_t moved_tasks(const ShopProblem& problem, const Plan& plan) {
  std::int64_t moved = 0;
  std::vector<std::optional<std::size_t>> last(problem.stations.size());
  for (const PlannedTask& p : plan.tasks) {
    const Way& way = problem.tasks[p.task].ways[p.way];
    if (!way.station) continue;
    if (const auto& was = problem.earlier[p.task]) {
      const bool other_person = !way.people.empty() && way.people.front() != was->person;
      if (was->station != *way.station || other_person || was->after != last[*way.station]) ++moved;
    }
    last[*way.station] = p.task;
  }
  return moved;
}

}  // namespace

Levels checked_levels(const ShopProblem& problem, const Plan& plan) {
  Levels levels;
  levels.unplaced = static_cast<std::int64_t>(plan.unplaced.size());
  std::vector<Instant> finish(problem.orders.size(), Instant::min());
  for (const PlannedTask& p : plan.tasks) {
    finish[problem.tasks[p.task].order] = std::max(finish[problem.tasks[p.task].order], p.finish);
    levels.finish = std::max(levels.finish, (p.finish - problem.start).count());
    levels.change += whole_seconds(p.change.duration).count();
    for (const std::size_t a : p.change.attributes) levels.loads += problem.load_attribute == a ? 1 : 0;
  }
  for (std::size_t o = 0; o < finish.size(); ++o) {
    const ShopOrder& order = problem.orders[o];
    if (order.due < Instant::max() - problem.tolerance && finish[o] > order.due + problem.tolerance)
      levels.late += (finish[o] - order.due - problem.tolerance).count() * order.weight;
  }
  add_end_states(problem, plan, levels);
  if (!problem.earlier.empty()) levels.moved = moved_tasks(problem, plan);
  return levels;
}

std::vector<std::string> plan_violations(const ShopProblem& problem, const Plan& plan) {
  Checking at{problem, plan, {}, {}};
  check_once(at);
  if (!at.found.empty()) return at.found;
  for (const PlannedTask& p : plan.tasks) check_times(at, p);
  check_precedence(at);
  for (std::size_t s = 0; s < problem.stations.size(); ++s) {
    std::vector<const PlannedTask*> steps;
    for (const PlannedTask& p : plan.tasks)
      if (at.way(p).station == s) steps.push_back(&p);
    check_apart(at, steps, problem.stations[s].name);
    check_set_ups(at, s);
  }
  for (std::size_t w = 0; w < problem.people.size(); ++w) {
    std::vector<const PlannedTask*> steps;
    for (const PlannedTask& p : plan.tasks)
      if (std::count(at.way(p).people.begin(), at.way(p).people.end(), w) > 0) steps.push_back(&p);
    check_apart(at, steps, problem.people[w].stamp);
  }
  return at.found;
}

}  // namespace seambook
