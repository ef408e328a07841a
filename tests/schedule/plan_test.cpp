// The planner against every plan, the checker against the planner, and laws that any plan keeps.
#include "schedule/plan.hpp"

#include <doctest/doctest.h>

#include <random>

#include "every_plan.hpp"
#include "random_plans.hpp"

namespace {

using namespace shop;

std::string words(const std::vector<std::string>& list) {
  std::string out;
  for (const std::string& line : list) out += line + "\n";
  return out;
}

std::string words(const Levels& levels) {
  return std::to_string(levels.unplaced) + " undone, late " + std::to_string(levels.late) + ", set-up " +
         std::to_string(levels.change) + ", loads " + std::to_string(levels.loads) + ", finish " +
         std::to_string(levels.finish);
}

/// The bounds of a plan are under the best there is, level by level while the levels before are proved.
bool bounds_hold(const Plan& plan, const Levels& best) {
  for (const PlanLevel& level : plan.judged) {
    const std::int64_t is = level.name == "cannot be done"  ? best.unplaced
                            : level.name == "late"          ? best.late
                            : level.name == "set-up"        ? best.change
                            : level.name == "fixture loads" ? best.loads
                                                            : best.finish;
    if (level.bound > is || (level.proved && level.value != is)) return false;
  }
  return true;
}

TEST_CASE("the plan of a small shop is the best of all plans") {
  std::mt19937 random(20261126);
  for (int shops = 0; shops < 2000; ++shops) {
    const Size size{3 + random() % 2, 1 + random() % 2, random() % 3, random() % 3};
    const ShopProblem problem = random_plan_problem(random, size);
    const Plan found = plan(problem);
    const Levels best = *EveryPlan(problem).best;
    INFO("shop ", shops, ": ", words(found.levels), " against ", words(best), "\n");
    REQUIRE(found.levels == best);
    REQUIRE(checked_levels(problem, found) == best);
    REQUIRE(plan_violations(problem, found).empty());
    CHECK(bounds_hold(found, best));
  }
}

TEST_CASE("without the exact search the plan breaks no rule and its bounds stay under the best") {
  std::mt19937 random(7);
  for (int shops = 0; shops < 300; ++shops) {
    const ShopProblem problem = random_plan_problem(random, {4, 1 + random() % 2, random() % 3, random() % 3});
    PlanBudget budget;
    budget.states = 1, budget.placements = 1200;
    const Plan found = plan(problem, budget);
    const Levels best = *EveryPlan(problem).best;
    INFO("shop ", shops, ": ", words(found.levels), " against ", words(best), "\n");
    CHECK(best <= found.levels);
    CHECK(bounds_hold(found, best));
  }
}

TEST_CASE("no plan of a random shop breaks a rule, and its levels are those of its instants") {
  std::mt19937 random(99);
  for (int shops = 0; shops < 10000; ++shops) {
    const ShopProblem problem =
        random_plan_problem(random, {1 + random() % 9, 1 + random() % 3, random() % 4, random() % 6});
    PlanBudget budget;
    budget.states = 200, budget.placements = 1000, budget.stations = {500, 500};
    const Plan found = plan(problem, budget);
    INFO("shop ", shops, ": ", words(plan_violations(problem, found)));
    REQUIRE(plan_violations(problem, found).empty());
    REQUIRE(checked_levels(problem, found) == found.levels);
  }
}

}  // namespace
