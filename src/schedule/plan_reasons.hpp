// Why each task of a plan stands where it does, in words: what stands mounted, what it had to wait for, which due date
// or qualification puts it before work of the same set-up.
#pragma once

#include "schedule/plan.hpp"

namespace seambook {

/// Requires: tasks in the order of their stations.
void give_plan_reasons(const ShopProblem&, Plan&);

}  // namespace seambook
