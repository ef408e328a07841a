// What a day file says of the work: done, under way, blocked, pinned. What is done or under way is no longer planned;
// its station stands as it left it, and what follows waits for it.
#include <fmt/format.h>

#include <algorithm>

#include "schedule/clock.hpp"
#include "schedule/instants.hpp"
#include "schedule/shop_draft.hpp"
#include "schedule/task_ways.hpp"

namespace seambook {
namespace {

std::optional<std::size_t> task_called(WorkDraft& draft, const NamedOperation& operation) {
  const auto& tasks = draft.work.problem.tasks;
  const auto at = std::find_if(tasks.begin(), tasks.end(), [&](const ShopTask& t) { return t.name == operation.name; });
  if (at != tasks.end()) return static_cast<std::size_t>(at - tasks.begin());
  draft.sound = false;
  draft.diagnostics.error(operation.place, fmt::format("there is no operation '{}'", operation.name),
                          "operations are named as the plan prints them: job/weldment/joint/step");
  return std::nullopt;
}

/// Takes a task out of the plan; what follows it waits until it is done and has rested.
void take_out(WorkDraft& draft, std::size_t task, Instant finish) {
  ShopProblem& problem = draft.work.problem;
  draft.gone[task] = true;
  for (const auto& [before, after] : problem.precedence)
    if (before == task)
      problem.tasks[after].ready = std::max(problem.tasks[after].ready, finish + problem.tasks[task].rest);
}

/// The station stands as its latest work left it.
struct LastWork {
  std::vector<Instant> at;
  void left(WorkDraft& draft, std::size_t station, std::size_t task, Instant finish) {
    at.resize(draft.work.problem.stations.size(), Instant::min());
    if (finish < at[station]) return;
    at[station] = finish;
    Attributes& start = draft.work.problem.stations[station].start;
    start = mounted_after(start, draft.work.problem.tasks[task].needs);
  }
};

void go_around(WorkDraft& draft, const StartedWork& started, std::size_t task, LastWork& last) {
  ShopProblem& problem = draft.work.problem;
  const ShopTask& of = problem.tasks[task];
  const auto way = std::find_if(of.ways.begin(), of.ways.end(), [&](const Way& w) {
    return w.station == started.station && (!started.welder || w.people.front() == *started.welder);
  });
  const Seconds time = way != of.ways.end() ? way->time : of.ways.empty() ? Seconds{} : of.ways.front().time;
  WorkingTime working = problem.stations[started.station].open;
  if (started.welder) working = both(working, problem.people[*started.welder].present);
  const Instant begin = instant_of(started.at);
  const Instant finish = std::max(draft.plan.start, done_by(working, begin, time));
  draft.work.begun.push_back({of.name, started.station, started.welder, begin, finish});
  const WorkingTime taken = {{begin, finish}};
  problem.stations[started.station].open = without(problem.stations[started.station].open, taken);
  if (started.welder) problem.people[*started.welder].present = without(problem.people[*started.welder].present, taken);
  last.left(draft, started.station, task, finish);
  take_out(draft, task, finish);
}

void block_named(WorkDraft& draft, const DayBlock& block) {
  if (block.operation) {
    if (const auto task = task_called(draft, *block.operation)) {
      const TaskRef& ref = draft.work.refs[*task];
      draft.kept_out[*task] = {ref.job, ref.weldment, ref.joint, false, block.why, {}};
    }
    return;
  }
  for (std::size_t t = 0; t < draft.work.refs.size(); ++t) {
    const TaskRef& ref = draft.work.refs[t];
    const bool meant = ref.job == block.job && (!block.weldment || ref.weldment == *block.weldment) &&
                       (!block.joint || ref.joint == block.joint);
    if (meant && !draft.kept_out[t]) draft.kept_out[t] = {ref.job, ref.weldment, ref.joint, false, block.why, {}};
  }
}

}  // namespace

void apply_day(WorkDraft& draft) {
  if (!draft.plan.day) return;
  const Day& day = *draft.plan.day;
  LastWork last;
  for (const DoneWork& done : day.done) {
    const auto task = task_called(draft, done.operation);
    if (!task) continue;
    last.left(draft, done.station, *task, instant_of(done.finish));
    take_out(draft, *task, instant_of(done.finish));
  }
  for (const StartedWork& started : day.started)
    if (const auto task = task_called(draft, started.operation)) go_around(draft, started, *task, last);
  for (const DayPin& pin : day.pinned)
    if (const auto task = task_called(draft, pin.operation)) keep_pinned(draft.work.problem.tasks[*task].ways, pin.pin);
  for (const DayBlock& block : day.blocked) block_named(draft, block);
}

}  // namespace seambook
