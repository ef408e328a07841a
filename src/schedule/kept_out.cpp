// Work that is left out of the plan: what must not be sent to the floor, what is blocked, and all that follows it.
#include <algorithm>

#include "estimate/gates.hpp"
#include "schedule/instants.hpp"
#include "schedule/shop_draft.hpp"

namespace seambook {
namespace {

void keep_joint_out(WorkDraft& draft, const Withheld& withheld) {
  for (std::size_t t = 0; t < draft.work.refs.size(); ++t) {
    const TaskRef& ref = draft.work.refs[t];
    const bool meant = ref.job == withheld.job && ref.weldment == withheld.weldment &&
                       (!withheld.joint || ref.joint == withheld.joint);
    // That something must not be done says more than that it cannot.
    const bool first = !draft.kept_out[t] || (withheld.gate && !draft.kept_out[t]->gate);
    if (meant && first && !draft.gone[t]) draft.kept_out[t] = withheld;
  }
}

void block(WorkDraft& draft, std::size_t job_number) {
  const Job& job = draft.plan.jobs[job_number];
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const auto why = job.plan.blocked ? job.plan.blocked : job.weldments[w].plan.blocked;
    if (why) keep_joint_out(draft, {job_number, w, std::nullopt, false, *why, {}});
  }
  for (std::size_t j = 0; j < job.joints.size(); ++j)
    if (job.joints[j].plan.blocked)
      keep_joint_out(draft, {job_number, job.joints[j].weldment, j, false, *job.joints[j].plan.blocked, {}});
}

void gate(WorkDraft& draft, std::size_t job_number) {
  const Job& job = draft.plan.jobs[job_number];
  const GatedWork work{draft.plan.book, job,       draft.plan.estimates[job_number], date_of(draft.plan.start),
                       draft.plan.day,  job_number};
  const std::vector<Gate> gates = find_gates(work);
  tell_gates(gates, job, draft.diagnostics);
  for (const Gate& found : gates) {
    // A lift is told of and forbidden; the welding goes on.
    const Withheld withheld{job_number, found.weldment, found.joint, true, found.words, found.hint};
    if (found.kind == GateKind::lift)
      draft.work.withheld.push_back(withheld);
    else
      keep_joint_out(draft, withheld);
  }
}

/// What follows work that is kept out is kept out too.
void follow(WorkDraft& draft) {
  const auto& problem = draft.work.problem;
  std::vector<std::vector<std::size_t>> followers(problem.tasks.size());
  for (const auto& [before, after] : problem.precedence) followers[before].push_back(after);
  for (const std::size_t t : topological_order(problem.tasks.size(), problem.precedence)) {
    if (!draft.kept_out[t]) continue;
    for (const std::size_t next : followers[t]) {
      if (draft.kept_out[next] || draft.gone[next]) continue;
      const TaskRef& ref = draft.work.refs[next];
      draft.kept_out[next] = {ref.job, ref.weldment, ref.joint, false, "waits for " + problem.tasks[t].name, {}};
    }
  }
}

}  // namespace

void keep_out(WorkDraft& draft) {
  for (std::size_t n = 0; n < draft.plan.jobs.size(); ++n) {
    gate(draft, n);
    block(draft, n);
  }
  follow(draft);
}

void drop_kept_out(WorkDraft& draft) {
  ShopProblem& problem = draft.work.problem;
  std::vector<std::optional<std::size_t>> number(problem.tasks.size());
  std::vector<ShopTask> tasks;
  std::vector<TaskRef> refs;
  std::vector<std::optional<Earlier>> earlier;
  tasks.reserve(number.size()), refs.reserve(number.size());
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    if (draft.kept_out[t]) {
      const Withheld& why = *draft.kept_out[t];
      const auto same = [&](const Withheld& w) {
        return w.job == why.job && w.weldment == why.weldment && w.joint == why.joint && (w.joint || w.why == why.why);
      };
      if (std::none_of(draft.work.withheld.begin(), draft.work.withheld.end(), same))
        draft.work.withheld.push_back(why);
    }
    if (draft.kept_out[t] || draft.gone[t]) continue;
    number[t] = tasks.size();
    tasks.push_back(std::move(problem.tasks[t]));
    refs.push_back(std::move(draft.work.refs[t]));
  }
  std::vector<Edge> edges;
  for (const auto& [before, after] : problem.precedence)
    if (number[before] && number[after]) edges.emplace_back(*number[before], *number[after]);
  problem.tasks = std::move(tasks), problem.precedence = std::move(edges);
  draft.work.refs = std::move(refs);
}

}  // namespace seambook
