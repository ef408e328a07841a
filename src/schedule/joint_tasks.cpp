#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "schedule/instants.hpp"
#include "schedule/set_up_table.hpp"
#include "schedule/shop_draft.hpp"
#include "schedule/task_ways.hpp"

namespace seambook {
namespace {

/// A part of a job's pieces that goes through the shop together.
struct Lot {
  std::optional<std::size_t> number;  // from 1; absent: the whole lot
  std::int64_t first = 1, pieces = 1;
  double share = 1;  // of the job's pieces
};

std::vector<Lot> lots_of(const Job& job, const Weldment& weldment) {
  const auto all = static_cast<std::int64_t>(
      std::llround(static_cast<double>(job.quantities.front()) * std::max(1.0, weldment.count.si.value)));
  if (!weldment.plan.split || *weldment.plan.split >= all) return {{std::nullopt, 1, all, 1}};
  std::vector<Lot> lots;
  lots.reserve(static_cast<std::size_t>(all / *weldment.plan.split + 1));
  for (std::int64_t first = 1; first <= all; first += *weldment.plan.split) {
    const std::int64_t pieces = std::min(*weldment.plan.split, all - first + 1);
    lots.push_back({lots.size() + 1, first, pieces, static_cast<double>(pieces) / static_cast<double>(all)});
  }
  return lots;
}

Instant ready_of(const WorkDraft& draft, std::size_t job_number, std::size_t weldment_number,
                 std::optional<std::size_t> joint) {
  const Job& job = draft.plan.jobs[job_number];
  Instant ready = Instant::min();
  const auto later = [&](const std::optional<Moment>& moment) {
    if (moment) ready = std::max(ready, instant_of(*moment));
  };
  later(job.plan.ready), later(job.weldments[weldment_number].plan.ready);
  // What has arrived is there, whatever was expected.
  if (draft.plan.day) {
    for (const Arrival& arrival : draft.plan.day->arrived)
      if (arrival.job == job_number && arrival.weldment.value_or(weldment_number) == weldment_number)
        ready = instant_of(arrival.at);
  }
  if (joint) later(job.joints[*joint].plan.ready);
  return ready;
}

NeedWords needs_of(const WorkDraft& draft, const Job& job, std::size_t joint, const StepRun& run) {
  for (const TaskStep& step : run.steps)
    if (step.kind != StepKind::finish && step.kind != StepKind::inspect)
      return needs_in_words(draft.plan.book, job, joint, step.group);
  return needs_of_finish(draft.plan.book, job, joint);
}

void add_joint(WorkDraft& draft, std::size_t job_number, std::size_t joint, const Lot& lot) {
  const Job& job = draft.plan.jobs[job_number];
  const Estimate& estimate = draft.plan.estimates[job_number];
  const std::size_t weldment = job.joints[joint].weldment;
  const double pieces = static_cast<double>(job.quantities.front()) * lot.share;
  LotTasks tasks{job_number, weldment, lot.number.value_or(0), joint, {}, false};
  for (StepRun& run : step_runs(estimate, joint, joint_steps(draft.plan.book, job, estimate, joint), pieces)) {
    ShopTask task;
    task.name = task_name(job, weldment, lot.number, joint, run.code);
    task.needs = draft.numbers.numbers(needs_of(draft, job, joint, run));
    std::string why_not;
    task.ways = run_ways(draft.plan, job, joint, run, why_not);
    task.order = job_number;
    task.ready = ready_of(draft, job_number, weldment, joint);
    task.rest = whole_seconds(run.rest);
    if (run.held && !task.ways.empty()) task.held = task.ways.front().time / 2;
    const bool nobody = task.ways.empty();
    const std::size_t number =
        add_task(draft, std::move(task), {job_number, weldment, joint, lot.first, lot.pieces, std::move(run.steps)});
    if (nobody) draft.kept_out[number] = {job_number, weldment, joint, false, why_not, "look at stations and welders"};
    if (!tasks.tasks.empty()) draft.work.problem.precedence.emplace_back(tasks.tasks.back(), number);
    tasks.tasks.push_back(number);
  }
  draft.lots.push_back(std::move(tasks));
}

/// Fit-up of parts, turning and the elements that are counted by weldment.
void add_parts(WorkDraft& draft, std::size_t job_number, std::size_t weldment, const Lot& lot) {
  const Job& job = draft.plan.jobs[job_number];
  const double pieces = static_cast<double>(job.quantities.front()) * lot.share;
  const Time<> labour = pieces * draft.plan.estimates[job_number].weldments[weldment].floor;
  if (labour.si <= 0) return;
  ShopTask task;
  task.name = task_name(job, weldment, lot.number, std::nullopt, "parts");
  task.needs = draft.numbers.numbers(needs_of_finish(draft.plan.book, job, job.weldments[weldment].first_joint));
  std::string why_not;
  task.ways = parts_ways(draft.plan.book, job, weldment, labour, why_not);
  task.order = job_number;
  task.ready = ready_of(draft, job_number, weldment, std::nullopt);
  const bool nobody = task.ways.empty();
  const std::size_t number = add_task(
      draft, std::move(task),
      {job_number, weldment, std::nullopt, lot.first, lot.pieces, {{StepKind::fit, 0, labour, {}, {}, false}}});
  if (nobody) draft.kept_out[number] = {job_number, weldment, std::nullopt, false, why_not, "look at the stations"};
  draft.lots.push_back({job_number, weldment, lot.number.value_or(0), std::nullopt, {number}, false});
}

}  // namespace

std::string task_name(const Job& job, std::size_t weldment, std::optional<std::size_t> lot,
                      std::optional<std::size_t> joint, std::string_view code) {
  std::string name = job.name + "/" + job.weldments[weldment].name;
  if (lot) name += "/" + std::to_string(*lot);
  if (joint) name += "/" + job.joints[*joint].id;
  return fmt::format("{}/{}", name, code);
}

std::size_t add_task(WorkDraft& draft, ShopTask task, TaskRef ref) {
  draft.work.problem.tasks.push_back(std::move(task));
  draft.work.refs.push_back(std::move(ref));
  draft.kept_out.emplace_back();
  draft.gone.push_back(false);
  return draft.work.refs.size() - 1;
}

void add_tasks(WorkDraft& draft) {
  for (std::size_t n = 0; n < draft.plan.jobs.size(); ++n) {
    const Job& job = draft.plan.jobs[n];
    for (std::size_t w = 0; w < job.weldments.size(); ++w) {
      for (const Lot& lot : lots_of(job, job.weldments[w])) {
        if (job.weldments[w].joint_count > 0) add_parts(draft, n, w, lot);
        for (std::size_t j = 0; j < job.weldments[w].joint_count; ++j)
          add_joint(draft, n, job.weldments[w].first_joint + j, lot);
      }
    }
  }
}

}  // namespace seambook
