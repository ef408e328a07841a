// A shop's work while it is put together: all tasks of all jobs, and what keeps some of them out of the plan.
#pragma once

#include "schedule/shop_days.hpp"
#include "schedule/shop_work.hpp"
#include "sequence/needs.hpp"

namespace seambook {

/// The tasks of one joint, of a weldment's parts, or of work on it outside, in one lot, in turn.
struct LotTasks {
  std::size_t job = 0, weldment = 0, lot = 0;
  std::optional<std::size_t> joint;
  std::vector<std::size_t> tasks;
  bool outside = false;
};

struct WorkDraft {
  const WorkToPlan& plan;
  Diagnostics& diagnostics;
  PlanDays days;
  ShopWork work;
  NeedNumbers numbers;
  std::vector<LotTasks> lots;
  std::vector<std::optional<Withheld>> kept_out;  // parallel to the tasks
  std::vector<bool> gone;                         // done, or under way: no longer to be planned
  bool sound = true;                              // the day file names only work that there is

  explicit WorkDraft(const WorkToPlan& p, Diagnostics& d) : plan(p), diagnostics(d), numbers(work.problem.model) {}
};

void add_tasks(WorkDraft&);      // joint_tasks.cpp: tasks with their ways, precedence inside lots
void add_order(WorkDraft&);      // task_order.cpp: `after` of joints, weldments and jobs; work outside
void apply_day(WorkDraft&);      // day_applied.cpp: what is done, under way, pinned, blocked
void keep_out(WorkDraft&);       // kept_out.cpp: gates, blocked work and what follows it
void drop_kept_out(WorkDraft&);  // kept_out.cpp: renumbers what is left

/// `job/weldment[/lot]/joint/step`, the joint left out for work on the weldment as a whole.
std::string task_name(const Job&, std::size_t weldment, std::optional<std::size_t> lot,
                      std::optional<std::size_t> joint, std::string_view code);
std::size_t add_task(WorkDraft&, ShopTask, TaskRef);

}  // namespace seambook
