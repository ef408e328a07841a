// What follows what: weldments and jobs behind work outside, lots, crews, and passes between which a part cools.
#include <doctest/doctest.h>

#include "loaded_shop.hpp"

using namespace seambook;

namespace {

const Instant monday = test::at("2026-05-11", 0);

Plan planned(const test::LoadedShop& shop) {
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
  CHECK(plan_violations(shop.work.problem, plan).empty());
  return plan;
}

std::string weldment(const std::string& name, const std::string& more, const std::string& joint) {
  return "  - name: " + name + "\n    parts: 2\n    free_issue: true\n" + more + "    joints:\n" +
         test::small_joint(joint);
}

std::string job_of(const std::string& name, const std::string& more, const std::string& weldments) {
  return "format: 1\njob: " + name + "\nfinish: F1\nbase_metal: S235\n" + more + "weldments:\n" + weldments;
}

constexpr const char* zinc = "    outside:\n      - {what: zinc, time: 30 h}\n";

}  // namespace

TEST_CASE("what comes after a weldment or a job waits until that is back from outside") {
  const std::string first = weldment("frame", zinc, "J1");
  const auto by_weldment = test::load_shop({job_of("one", "", first + weldment("cover", "    after: [frame]\n", "K1"))},
                                           test::small_rates(), monday);
  const auto by_job =
      test::load_shop({job_of("one", "", first), job_of("two", "after_jobs: [one]\n", weldment("cover", "", "K1"))},
                      test::small_rates(), monday);
  for (const auto* shop : {&by_weldment, &by_job}) {
    const Plan plan = planned(*shop);
    const std::string name = shop == &by_job ? "two/cover/K1/fit" : "one/cover/K1/fit";
    const PlannedTask& away = test::step_of(shop->work, plan, "one/frame/outside-1");
    CHECK(away.start >= test::step_of(shop->work, plan, "one/frame/J1/1").finish);
    CHECK(away.finish - away.start == std::chrono::hours(30));
    CHECK(test::step_of(shop->work, plan, name).set_up >= away.finish);
  }
}

TEST_CASE("a weldment that leaves on a day has that day as a due date of its own") {
  const std::string furnace =
      "    outside:\n      - {what: furnace, out: 2026-05-12 08:00, back: 2026-05-13 16:00, after: [J1]}\n";
  const auto shop = test::load_shop({job_of("one", "due: 2026-05-15\n", weldment("frame", furnace, "J1"))},
                                    test::small_rates(), monday);
  REQUIRE(shop.work.problem.orders.size() == 2);
  CHECK(shop.work.problem.orders[1].name == "one: furnace");
  CHECK(shop.work.problem.orders[1].due == test::at("2026-05-12", 8));
  const Plan plan = planned(shop);
  CHECK(plan.late.empty());
  CHECK(test::step_of(shop.work, plan, "one/frame/outside-1").finish == test::at("2026-05-13", 16));
}

TEST_CASE("pieces that go through in lots are tasks of their own, with their share of the minutes") {
  const auto whole =
      test::load_shop({job_of("one", "quantities: [5]\n", weldment("frame", "", "J1"))}, test::small_rates(), monday);
  const auto lots = test::load_shop({job_of("one", "quantities: [5]\n", weldment("frame", "    split: 2\n", "J1"))},
                                    test::small_rates(), monday);
  const auto seconds = [](const test::LoadedShop& shop) {
    double sum = 0;
    for (const TaskRef& ref : shop.work.refs)
      for (const TaskStep& step : ref.steps) sum += step.labour.si;
    return sum;
  };
  CHECK(seconds(lots) == doctest::Approx(seconds(whole)).epsilon(1e-9));
  const Plan plan = planned(lots);
  const TaskRef& last = lots.work.refs[test::step_of(lots.work, plan, "one/frame/3/J1/1").task];
  CHECK(last.first_piece == 5);
  CHECK(last.pieces == 1);
  for (const char* lot : {"1", "2", "3"})
    CHECK(test::step_of(lots.work, plan, std::string("one/frame/") + lot + "/J1/1").set_up >=
          test::step_of(lots.work, plan, std::string("one/frame/") + lot + "/J1/fit").finish);
}

TEST_CASE("a crew of two does it in half the time and is there together") {
  const auto one = test::load_shop({job_of("one", "", weldment("frame", "", "J1"))}, test::small_rates(), monday);
  const auto two =
      test::load_shop({job_of("one", "", weldment("frame", "    crew: 2\n", "J1"))}, test::small_rates(), monday);
  for (std::size_t t = 0; t < one.work.problem.tasks.size(); ++t) {
    const Way &alone = one.work.problem.tasks[t].ways.front(), &both = two.work.problem.tasks[t].ways.front();
    CHECK(both.people.size() == 2);
    CHECK(std::chrono::abs(alone.time - 2 * both.time) <= std::chrono::seconds(1));
  }
  const auto three =
      test::load_shop({job_of("one", "", weldment("frame", "    crew: 3\n", "J1"))}, test::small_rates(), monday);
  CHECK(three.work.problem.tasks.empty());
  CHECK(test::why_withheld(three, "J1").find("the crew asked for is larger") != std::string::npos);
}

TEST_CASE("passes that are cut by cooling are heated before the first and finished after the last") {
  const auto shop = test::example_shop({"marlgannet/machine-base.yaml"}, test::at("2026-09-07", 0));
  std::vector<const TaskRef*> runs;
  for (std::size_t t = 0; t < shop.work.refs.size(); ++t)
    if (shop.work.problem.tasks[t].name.find("/B04/1.") != std::string::npos) runs.push_back(&shop.work.refs[t]);
  REQUIRE(runs.size() >= 2);
  const auto has = [](const TaskRef& ref, StepKind kind) {
    for (const TaskStep& step : ref.steps)
      if (step.kind == kind) return true;
    return false;
  };
  for (const TaskRef* ref : runs) {
    CHECK(has(*ref, StepKind::passes));
    CHECK(has(*ref, StepKind::preheat) == (ref == runs.front()));
    CHECK(has(*ref, StepKind::finish) == (ref == runs.back()));
  }
}
