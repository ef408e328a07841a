// The example shop for heavy plate: preheat that is not stated, parts that cool between passes, a late shift that may
// weld little, a furnace that does not wait.
#include <doctest/doctest.h>

#include "loaded_shop.hpp"
#include "schedule/capacity.hpp"
#include "schedule/remedies.hpp"

using namespace seambook;

namespace {

const std::vector<std::string> files = {"marlgannet/machine-base.yaml", "marlgannet/bracket-repair.yaml",
                                        "marlgannet/coolant-tank.yaml", "marlgannet/coolant-manifold.yaml"};
const char* const unstated[] = {"B06", "B08", "B10", "B15", "B17"};

/// States a preheat on the joints that lack it.
void state_preheat(std::string& text) {
  for (const char* joint : unstated) {
    const std::size_t line = text.find("id: " + std::string(joint) + ",");
    if (line == std::string::npos) return;
    text.insert(text.find(", after:", line), ", preheat: 100 degC");
  }
}

struct Planned {
  test::LoadedShop shop;
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
};
const Planned& planned() {
  static const Planned of{test::example_shop(files, test::at("2026-09-07", 0))};
  return of;
}
const Planned& heated() {
  static const Planned of{test::example_shop(files, test::at("2026-09-07", 0), "", state_preheat)};
  return of;
}

bool is_of(const std::string& name, const std::string& joint) { return name.find("/" + joint + "/") != name.npos; }

/// Whether other work of its station lies between two runs of a joint.
bool other_work_between(const test::LoadedShop& shop, const Plan& plan, const std::string& joint) {
  bool begun = false, other = false;
  std::string station;
  for (const PlannedTask& task : plan.tasks) {
    const bool ours = is_of(shop.work.problem.tasks[task.task].name, joint);
    if (ours && other) return true;
    if (ours) begun = true, station = test::station_of(shop.work, task);
    if (!ours && begun && test::station_of(shop.work, task) == station) other = true;
  }
  return false;
}

}  // namespace

TEST_CASE("thick joints without a word on preheat stay off the floor") {
  const auto& [shop, plan] = planned();
  CHECK(plan_violations(shop.work.problem, plan).empty());
  CHECK(test::withheld_joints(shop, "machine-base", true) ==
        std::set<std::string>{"B06", "B08", "B10", "B14", "B15", "B17"});  // B14: lifted on, its hold not released
  for (const char* joint : unstated) {
    CHECK(test::why_withheld(shop, joint).find("no preheat is stated") != std::string::npos);
    for (const ShopTask& task : shop.work.problem.tasks) CHECK_FALSE(is_of(task.name, joint));
  }
  CHECK(test::is_planned(shop.work, plan, "machine-base/base/B14/1"));
  CHECK(test::withheld_joints(shop, "machine-base", false) == std::set<std::string>{"B16"});  // follows B15
}

TEST_CASE("while a part cools its station does other work") {
  const auto& [shop, plan] = planned();
  // All other work of the heavy bay follows B01.
  CHECK(other_work_between(shop, plan, "B02"));
  CHECK(other_work_between(shop, plan, "B03"));
}

TEST_CASE("the repair is welded on the first late shift by the one who may weld with electrodes") {
  const auto& [shop, plan] = planned();
  for (const PlannedTask& task : plan.tasks) {
    const std::string& name = shop.work.problem.tasks[task.task].name;
    if (!is_of(name, "X01") && !is_of(name, "X02")) continue;
    CAPTURE(name);
    if (name.find("/finish") != name.npos) continue;
    CHECK(test::lead_of(shop.work, task) == "H2");
    CHECK(task.set_up >= test::at("2026-09-07", 14));
    CHECK(task.finish <= test::at("2026-09-07", 22));
  }
  for (const LateOrder& late : plan.late) CHECK(shop.work.problem.orders[late.order].name != "bracket-repair");
}

TEST_CASE("the late shift welds of the base only what its welder may") {
  for (const auto& [shop, plan] : {planned(), heated()}) {
    for (const PlannedTask& task : plan.tasks) {
      const TaskRef& ref = shop.work.refs[task.task];
      const bool welding = std::any_of(ref.steps.begin(), ref.steps.end(),
                                       [](const TaskStep& step) { return step.kind == StepKind::passes; });
      if (shop.jobs[ref.job].name != "machine-base" || !ref.joint || !welding) continue;
      const std::string& id = shop.jobs[ref.job].joints[*ref.joint].id;
      CAPTURE(id);
      if (test::lead_of(shop.work, task) == "H2")
        CHECK(std::set<std::string>{"B07", "B15", "B16", "B17"}.count(id) == 1);
    }
  }
}

TEST_CASE("with preheat stated the furnace's day is overrun, who is short is named, and something helps") {
  const auto& [shop, plan] = heated();
  CHECK(test::withheld_joints(shop, "machine-base", true) == std::set<std::string>{"B14"});
  bool furnace = false;
  for (const LateOrder& late : plan.late)
    furnace = furnace || shop.work.problem.orders[late.order].due == test::at("2026-09-15", 8);
  CHECK(furnace);
  bool short_of_h1 = false;
  for (const Overload& over : overloads(shop.work.problem)) {
    CHECK(over.needed > over.open);
    short_of_h1 = short_of_h1 || (over.person && shop.work.problem.people[over.number].stamp == "H1");
  }
  CHECK(short_of_h1);
  const auto help = remedies(shop.asked(), plan, test::short_search());
  REQUIRE_FALSE(help.empty());
  CHECK(std::tuple(help[0].undone_after, help[0].late_after) < std::tuple(help[0].undone_before, help[0].late_before));
}
