#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"

using namespace seambook;
using std::chrono::minutes;

namespace {

const std::string start = "format: 1\njob: a\nbase_metal: S235\nfinish: F1\n";
const std::string fillet = "weld: fillet, leg: 3 mm, thickness: 4 mm, length: 100 mm";

test::LoadedJob planned(const std::string& job, const std::string& weldment, const std::string& joint) {
  test::LoadedJob loaded =
      test::load_text(start + job + "weldments:\n  - name: frame\n    parts: 2\n    free_issue: true\n" + weldment +
                      "    joints:\n      - {id: P1, " + fillet + joint + "}\n      - {id: P2, " + fillet +
                      ", after: P1}\n      - {id: P3, " + fillet + "}\n");
  CAPTURE(render(loaded.diagnostics));
  REQUIRE(loaded.job);
  return loaded;
}

}  // namespace

TEST_CASE("nothing said is nothing held") {
  const test::LoadedJob loaded = planned("", "", "");
  CHECK_FALSE(loaded.job->due);
  CHECK(loaded.job->plan.late_weight == 1);
  const WeldmentPlanning& plan = loaded.job->weldments.at(0).plan;
  CHECK_FALSE(plan.split);
  CHECK(plan.crew == 1);
  CHECK(plan.vessel == Vessel::none);
  const JointPlanning& joint = loaded.job->joints.at(0).plan;
  CHECK(joint.holds.empty());
  CHECK_FALSE(joint.pinned);
  CHECK_FALSE(joint.qualified);
}

TEST_CASE("a job says when it is due, how much that counts and what goes before") {
  const test::LoadedJob loaded = planned(
      "due: 2026-05-12 12:00\nlate_weight: 2\nafter_jobs: [b, c]\nready: 2026-05-11\nblocked: waiting for drawing rev "
      "D\n",
      "", "");
  const JobPlanning& plan = loaded.job->plan;
  CHECK(iso(*loaded.job->due) == "2026-05-12");
  CHECK(plan.due_at == minutes(720));
  CHECK(plan.late_weight == doctest::Approx(2));
  CHECK(plan.after_jobs == std::vector<std::string>{"b", "c"});
  CHECK(iso(*plan.ready) == "2026-05-11T00:00");
  CHECK(plan.blocked == "waiting for drawing rev D");
  CHECK_FALSE(planned("due: 2026-05-12\n", "", "").job->plan.due_at);
}

TEST_CASE("hold points say where by their words unless they are told") {
  const struct {
    const char* written;
    HoldAt at;
    bool witness;
  } rows[] = {{"root visual", HoldAt::root, false},
              {"Root check", HoldAt::root, false},
              {"fit-up", HoldAt::fit_up, false},
              {"fit up by the foreman", HoldAt::fit_up, false},
              {"before lift", HoldAt::complete, false},
              {"{what: root visual, at: complete}", HoldAt::complete, false},
              {"{what: by the customer, at: fit_up, kind: witness}", HoldAt::fit_up, true}};
  for (const auto& row : rows) {
    CAPTURE(row.written);
    const test::LoadedJob loaded = planned("", "", std::string(", hold: ") + row.written);
    const std::vector<Hold>& holds = loaded.job->joints.at(0).plan.holds;
    REQUIRE(holds.size() == 1);
    CHECK(holds[0].at == row.at);
    CHECK(holds[0].witness == row.witness);
  }
  const test::LoadedJob two = planned("", "", ", hold: [fit-up, {what: root visual, kind: witness}]");
  CHECK(two.job->joints.at(0).plan.holds.size() == 2);
}

