// The checker: one small plan that keeps every rule, each rule broken in turn, and exactly that one named.
#include <doctest/doctest.h>

#include "loaded_shop.hpp"
#include "random_plans.hpp"

using namespace seambook;
using shop::minutes;

namespace {

const Instant six = test::at("2026-05-11", 6);
Instant clock(int hour, int minute = 0) { return test::at("2026-05-11", hour, minute); }

Attributes needs(std::uint32_t value) {
  Attributes out;
  out.slots.assign(1, value);
  return out;
}

/// Two stations, two people, one thing that is set up: S has value 1 mounted, a change to 2 takes 30 min, T never makes
/// one to 3. Open from 6 to 10 and from 12 to 16.
ShopProblem small_problem() {
  ShopProblem problem;
  problem.model.attributes.emplace_back();
  problem.model.tasks.push_back({"change", {}, 0, {}, {2, 3}, false});
  problem.model.tasks[0].duration = minutes(30);
  problem.start = six;
  const WorkingTime open = {{clock(6), clock(10)}, {clock(12), clock(16)}};
  problem.stations = {{"S", open, needs(1), {}, {}}, {"T", open, needs(1), {}, {}}};
  problem.stations[1].never.push_back({"never", {}, 0, {}, {3}, false});
  problem.people = {{"P", open}, {"Q", open}};
  problem.orders = {{"order", clock(16), 1}};
  const auto way = [](std::size_t station, std::size_t person) {
    return Way{station, {person}, std::chrono::hours(1), Instant::min(), Instant::max()};
  };
  problem.tasks = {{"a", needs(1), {way(0, 0), way(1, 0)}, 0},
                   {"b", needs(2), {way(0, 0), way(1, 0), way(1, 1)}, 0},
                   {"c", needs(1), {way(1, 1), way(1, 0)}, 0},
                   {"d", needs(1), {way(1, 1)}, 0}};
  problem.tasks[0].rest = std::chrono::minutes(30);
  problem.tasks[2].ready = clock(6, 30);
  problem.tasks[3].held = std::chrono::hours(1);
  problem.tasks[3].ways[0].last_finish = clock(13);
  problem.longest_pause = std::chrono::minutes(15);
  problem.precedence = {{0, 1}};
  return problem;
}

PlannedTask step(std::size_t task, std::size_t way, Instant set_up, Instant start, Instant finish) {
  return {task, way, set_up, start, finish, {}, {}, {}, {}};
}

Plan small_plan(const ShopProblem& problem) {
  Plan plan;
  plan.tasks = {step(0, 0, clock(6), clock(6), clock(7)), step(2, 0, clock(6, 30), clock(6, 30), clock(7, 30)),
                step(1, 0, clock(7, 30), clock(8), clock(9)), step(3, 0, clock(8), clock(8), clock(9))};
  plan.tasks[2].change = change(problem.model, needs(1), needs(2));
  return plan;
}

/// What is found once the plan or the problem is changed.
template <class Change>
std::vector<std::string> broken(Change change_it) {
  ShopProblem problem = small_problem();
  Plan plan = small_plan(problem);
  change_it(problem, plan);
  return plan_violations(problem, plan);
}

using Found = std::vector<std::string>;

}  // namespace

TEST_CASE("a plan that keeps every rule is found to keep them") {
  CHECK(broken([](ShopProblem&, Plan&) {}).empty());
  const ShopProblem problem = small_problem();
  const Levels levels = checked_levels(problem, small_plan(problem));
  CHECK(levels.change == 1800);
  CHECK(levels.late == 0);
  CHECK(levels.finish == 3 * 3600);
}

TEST_CASE("a task that stands twice or not at all") {
  CHECK(broken([](ShopProblem&, Plan& plan) { plan.tasks.push_back(plan.tasks[3]); }) ==
        Found{"d stands in the plan 2 times"});
  CHECK(broken([](ShopProblem&, Plan& plan) { plan.tasks.pop_back(); }) == Found{"d stands in the plan 0 times"});
}

