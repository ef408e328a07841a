// The example shop for stainless steel: one welder for tube whose qualification ends on the eve of a closed day, and an
// order that is due at noon on the second day.
#include <doctest/doctest.h>

#include "loaded_shop.hpp"
#include "schedule/set_up_table.hpp"

using namespace seambook;

namespace {

const std::vector<std::string> files = {"brewhouse-platform.yaml", "pipe-set.yaml", "wash-down-cabinet.yaml"};

bool is_tube(const std::string& name) {
  return name.find("/P10/") != name.npos || name.find("/P11/") != name.npos || name.find("/P12/") != name.npos;
}

bool welds(const TaskRef& ref) {
  for (const TaskStep& step : ref.steps)
    if (step.kind != StepKind::finish && step.kind != StepKind::inspect) return true;
  return false;
}

struct Planned {
  test::LoadedShop shop = test::example_shop(files, test::at("2026-05-11", 0));
  Plan plan = seambook::plan(shop.work.problem, test::short_search());
};
const Planned& planned() {
  static const Planned of;
  return of;
}

std::size_t count_of(const Plan& plan, const ShopWork& work, const std::string& station, const std::string& change) {
  std::size_t count = 0;
  for (const PlannedTask& task : plan.tasks)
    for (const std::size_t c : task.change.tasks)
      count += test::station_of(work, task) == station && work.problem.model.tasks[c].name == change ? 1 : 0;
  return count;
}

}  // namespace

TEST_CASE("tube is welded by the one who may, before the qualification ends") {
  const auto& [shop, plan] = planned();
  CHECK(plan_violations(shop.work.problem, plan).empty());
  CHECK(checked_levels(shop.work.problem, plan) == plan.levels);
  CHECK(plan.unplaced.empty());
  std::size_t seen = 0;
  for (const PlannedTask& task : plan.tasks) {
    if (!is_tube(shop.work.problem.tasks[task.task].name) || !welds(shop.work.refs[task.task])) continue;
    ++seen;
    CHECK(test::lead_of(shop.work, task) == "Q2");
    CHECK(task.finish <= test::at("2026-05-14", 0));
  }
  CHECK(seen >= 3);
}

TEST_CASE("after the qualification has ended the tube is kept from the floor") {
  const test::LoadedShop shop = test::example_shop(files, test::at("2026-05-15", 0));
  const auto held = test::withheld_joints(shop, "brewhouse-platform", true);
  for (const char* joint : {"P10", "P11", "P12"}) {
    CAPTURE(joint);
    CHECK(held.count(joint) == 1);
    CHECK(test::why_withheld(shop, joint).find("Q2 (expired 2026-05-13)") != std::string::npos);
  }
  for (const ShopTask& task : shop.work.problem.tasks) CHECK_FALSE(is_tube(task.name));
}

TEST_CASE("the bay is cleaned down for stainless once, and nothing happens on the closed day") {
  const auto& [shop, plan] = planned();
  CHECK(count_of(plan, shop.work, "ST-1", "clean down for stainless") == 1);
  const Instant closed = test::at("2026-05-14", 0), next = test::at("2026-05-15", 0);
  for (const PlannedTask& task : plan.tasks) {
    const std::string& name = shop.work.problem.tasks[task.task].name;  // clang 14: no binding in a lambda
    CAPTURE(name);
    CHECK_FALSE((task.set_up >= closed && task.set_up < next));
    CHECK_FALSE((task.finish > closed && task.finish <= next));
  }
}

TEST_CASE("the pipe set is on time, and what puts it first is said") {
  const auto& [shop, plan] = planned();
  CHECK(plan.late.empty());
  CHECK(plan.levels.late == 0);
  bool said = false;
  for (const PlannedTask& task : plan.tasks) {
    if (shop.jobs[shop.work.refs[task.task].job].name == "pipe-set") CHECK(task.finish <= test::at("2026-05-12", 12));
    said = said || task.reason.find(" is due ") != std::string::npos ||
           task.reason.find("the qualification ends") != std::string::npos;
  }
  CHECK(said);
}

TEST_CASE("the minutes of the tasks are the floor minutes of the estimates, as are those of their ways") {
  const auto& [shop, plan] = planned();
  std::vector<double> tasks(shop.jobs.size()), ways(shop.jobs.size()), floors(shop.jobs.size());
  std::vector<std::size_t> count(shop.jobs.size());
  for (std::size_t t = 0; t < shop.work.refs.size(); ++t) {
    const TaskRef& ref = shop.work.refs[t];
    for (const TaskStep& step : ref.steps) tasks[ref.job] += step.labour.si;
    ways[ref.job] += static_cast<double>(shop.work.problem.tasks[t].ways.front().time.count());
    ++count[ref.job];
  }
  for (std::size_t n = 0; n < shop.jobs.size(); ++n) {
    const std::string& name = shop.jobs[n].name;
    CAPTURE(name);
    const auto pieces = static_cast<double>(shop.jobs[n].quantities.front());
    for (const auto& row : shop.estimates[n].joints) floors[n] += pieces * joint_totals(row).floor.si;
    for (const auto& weldment : shop.estimates[n].weldments) floors[n] += pieces * weldment.floor.si;
    CHECK(tasks[n] == doctest::Approx(floors[n]).epsilon(1e-9));
    CHECK(std::abs(ways[n] - floors[n]) <= 0.5 * static_cast<double>(count[n]));
  }
}