TEST_CASE("a joint is pinned to places, people and times of the rate book") {
  const test::LoadedJob loaded =
      planned("", "", ", pinned: {station: ST-3, start: 2026-05-12 06:30, welder: Q3}, ready: 2026-05-12T10:15");
  const JointPlanning& plan = loaded.job->joints.at(0).plan;
  REQUIRE(plan.pinned);
  CHECK(plan.pinned->station == 2u);
  CHECK(plan.pinned->welder == 2u);
  CHECK(iso(*plan.pinned->start) == "2026-05-12T06:30");
  CHECK(iso(*plan.ready) == "2026-05-12T10:15");
}

TEST_CASE("the nearest word on qualified welders counts") {
  const auto demanded = [](const test::LoadedJob& loaded, std::size_t joint) {
    return loaded.job->joints.at(joint).plan.qualified;
  };
  const test::LoadedJob all = planned("qualified: true\n", "", "");
  CHECK(demanded(all, 0));
  CHECK(demanded(all, 2));
  const test::LoadedJob but_one = planned("qualified: true\n", "", ", qualified: false");
  CHECK_FALSE(demanded(but_one, 0));
  CHECK(demanded(but_one, 1));
  CHECK_FALSE(demanded(planned("qualified: true\n", "    qualified: false\n", ""), 1));
}

TEST_CASE("a weldment goes out after all its joints, or after and before those named") {
  const auto outside = [](const std::string& entry) {
    const test::LoadedJob loaded = planned("", "    outside: [{what: stress relief, " + entry + "}]\n", "");
    return loaded.job->weldments.at(0).plan.outside.at(0);
  };
  using Joints = std::vector<std::size_t>;
  const OutsideWork all = outside("time: 32 h");
  CHECK(all.after == Joints{0, 1, 2});
  CHECK(all.before.empty());
  CHECK(all.time == minutes(32 * 60));
  const OutsideWork one = outside("after: P1, before: [P2], out: 2026-09-15 08:00, back: 2026-09-16 16:00");
  CHECK(one.after == Joints{0});
  CHECK(one.before == Joints{1});
  CHECK(iso(*one.out) == "2026-09-15T08:00");
  CHECK(iso(*one.back) == "2026-09-16T16:00");
  CHECK_FALSE(one.time);
  // What waits for a joint that waits is no part of what goes before: P2 follows P1.
  CHECK(outside("before: P1, time: 1 h").after == Joints{2});
  CHECK(outside("before: P2, time: 1 h").after == Joints{0, 2});
}

TEST_CASE("what a weldment says of its lots, people, size and dangers") {
  const test::LoadedJob loaded = planned("",
                                         "    split: 2\n    crew: 3\n    largest: 4 m\n    vessel: used\n"
                                         "    gas_free: note 12/26\n    confined: true\n    attendant: Q1\n"
                                         "    lifted_on: [P3]\n    ready: 2026-05-12 07:00\n    blocked: no plates\n",
                                         "");
  const WeldmentPlanning& plan = loaded.job->weldments.at(0).plan;
  CHECK(plan.split == 2);
  CHECK(plan.crew == 3);
  CHECK(plan.largest->si == doctest::Approx(4));
  CHECK(plan.vessel == Vessel::used);
  CHECK(plan.gas_free == "note 12/26");
  CHECK(plan.confined);
  CHECK(plan.attendant == "Q1");
  CHECK(plan.lifted_on == std::vector<std::size_t>{2});
  CHECK(iso(*plan.ready) == "2026-05-12T07:00");
  CHECK(plan.blocked == "no plates");
}

TEST_CASE("weldments may wait for others of the job, wherever these stand") {
  const std::string rest = "    parts: 2\n    free_issue: true\n    joints:\n      - {" + fillet + "}\n";
  const test::LoadedJob loaded = test::load_text(start + "weldments:\n  - name: lid\n    after: [tank, foot]\n" + rest +
                                                 "  - name: tank\n" + rest + "  - name: foot\n" + rest);
  REQUIRE(loaded.job);
  CHECK(loaded.job->weldments.at(0).plan.after == std::vector<std::size_t>{1, 2});
  CHECK(loaded.job->weldments.at(1).plan.after.empty());
}
