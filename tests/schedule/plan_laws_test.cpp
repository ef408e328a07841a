// Laws over random shops: names do not matter, more conditions never help, and time is neither lost nor made.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "random_plans.hpp"
#include "schedule/clock.hpp"
#include "schedule/set_up_table.hpp"

namespace {

using namespace shop;

bool proved(const Plan& plan) {
  return plan.judged.size() == 5 &&
         std::all_of(plan.judged.begin(), plan.judged.end(), [](const PlanLevel& level) { return level.proved; });
}

ShopProblem relabelled(const ShopProblem& problem, std::mt19937& random) {
  std::vector<std::size_t> to(problem.tasks.size());
  for (std::size_t t = 0; t < to.size(); ++t) to[t] = t;
  std::shuffle(to.begin(), to.end(), random);
  ShopProblem out = problem;
  for (std::size_t t = 0; t < to.size(); ++t) out.tasks[to[t]] = problem.tasks[t];
  for (auto& [before, after] : out.precedence) before = to[before], after = to[after];
  return out;
}

PlanBudget short_search() {
  PlanBudget budget;
  budget.states = 5000, budget.placements = 4000, budget.stations = {1000, 1000};
  return budget;
}

ShopProblem random_shop(std::mt19937& random) {
  return random_plan_problem(random, {2 + random() % 5, 1 + random() % 2, random() % 3, random() % 4});
}

}  // namespace

TEST_CASE("a proved plan is as good whatever the tasks are called and in whatever order they come") {
  std::mt19937 random(31);
  std::size_t looked_at = 0;
  for (int shops = 0; shops < 600; ++shops) {
    const ShopProblem problem = random_shop(random);
    const Plan first = plan(problem, short_search()), second = plan(relabelled(problem, random), short_search());
    if (!proved(first) || !proved(second)) continue;
    ++looked_at;
    INFO("shop ", shops);
    REQUIRE(first.levels == second.levels);
  }
  CHECK(looked_at > 500);
}

TEST_CASE("one more condition never makes a proved plan better") {
  std::mt19937 random(32);
  std::size_t looked_at = 0;
  for (int shops = 0; shops < 600; ++shops) {
    const ShopProblem problem = random_shop(random);
    ShopProblem more = problem;
    const std::size_t before = random() % (problem.tasks.size() - 1);
    more.precedence.emplace_back(before, before + 1 + random() % (problem.tasks.size() - 1 - before));
    const Plan free = plan(problem, short_search()), bound = plan(more, short_search());
    if (!proved(free) || !proved(bound)) continue;
    ++looked_at;
    INFO("shop ", shops);
    REQUIRE(free.levels <= bound.levels);
  }
  CHECK(looked_at > 500);
}

TEST_CASE("between start and finish lies just the time of the way, and before it the set-up's") {
  std::mt19937 random(33);
  for (int shops = 0; shops < 600; ++shops) {
    const ShopProblem problem = random_shop(random);
    const Plan found = plan(problem, short_search());
    for (const PlannedTask& task : found.tasks) {
      const Way& way = problem.tasks[task.task].ways[task.way];
      if (!way.station) {
        REQUIRE(task.finish - task.start == way.time);
        continue;
      }
      WorkingTime time = problem.stations[*way.station].open;
      for (const std::size_t person : way.people) time = both(time, problem.people[person].present);
      INFO("shop ", shops);
      REQUIRE(working_between(time, task.start, task.finish) == way.time);
      REQUIRE(working_between(time, task.set_up, task.start) >= whole_seconds(task.change.duration));
    }
  }
}
