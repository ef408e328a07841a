// A small shop planned by hand for the tests of the plan's pages: two stations, two welders, two days, two orders.
// Tasks stand at each station in the order of the files; some work is withheld, blocked or cannot be done, one order is
// late.
#pragma once

#include "report/planned_shop.hpp"

namespace seambook::test {

struct HandPlan {
  RateBook book;
  std::vector<Job> jobs;
  std::vector<Estimate> estimates;
  ShopWork work;
  Plan plan;
  std::vector<Remedy> remedies;

  PlannedShop shop() const { return {book, jobs, estimates, work, plan, {2026, 5, 11}, remedies}; }
};

/// Monday 2026-05-11 06:00 is its start; the days have two breaks and end at 14:30.
HandPlan hand_plan();
/// Joints that its withheld entries keep from the floor, as `job/weldment/joint`.
inline constexpr const char* gated_joint = "hatch/rim/R4";

}  // namespace seambook::test
