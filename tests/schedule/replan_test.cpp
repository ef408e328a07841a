// A plan that follows an earlier one: what began stays, what need not move does not.
#include <doctest/doctest.h>

#include <algorithm>

#include "loaded_shop.hpp"

using namespace seambook;

namespace {

struct Planned {
  test::LoadedShop shop;
  Plan plan;
};

Planned first_plan(const std::vector<std::string>& jobs) {
  test::LoadedShop shop = test::load_shop(jobs, test::small_rates(), test::at("2026-05-11", 0));
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
  return {std::move(shop), std::move(plan)};
}

/// The plan from `now` on, with what a day file says, close to an earlier one.
Planned next_plan(const std::vector<std::string>& jobs, const PastPlan& past, Instant now, const std::string& day) {
  test::LoadedShop shop = test::read_shop(jobs, test::small_rates(), now, day);
  if (!shop.day) shop.day.emplace();
  as_planned(past, now, shop.book, *shop.day);
  auto work = shop_work(shop.asked(), shop.diagnostics);
  REQUIRE_MESSAGE(work, render(shop.diagnostics));
  shop.work = std::move(*work);
  shop.work.problem.earlier = earlier_places(shop.work, past);
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
  CHECK(plan_violations(shop.work.problem, plan).empty());
  return {std::move(shop), std::move(plan)};
}

const std::vector<std::string> jobs = {
    test::small_job("one", "", test::small_joint("J1") + test::small_joint("J2") + test::small_joint("J3")),
    test::small_job("two", "", test::small_joint("K1") + test::small_joint("K2") + test::small_joint("K3"))};

const PastStep& past_step(const PastPlan& past, const std::string& name) {
  const auto found =
      std::find_if(past.steps.begin(), past.steps.end(), [&](const PastStep& step) { return step.operation == name; });
  REQUIRE(found != past.steps.end());
  return *found;
}

}  // namespace

TEST_CASE("with nothing new nothing moves, and what began or is done is not planned again") {
  const auto [shop, plan] = first_plan(jobs);
  const PastPlan past = test::past_of(shop.work, plan);
  for (const Instant now : {test::at("2026-05-11", 6, 30), test::at("2026-05-11", 8), test::at("2026-05-11", 9, 17)}) {
    const auto [later, after] = next_plan(jobs, past, now, "");
    CHECK(after.levels.moved == 0);
    CHECK(moved_tasks(later.work, after).empty());
    std::size_t begun = 0, done = 0;
    for (const PastStep& step : past.steps) {
      CAPTURE(step.operation);
      const bool began = *step.set_up < now;
      CHECK(test::is_planned(later.work, after, step.operation) == !began);
      begun += began && step.finish > now ? 1 : 0;
      done += step.finish <= now ? 1 : 0;
      if (began) continue;
      const PlannedTask& task = test::step_of(later.work, after, step.operation);
      CHECK(test::station_of(later.work, task) == step.station);
      CHECK(test::lead_of(later.work, task) == step.people.front());
      CHECK(std::chrono::abs(task.start - step.start) <= std::chrono::minutes(1));  // moments are read in minutes
    }
    CHECK(later.work.begun.size() == begun);
    CHECK(later.work.done.size() == done);
    for (const Begun& still : later.work.begun) {
      const PastStep& step = past_step(past, still.name);
      CHECK(later.work.problem.stations[*still.station].name == step.station);
      CHECK(later.work.problem.people[*still.person].stamp == step.people.front());
    }
  }
}

TEST_CASE("when a welder stays away only his work moves") {
  const auto [shop, plan] = first_plan(jobs);
  const PastPlan past = test::past_of(shop.work, plan);
  const auto [later, after] = next_plan(jobs, past, test::at("2026-05-11", 7),
                                        "absent: [{welder: A, from: 2026-05-11 07:00, until: 2027-12-31}]");
  CHECK(after.levels.unplaced == 0);
  std::size_t his = 0;
  for (const Moved& moved : moved_tasks(later.work, after)) {
    CAPTURE(moved.from);
    CAPTURE(moved.to);
    CHECK(moved.from.find(" A ") != std::string::npos);
    CHECK(moved.to.find(" B ") != std::string::npos);
    ++his;
  }
  CHECK(his > 0);
  CHECK(static_cast<std::int64_t>(his) == after.levels.moved);
}

TEST_CASE("what was done before the earlier plan stays done, and its jobs may have left the shop") {
  const auto [shop, plan] = first_plan(jobs);
  const PastPlan past = test::past_of(shop.work, plan);
  const auto [later, after] = next_plan(jobs, past, test::at("2026-05-11", 8), "");
  PastPlan second = test::past_of(later.work, after);
  for (const auto* list : {&later.work.done, &later.work.begun})
    for (const Begun& begun : *list)
      second.before.push_back({begun.name,
                               later.work.problem.stations[*begun.station].name,
                               {later.work.problem.people[*begun.person].stamp},
                               std::nullopt,
                               begun.start,
                               begun.finish});
  const auto [third_shop, third] = next_plan(jobs, second, test::at("2026-05-11", 9), "");
  for (const PastStep& step : past.steps)
    if (step.finish <= test::at("2026-05-11", 8)) CHECK_FALSE(test::is_planned(third_shop.work, third, step.operation));
  const auto [alone, only_two] = next_plan({jobs[1]}, second, test::at("2026-05-11", 9), "");
  for (const ShopTask& task : alone.work.problem.tasks) CHECK(task.name.starts_with("two/"));
}

TEST_CASE("somebody's order is timed, or what is wrong with it is said") {
  const auto [shop, plan] = first_plan({jobs[0]});
  std::vector<std::string> names, wrong;
  for (const ShopTask& task : shop.work.problem.tasks) names.push_back(task.name);
  const auto list = list_of_names(shop.work.problem, names, wrong);
  REQUIRE(list);
  CHECK(plan.levels <= timed_plan(shop.work.problem, *list).levels);
  std::swap(names[1], names[2]);
  CHECK_FALSE(list_of_names(shop.work.problem, names, wrong));
  CHECK(wrong == std::vector<std::string>{"one/w/J1/1 stands before one/w/J1/fit, which it follows"});
  names.pop_back(), names.push_back("one/w/J9/1"), names.push_back(names.front()), wrong.clear();
  CHECK_FALSE(list_of_names(shop.work.problem, names, wrong));
  CHECK(wrong.size() == 4);
}
