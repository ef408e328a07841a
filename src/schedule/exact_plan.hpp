// The best plan of a small shop, with proof: all lists and ways, layer by layer, without those that some other one is
// never worse than.
//
// One state is never worse than another when the same tasks are done, the same is mounted everywhere, and whatever
// counts from here on is no later and no more: ends of stations, people, open orders and of tasks that others wait for,
// and each level so far. Whatever follows then ends no later either (timeline.hpp).
#pragma once

#include "schedule/timeline.hpp"

namespace seambook {

struct ExactPlan {
  std::optional<TaskList> list;  // better than the known one; absent when there is none, or none was found
  Levels bound;                  // no plan is better, by the levels in turn
  bool proved = false;           // `list`, or else the known one, is a best plan
};

/// Looks for a plan better than one of `known` levels; `floor` is under all plans, level by level. `states` bounds the
/// work. More than 64 tasks, or an earlier plan to stay close to, are not looked at.
ExactPlan best_plan(ShopNet&, const Levels& known, const Levels& floor, std::size_t states);

}  // namespace seambook
