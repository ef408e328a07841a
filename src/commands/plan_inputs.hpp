// The files that a plan is made from beside the jobs: what the day brought, an earlier plan, somebody's own order.
#pragma once

#include "commands/pipeline.hpp"
#include "read/written.hpp"
#include "schedule/past_plan.hpp"

namespace seambook {

struct PlanInputs {
  std::optional<Day> day;
  std::optional<PastPlan> from, verify;
  std::optional<std::vector<Word>> order;
};

/// Nothing, and the reasons in the batch, when one of the files has faults.
std::optional<PlanInputs> plan_inputs(const Arguments&, Batch&, const RateBook&, std::span<const Job>);
/// When the plan begins: `--now`, else midnight of the date.
Instant plan_start(const Arguments&);

}  // namespace seambook
