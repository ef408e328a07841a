// What a day file says, one case each on a small shop: what must hold of the work and its plan afterwards.
#include <doctest/doctest.h>

#include "loaded_shop.hpp"

using namespace seambook;

namespace {

const std::string joints = test::small_joint("J1") + test::small_joint("J2");
const Instant monday = test::at("2026-05-11", 0);

struct Planned {
  test::LoadedShop shop;
  Plan plan;
};

Planned planned(const std::vector<std::string>& jobs, const std::string& day, Instant start = monday) {
  test::LoadedShop shop = test::load_shop(jobs, test::small_rates(), start, day);
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
  CHECK(plan_violations(shop.work.problem, plan).empty());
  return {std::move(shop), std::move(plan)};
}

Planned one(const std::string& day, Instant start = monday) {
  return planned({test::small_job("one", "", joints)}, day, start);
}

Instant end_of(const Plan& plan) {
  Instant end = Instant::min();
  for (const PlannedTask& task : plan.tasks) end = std::max(end, task.finish);
  return end;
}

}  // namespace

TEST_CASE("without a day everything is done on the first morning") {
  const auto [shop, plan] = one("");
  CHECK(plan.tasks.size() == 5);
  CHECK(end_of(plan) < test::at("2026-05-11", 12));
  CHECK(shop.work.withheld.empty());
}

TEST_CASE("an absent welder does nothing until he is back") {
  const auto [shop, plan] = one("absent: [{welder: A, from: 2026-05-11 06:00, until: 2026-05-11 08:00}]");
  std::size_t by_b = 0;
  for (const PlannedTask& task : plan.tasks) {
    by_b += test::lead_of(shop.work, task) == "B" ? 1 : 0;
    if (test::lead_of(shop.work, task) == "A") CHECK(task.set_up >= test::at("2026-05-11", 8));
  }
  CHECK(by_b >= 2);
}

TEST_CASE("nothing is done at a station that is down") {
  const auto [shop, plan] =
      one("down: [{station: S1, from: 2026-05-11, until: 2026-05-11}, {station: S2, from: 2026-05-11 07:00, until: "
          "2026-05-11 09:30}]");
  for (const PlannedTask& task : plan.tasks) {
    if (test::station_of(shop.work, task) == "S1") CHECK(task.set_up >= test::at("2026-05-12", 0));
    const bool in_it = task.start >= test::at("2026-05-11", 7) && task.start < test::at("2026-05-11", 9, 30);
    CHECK_FALSE((test::station_of(shop.work, task) == "S2" && in_it));
  }
}

TEST_CASE("what has arrived may begin, whatever was expected") {
  const std::vector<std::string> jobs = {test::small_job("one", "ready: 2026-05-13\n", joints)};
  const auto [late_shop, late_plan] = planned(jobs, "");
  for (const PlannedTask& task : late_plan.tasks) CHECK(task.set_up >= test::at("2026-05-13", 0));
  const auto [shop, plan] = planned(jobs, "arrived: [{job: one, at: 2026-05-11 07:10}]");
  for (const PlannedTask& task : plan.tasks) CHECK(task.set_up >= test::at("2026-05-11", 7, 10));
  CHECK(end_of(plan) < test::at("2026-05-12", 0));
}

TEST_CASE("work under way ends where it began, and its station and welder are taken until then") {
  const std::string started = "started: [{operation: one/w/J1/fit, at: 2026-05-11 06:30, station: S1, welder: A}]";
  const auto [shop, plan] = one(started, test::at("2026-05-11", 7));
  REQUIRE(shop.work.begun.size() == 1);
  const Begun& begun = shop.work.begun[0];
  CHECK(begun.start == test::at("2026-05-11", 6, 30));
  CHECK(begun.finish > test::at("2026-05-11", 7, 15));
  CHECK(begun.finish < test::at("2026-05-11", 7, 30));
  CHECK_FALSE(test::is_planned(shop.work, plan, "one/w/J1/fit"));
  CHECK(test::step_of(shop.work, plan, "one/w/J1/1").set_up >= begun.finish);
  for (const PlannedTask& task : plan.tasks)
    if (test::station_of(shop.work, task) == "S1" || test::lead_of(shop.work, task) == "A")
      CHECK(task.set_up >= begun.finish);
  // The fixture stands at S1.
  const PlannedTask& next = test::step_of(shop.work, plan, "one/w/J1/1");
  if (test::station_of(shop.work, next) == "S1") CHECK(next.change.tasks.empty());
}

