// What must be done before what, beyond the steps of a joint.
#include <algorithm>

#include "schedule/instants.hpp"
#include "schedule/shop_draft.hpp"

namespace seambook {
namespace {

using Lots = std::vector<const LotTasks*>;

/// Every lot of the earlier before every lot of the later; where both are the same lots, lot by lot.
void put_before(WorkDraft& draft, const Lots& earlier, const Lots& later) {
  for (const LotTasks* a : earlier) {
    for (const LotTasks* b : later) {
      if (a == b || a->tasks.empty() || b->tasks.empty()) continue;
      const bool other_lot = a->job == b->job && a->weldment == b->weldment && a->lot != b->lot;
      if (!other_lot) draft.work.problem.precedence.emplace_back(a->tasks.back(), b->tasks.front());
    }
  }
}

template <class Wanted>
Lots lots_where(const WorkDraft& draft, Wanted wanted) {
  Lots lots;
  for (const LotTasks& lot : draft.lots)
    if (wanted(lot)) lots.push_back(&lot);
  return lots;
}

Lots of_joint(const WorkDraft& draft, std::size_t job, std::size_t joint) {
  return lots_where(draft, [&](const LotTasks& lot) { return lot.job == job && lot.joint == joint; });
}
Lots of_weldment(const WorkDraft& draft, std::size_t job, std::size_t weldment) {
  return lots_where(draft, [&](const LotTasks& lot) { return lot.job == job && lot.weldment == weldment; });
}

/// The lots of some joints, or all of the weldment's where none is named.
Lots of_joints(const WorkDraft& draft, std::size_t job, std::size_t weldment, const std::vector<std::size_t>& joints) {
  return lots_where(draft, [&](const LotTasks& lot) {
    if (lot.job != job || lot.weldment != weldment || !lot.joint) return false;
    return joints.empty() || std::count(joints.begin(), joints.end(), *lot.joint) > 0;
  });
}

/// Work away from the shop: it leaves by its day, which is a due date of its own, and comes back.
void add_outside(WorkDraft& draft, std::size_t job_number, std::size_t weldment, std::size_t number) {
  const Job& job = draft.plan.jobs[job_number];
  const OutsideWork& outside = job.weldments[weldment].plan.outside[number];
  const std::string code = "outside-" + std::to_string(number + 1);
  const auto away_task = [&](std::string_view step, std::size_t order, Instant from, Seconds time) {
    ShopTask task;
    task.name = task_name(job, weldment, std::nullopt, std::nullopt, step);
    task.ways.push_back({std::nullopt, {}, time, from, Instant::max()});
    task.order = order;
    TaskRef ref{job_number, weldment, std::nullopt, 1, 1, {{StepKind::outside, 0, {}, {}, outside.what, false}}};
    ref.pieces = job.quantities.front();
    return add_task(draft, std::move(task), std::move(ref));
  };
  std::vector<std::size_t> tasks;
  if (outside.out) {
    draft.work.problem.orders.push_back(
        {job.name + ": " + outside.what, instant_of(*outside.out), draft.work.problem.orders[job_number].weight});
    draft.work.job_of_order.push_back(job_number);
    tasks.push_back(away_task(code + "-leaves", draft.work.problem.orders.size() - 1, Instant::min(), Seconds{}));
    tasks.push_back(
        away_task(code, job_number, instant_of(*outside.out), instant_of(*outside.back) - instant_of(*outside.out)));
    draft.work.problem.precedence.emplace_back(tasks[0], tasks[1]);
  } else {
    tasks.push_back(away_task(code, job_number, Instant::min(), outside.time.value_or(std::chrono::minutes{})));
  }
  const auto edge = [&](std::size_t before, std::size_t after) {
    draft.work.problem.precedence.emplace_back(before, after);
  };
  for (const LotTasks* lot : of_joints(draft, job_number, weldment, outside.after))
    if (!lot->tasks.empty() && (!outside.after.empty() || outside.before.empty() ||
                                std::count(outside.before.begin(), outside.before.end(), *lot->joint) == 0))
      edge(lot->tasks.back(), tasks.front());
  if (!outside.before.empty())
    for (const LotTasks* lot : of_joints(draft, job_number, weldment, outside.before))
      if (!lot->tasks.empty()) edge(tasks.back(), lot->tasks.front());
  draft.lots.push_back({job_number, weldment, 0, std::nullopt, std::move(tasks), true});
}

}  // namespace

void add_order(WorkDraft& draft) {
  for (std::size_t n = 0; n < draft.plan.jobs.size(); ++n)
    for (std::size_t w = 0; w < draft.plan.jobs[n].weldments.size(); ++w)
      for (std::size_t k = 0; k < draft.plan.jobs[n].weldments[w].plan.outside.size(); ++k) add_outside(draft, n, w, k);
  for (std::size_t n = 0; n < draft.plan.jobs.size(); ++n) {
    const Job& job = draft.plan.jobs[n];
    for (const auto& [earlier, later] : job.after)
      put_before(draft, of_joint(draft, n, earlier), of_joint(draft, n, later));
    for (std::size_t w = 0; w < job.weldments.size(); ++w) {
      // Parts are fitted before the joints of their lot.
      for (const LotTasks* parts : of_weldment(draft, n, w))
        if (!parts->joint && !parts->outside) put_before(draft, {parts}, of_joints(draft, n, w, {}));
      for (const std::size_t earlier : job.weldments[w].plan.after)
        put_before(draft, of_weldment(draft, n, earlier), of_weldment(draft, n, w));
    }
    for (const std::string& name : job.plan.after_jobs)
      for (std::size_t other = 0; other < draft.plan.jobs.size(); ++other)
        if (draft.plan.jobs[other].name == name)
          put_before(draft, lots_where(draft, [&](const LotTasks& lot) { return lot.job == other; }),
                     lots_where(draft, [&](const LotTasks& lot) { return lot.job == n; }));
  }
}

}  // namespace seambook
