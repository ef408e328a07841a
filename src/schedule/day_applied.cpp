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
  if (operation.place == Place{}) return std::nullopt;  // of an earlier plan: its job may have left the shop
  draft.sound = false;
  draft.diagnostics.error(operation.place, fmt::format("there is no operation '{}'", operation.name),
                          "operations are named as the plan prints them: job/weldment/joint/step");
  return std::nullopt;
}

/// Takes a task out of the plan, whatever kept it back; what follows it waits until it is done and has rested.
void take_out(WorkDraft& draft, std::size_t task, Instant finish) {
  ShopProblem& problem = draft.work.problem;
  draft.gone[task] = true, draft.kept_out[task].reset();
  for (const auto& [before, after] : problem.precedence)
    if (before == task)
      problem.tasks[after].ready = std::max(problem.tasks[after].ready, finish + problem.tasks[task].rest);
}

/// The station stands as its latest work left it.
struct LastWork {
  std::vector<Instant> at;
  void left(WorkDraft& draft, std::size_t station, std::size_t task, Instant finish) {
    if (finish < at[station]) return;
    at[station] = finish;
    Attributes& start = draft.work.problem.stations[station].start;
    start = mounted_after(start, draft.work.problem.tasks[task].needs);
  }
};

/// Whether a way is at that station, led by that welder where one is named.
bool is_way(const Way& way, const std::optional<std::size_t>& station, const std::optional<std::size_t>& welder) {
  return way.station == station && (!welder || (!way.people.empty() && way.people.front() == *welder));
}

void go_around(WorkDraft& draft, const StartedWork& started, std::size_t task, LastWork& last) {
  ShopProblem& problem = draft.work.problem;
  const ShopTask& of = problem.tasks[task];
  const auto way = std::find_if(of.ways.begin(), of.ways.end(),
                                [&](const Way& w) { return is_way(w, started.station, started.welder); });
  const Seconds time = way != of.ways.end() ? way->time : of.ways.empty() ? Seconds{} : of.ways.front().time;
  const Instant begin = instant_of(started.at);
  Instant finish = begin + time;
  if (started.station) {
    WorkingTime working = problem.stations[*started.station].open;
    if (started.welder) working = both(working, problem.people[*started.welder].present);
    finish = done_by(working, begin, time);
  }
  if (finish == Instant::max()) {
    draft.diagnostics.warning(
        started.operation.place,
        of.name + " is under way, and its station and welder do not come back; it is planned anew");
    return;
  }
  finish = std::max(draft.plan.start, finish);
  draft.work.begun.push_back({of.name, started.station, started.welder, begin, finish});
  // Its set-up may be under way, and the work itself begin later.
  const WorkingTime taken = {{std::min(begin, draft.plan.start), finish}};
  if (started.station) {
    problem.stations[*started.station].open = without(problem.stations[*started.station].open, taken);
    last.left(draft, *started.station, task, finish);
  }
  if (started.welder) problem.people[*started.welder].present = without(problem.people[*started.welder].present, taken);
  take_out(draft, task, finish);
}

void block_named(WorkDraft& draft, const DayBlock& block) {
  if (block.operation) {
    const auto task = task_called(draft, *block.operation);
    if (task && !draft.gone[*task]) {
      const TaskRef& ref = draft.work.refs[*task];
      draft.kept_out[*task] = {ref.job, ref.weldment, ref.joint, false, block.why, {}};
    }
    return;
  }
  for (std::size_t t = 0; t < draft.work.refs.size(); ++t) {
    const TaskRef& ref = draft.work.refs[t];
    const bool meant = ref.job == block.job && (!block.weldment || ref.weldment == *block.weldment) &&
                       (!block.joint || ref.joint == block.joint);
    if (meant && !draft.gone[t] && !draft.kept_out[t])
      draft.kept_out[t] = {ref.job, ref.weldment, ref.joint, false, block.why, {}};
  }
}

}  // namespace

void apply_day(WorkDraft& draft) {
  if (!draft.plan.day) return;
  const Day& day = *draft.plan.day;
  LastWork last;
  last.at.resize(draft.work.problem.stations.size(), Instant::min());
  const auto stated = [&](std::size_t station) {  // what stands mounted now is newer than what is done
    return std::any_of(day.mounted.begin(), day.mounted.end(),
                       [&](const MountedNow& m) { return m.station == station; });
  };
  for (const DoneWork& done : day.done) {
    const auto task = task_called(draft, done.operation);
    if (!task) continue;
    const Instant finish = instant_of(done.finish);
    draft.work.done.push_back({done.operation.name, done.station, done.welder, instant_of(done.start), finish});
    if (done.station && !stated(*done.station)) last.left(draft, *done.station, *task, finish);
    take_out(draft, *task, finish);
  }
  for (const StartedWork& started : day.started)
    if (const auto task = task_called(draft, started.operation)) go_around(draft, started, *task, last);
  for (const DayPin& pin : day.pinned)
    if (const auto task = task_called(draft, pin.operation)) keep_pinned(draft.work.problem.tasks[*task].ways, pin.pin);
  for (const DayBlock& block : day.blocked) block_named(draft, block);
}

}  // namespace seambook