TEST_CASE("two at a time at a station, or by a person") {
  CHECK(broken([](ShopProblem& problem, Plan& plan) {
          problem.tasks[3].ways[0].people = {0};
          problem.people[0].present = problem.people[1].present = {{clock(6), clock(16)}};
          plan.tasks[3] = step(3, 0, clock(7), clock(7), clock(8));
          plan.tasks[2].set_up = clock(8), plan.tasks[2].start = clock(8, 30), plan.tasks[2].finish = clock(9, 30);
        }) == Found{"c and d at the same time: T"});
  CHECK(broken([](ShopProblem&, Plan& plan) { plan.tasks[1].way = 1; }) == Found{"a and c at the same time: P"});
}

TEST_CASE("before what it follows, or before that has rested") {
  CHECK(broken([](ShopProblem& problem, Plan&) {
          problem.precedence.emplace_back(2, 3), problem.tasks[2].rest = {};
        }).empty());
  CHECK(broken([](ShopProblem& problem, Plan&) { problem.precedence.emplace_back(3, 2); }) ==
        Found{"c begins before d is done and has rested"});
  CHECK(broken([](ShopProblem& problem, Plan&) { problem.tasks[0].rest = std::chrono::minutes(31); }) ==
        Found{"b begins before a is done and has rested"});
  CHECK(broken([](ShopProblem& problem, Plan& plan) {
          plan.tasks.erase(plan.tasks.begin());
          plan.unplaced.push_back({0, "left out"});
          problem.tasks[0].rest = {};
        }) == Found{"b is done though a is not"});
}

TEST_CASE("outside the shift, or with too short a set-up") {
  CHECK(broken([](ShopProblem&, Plan& plan) {
          plan.tasks[3] = step(3, 0, clock(9, 30), clock(9, 30), clock(10, 30));
        }) == Found{"d has too little time for its work"});
  CHECK(broken([](ShopProblem&, Plan& plan) { plan.tasks[2].set_up = clock(7, 31); }) ==
        Found{"b has too little time for its set-up"});
  CHECK(broken([](ShopProblem&, Plan& plan) { plan.tasks[2].change = {}; }) ==
        Found{"b does not have the set-up that it needs"});
}

TEST_CASE("before it is ready or pinned to, and after the qualification has ended") {
  CHECK(broken([](ShopProblem& problem, Plan&) { problem.tasks[2].ready = clock(6, 31); }) ==
        Found{"c begins Mon 11 May 06:30, before it may"});
  CHECK(broken([](ShopProblem& problem, Plan&) { problem.tasks[3].ways[0].first_start = clock(8, 1); }) ==
        Found{"d begins Mon 11 May 08:00, before it may"});
  CHECK(broken([](ShopProblem& problem, Plan&) { problem.start = clock(6, 1); }) ==
        Found{"a begins Mon 11 May 06:00, before it may"});
  CHECK(broken([](ShopProblem& problem, Plan&) { problem.tasks[3].ways[0].last_finish = clock(8, 59); }) ==
        Found{"d ends Mon 11 May 09:00, after its last day"});
}

TEST_CASE("left before a safe stop, and a change that is never made") {
  CHECK(broken([](ShopProblem&, Plan& plan) {
          plan.tasks[3] = step(3, 0, clock(9, 30), clock(9, 30), clock(12, 30));
        }) == Found{"d is left at Mon 11 May 10:00 before it has come to a safe stop"});
  CHECK(broken([](ShopProblem& problem, Plan& plan) {
          problem.tasks[3].needs = needs(3);
          plan.tasks[3] = step(3, 0, clock(8), clock(8, 30), clock(9, 30));
          plan.tasks[3].change = change(problem.model, needs(1), needs(3));
        }) == Found{"d calls a change that T never makes"});
}

TEST_CASE("away for less than it takes, or ending before it begins") {
  CHECK(broken([](ShopProblem& problem, Plan& plan) {
          problem.tasks[3].ways = {{std::nullopt, {}, std::chrono::hours(5), Instant::min(), Instant::max()}};
          plan.tasks[3] = step(3, 0, clock(8), clock(8), clock(12));
        }) == Found{"d is away for too short a time"});
  const Found found =
      broken([](ShopProblem&, Plan& plan) { plan.tasks[3] = step(3, 0, clock(8), clock(9), clock(8)); });
  REQUIRE_FALSE(found.empty());
  CHECK(found[0] == "d ends before it begins");
}
