// The levels a plan is judged by, in the units a shop reads: minutes and hours instead of seconds.
#pragma once

#include <string>
#include <vector>

#include "report/planned_shop.hpp"

namespace seambook {

struct ShownLevel {
  std::string name;  // `late minutes`
  double value = 0, bound = 0;
  bool proved = false;
};
std::vector<ShownLevel> shown_levels(const Plan&);

/// This plan, then the others: what each comes to.
std::vector<OtherPlan> compared_plans(const PlannedShop&);
/// Wage and burden of an hour of set-up as this plan does it: who sets up counts by his minutes.
MoneyPerTime<> set_up_rate(const PlannedShop&);
/// How many changes of set-up there are.
std::size_t set_up_count(const Plan&);

}  // namespace seambook