TEST_CASE("work begun before the weekend goes on after it for what is left") {
  const std::string started = "started: [{operation: one/w/J1/fit, at: 2026-05-08 13:30, station: S1, welder: A}]";
  const auto [shop, plan] = one(started, test::at("2026-05-11", 6));
  REQUIRE(shop.work.begun.size() == 1);
  CHECK(shop.work.begun[0].finish > test::at("2026-05-11", 6, 15));
  CHECK(shop.work.begun[0].finish < test::at("2026-05-11", 6, 30));
}

TEST_CASE("a set-up that is under way keeps its station from others") {
  const std::string started = "started: [{operation: one/w/J1/fit, at: 2026-05-11 07:20, station: S1, welder: A}]";
  const auto [shop, plan] = one(started, test::at("2026-05-11", 7));
  for (const PlannedTask& task : plan.tasks)
    if (test::station_of(shop.work, task) == "S1" || test::lead_of(shop.work, task) == "A")
      CHECK(task.set_up >= shop.work.begun[0].finish);
}

TEST_CASE("what was begun by somebody who does not come back is planned anew, and that is said") {
  const auto [shop, plan] =
      one("started: [{operation: one/w/J1/fit, at: 2026-05-11 06:30, station: S1, welder: A}]\n"
          "absent: [{welder: A, from: 2026-05-11 06:45, until: 2027-12-31}]",
          test::at("2026-05-11", 7));
  CHECK(test::lead_of(shop.work, test::step_of(shop.work, plan, "one/w/J1/fit")) == "B");
  CHECK(render(shop.diagnostics).find("one/w/J1/fit is under way") != std::string::npos);
}

TEST_CASE("what is done is not planned, and its station stands as it left it") {
  const std::string done =
      "done: [{operation: one/w/parts, start: 2026-05-11 06:00, finish: 2026-05-11 06:05, station: S1},"
      " {operation: one/w/J1/fit, start: 2026-05-11 06:30, finish: 2026-05-11 07:00, station: S1, welder: A}]";
  const auto [shop, plan] = one(done, test::at("2026-05-11", 7));
  CHECK(plan.tasks.size() == 3);
  CHECK(shop.work.done.size() == 2);
  for (const PlannedTask& task : plan.tasks) {
    CHECK(test::station_of(shop.work, task) == "S1");  // without any set-up
    CHECK(task.change.tasks.empty());
  }
}

TEST_CASE("what stands mounted now counts for more than what was done there") {
  const std::string done =
      "done: [{operation: one/w/J1/fit, start: 2026-05-11 06:30, finish: 2026-05-11 07:00, station: S1}]\n"
      "mounted: [{station: S1, process: 135, job: two, weldment: two/w}]";
  const std::vector<std::string> jobs = {test::small_job("one", "", joints),
                                         test::small_job("two", "", test::small_joint("K1"))};
  const auto [shop, plan] = planned(jobs, done, test::at("2026-05-11", 7));
  for (const PlannedTask& task : plan.tasks)
    if (test::station_of(shop.work, task) == "S1" && shop.work.problem.tasks[task.task].name == "two/w/K1/fit")
      CHECK(task.change.tasks.empty());
  CHECK(plan.levels.change == 30 * 60);  // papers and fixture of one of them, at S2
}

