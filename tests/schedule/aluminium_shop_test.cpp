// The example shop for aluminium: US units, half Fridays, two joints that nobody may weld, steel and aluminium at one
// bench.
#include <doctest/doctest.h>

#include <map>

#include "loaded_shop.hpp"

using namespace seambook;

namespace {

const std::vector<std::string> files = {"saltbriar/ramp.yaml", "saltbriar/subframe.yaml",
                                        "saltbriar/tool-enclosure.yaml", "saltbriar/hinge-set.yaml"};

struct Planned {
  test::LoadedShop shop = test::example_shop(files, test::at("2026-06-01", 0));
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
};
const Planned& planned() {
  static const Planned of;
  return of;
}

}  // namespace

TEST_CASE("vertical fillets stay off the floor: one welder's range does not cover them, the other's lapsed") {
  const auto& [shop, plan] = planned();
  CHECK(test::withheld_joints(shop, "ramp", true) == std::set<std::string>{"R08"});
  CHECK(test::withheld_joints(shop, "subframe", true) == std::set<std::string>{"F03"});
  for (const char* joint : {"R08", "F03"}) {
    CAPTURE(joint);
    const std::string why = test::why_withheld(shop, joint);
    CAPTURE(why);
    CHECK(why.find("K4 (") != std::string::npos);
    CHECK(why.find("not covered)") != std::string::npos);
    CHECK(why.find("K7 (") != std::string::npos);
    CHECK(why.find("laps") != std::string::npos);
    for (const ShopTask& task : shop.work.problem.tasks)
      CHECK(task.name.find(std::string("/") + joint + "/") == std::string::npos);
  }
}

TEST_CASE("the mixed bench is cleaned down for aluminium once, and the plan keeps every rule") {
  const auto& [shop, plan] = planned();
  CHECK(plan_violations(shop.work.problem, plan).empty());
  CHECK(checked_levels(shop.work.problem, plan) == plan.levels);
  std::map<std::string, int> count;
  for (const PlannedTask& task : plan.tasks)
    for (const std::size_t c : task.change.tasks) ++count[shop.work.problem.model.tasks[c].name];
  CHECK(count["clean down for aluminum"] <= 1);
  CHECK(count["clear up after aluminum"] <= 1);
}

TEST_CASE("on the half Friday nothing goes on after ten") {
  const auto& [shop, plan] = planned();
  const Instant noon = test::at("2026-06-05", 10), monday = test::at("2026-06-08", 0);
  for (const PlannedTask& task : plan.tasks) {
    CHECK_FALSE((task.set_up >= noon && task.set_up < monday));
    CHECK_FALSE((task.finish > noon && task.finish <= monday));
  }
}

TEST_CASE("an order is done by its date or said to be late") {
  const auto& [shop, plan] = planned();
  for (std::size_t o = 0; o < shop.work.problem.orders.size(); ++o) {
    Instant finish = Instant::min();
    for (const PlannedTask& task : plan.tasks)
      if (shop.work.problem.tasks[task.task].order == o) finish = std::max(finish, task.finish);
    const bool said =
        std::any_of(plan.late.begin(), plan.late.end(), [&](const LateOrder& late) { return late.order == o; });
    CHECK(said == (finish > shop.work.problem.orders[o].due));
  }
  const auto& due = shop.work.problem.orders[2];
  CHECK(due.name == "tool-enclosure");
  CHECK(clock_word(due.due) == "Mon 8 Jun 10:00");
}