TEST_CASE("blocked work and what follows it stay out") {
  const std::string chain =
      test::small_joint("J1") + test::small_joint("J2", ", after: [J1]") + test::small_joint("J3");
  const std::vector<std::string> jobs = {test::small_job("one", "", chain)};
  const auto [shop, plan] = planned(jobs, "blocked: [{joint: one/w/J1, why: no drawing}]");
  CHECK(test::withheld_joints(shop, "one", false) == std::set<std::string>{"J1", "J2"});
  CHECK(test::why_withheld(shop, "J1").find("no drawing") != std::string::npos);
  CHECK(test::why_withheld(shop, "J2").find("waits for one/w/J1") != std::string::npos);
  CHECK(test::is_planned(shop.work, plan, "one/w/J3/1"));
  const auto [part, part_plan] = planned(jobs, "blocked: [{operation: one/w/J1/1, why: no wire}]");
  CHECK(test::is_planned(part.work, part_plan, "one/w/J1/fit"));
  CHECK_FALSE(test::is_planned(part.work, part_plan, "one/w/J1/1"));
  CHECK_FALSE(test::is_planned(part.work, part_plan, "one/w/J2/fit"));
}

TEST_CASE("pinned work is done where, when and by whom it is pinned") {
  const auto [shop, plan] = one("pinned: [{operation: one/w/J2/1, station: S2, start: 2026-05-11 10:00, welder: B}]");
  const PlannedTask& task = test::step_of(shop.work, plan, "one/w/J2/1");
  CHECK(test::station_of(shop.work, task) == "S2");
  CHECK(test::lead_of(shop.work, task) == "B");
  CHECK(task.set_up >= test::at("2026-05-11", 10));
}

TEST_CASE("an order in a hurry goes first") {
  const std::vector<std::string> jobs = {
      test::small_job("one", "due: 2026-05-11 12:00\n", joints),
      test::small_job("two", "due: 2026-05-15\n", test::small_joint("K1") + test::small_joint("K2"))};
  const std::string down = "down: [{station: S2, from: 2026-05-11, until: 2026-05-20}]\n";
  const auto [calm, calm_plan] = planned(jobs, down);
  CHECK(test::step_of(calm.work, calm_plan, "one/w/J1/1").finish <
        test::step_of(calm.work, calm_plan, "two/w/K1/1").start);
  const auto [shop, plan] = planned(jobs, down + "rush: [{job: two, due: 2026-05-11 09:30, late_weight: 50}]");
  CHECK(shop.work.problem.orders[1].due == test::at("2026-05-11", 9, 30));
  CHECK(shop.work.problem.orders[1].weight == 50);
  CHECK(test::step_of(shop.work, plan, "two/w/K2/1").finish < test::step_of(shop.work, plan, "one/w/J1/1").start);
}

TEST_CASE("overtime is worked on the day for which it is asked") {
  std::string many;
  for (const char* id : {"J1", "J2", "J3", "J4", "J5", "J6"}) many += test::small_joint(id);
  const std::vector<std::string> jobs = {test::small_job("one", "due: 2026-05-11 16:00\n", many)};
  const std::string down = "down: [{station: S2, from: 2026-05-11, until: 2026-05-20}]\n";
  const auto [plain, plain_plan] = planned(jobs, down);
  CHECK(end_of(plain_plan) > test::at("2026-05-12", 6));
  const auto [shop, plan] = planned(jobs, down + "overtime: [{date: 2026-05-11, shift: day}]");
  CHECK(end_of(plan) > test::at("2026-05-11", 14));
  CHECK(end_of(plan) <= test::at("2026-05-11", 16));
  CHECK(plan.late.empty());
}

TEST_CASE("an operation that there is not is refused at its place") {
  for (const std::string words :
       {"done: [{operation: one/w/J9/1, start: 2026-05-11 06:00, finish: 2026-05-11 07:00, station: S1}]",
        "started: [{operation: one/w/J9/1, at: 2026-05-11 06:00, station: S1}]",
        "blocked: [{operation: one/w/J9/1, why: rain}]", "pinned: [{operation: one/w/J9/1, station: S1}]"}) {
    CAPTURE(words);
    test::LoadedShop shop =
        test::read_shop({test::small_job("one", "", joints)}, test::small_rates(), monday, words + "\n");
    CHECK_FALSE(shop_work(shop.asked(), shop.diagnostics));
    REQUIRE(shop.diagnostics.list.size() == 1);
    CHECK(shop.diagnostics.list[0].message == "there is no operation 'one/w/J9/1'");
    CHECK(shop.diagnostics.list[0].place.line == 2);
  }
}
