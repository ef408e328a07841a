// Root, fill, cap and back passes, gouging, limits and consumables of whole joints, each figure worked by hand beside
// it.
#include <doctest/doctest.h>

#include <algorithm>

#include "shop_files.hpp"

using namespace seambook;

namespace {

/// The plain example rates, and processes and procedures for easy sums besides.
std::vector<test::RateFile> easy_rates() {
  std::vector<test::RateFile> files = test::plain_rate_texts();
  files.push_back({"passes.yaml", test::file_text(SEAMBOOK_ROOT "/tests/estimate/passes_rates.yaml")});
  return files;
}

/// One joint of 1 m.
RowFigures<double> joint_of(const std::string& words) {
  const test::LoadedJob loaded = test::load_text(
      "format: 1\njob: j\nweldments:\n  - {name: w, parts: 2, base_metal: S235, free_issue: true, joints: [{length: 1 "
      "m, " +
          words + "}]}\n",
      easy_rates());
  INFO(words);
  for (const Diagnostic& d : loaded.diagnostics.list) CHECK_MESSAGE(d.level != Level::error, d.message);
  REQUIRE(loaded.job);
  return estimate(*loaded.book, *loaded.job).joints.front();
}

// 12 × 2 (gap) + 11² × tan 30° (groove) + 15 × 1.5 × 2/3 (cap) = 24 + 69.859 + 15 = 108.859 mm²
const std::string v_12 =
    "weld: single_v, thickness: 12 mm, gap: 2 mm, root_face: 1 mm, groove_angle: 60 deg, "
    "excess: {width: 15 mm, height: 1.5 mm}, ";

bool is_said(const test::LoadedJob& loaded, const Estimate& result, const std::string& message) {
  const std::vector<Diagnostic> found = findings(*loaded.book, *loaded.job, result);
  return std::any_of(found.begin(), found.end(), [&](const Diagnostic& d) { return d.message == message; });
}

double mm2(Area<> area) { return area.si * 1e6; }
double minutes(Time<> time) { return time.si / 60; }
doctest::Approx about(double x) { return doctest::Approx(x).epsilon(1e-4); }

}  // namespace

TEST_CASE("a fill is computed from what root and cap leave") {
  const RowFigures<double> row = joint_of(
      v_12 + "passes: [{procedure: ROOT, role: root}, {procedure: FILL}, {procedure: CAP, role: cap, count: 2}]");
  CHECK(mm2(row.joint.section) == about(108.859));
  CHECK(mm2(row.passes[0].section) == about(20));
  CHECK(row.passes[0].passes.si == 1);
  CHECK(mm2(row.passes[2].section) == about(25));  // 2 × 12.5
  // 108.859 - 20 - 25 = 63.859 mm²; a pass lays 25 × 300/250 = 30 mm² at most: 3 passes of 21.286 mm²
  CHECK(mm2(row.passes[1].section) == about(63.859));
  CHECK(row.passes[1].passes.si == 3);
  CHECK(row.passes[1].travel.si * 60e3 == about(352.34));  // 25 × 300 / 21.286 mm/min
  CHECK(minutes(row.passes[1].arc) == about(3 * 1000 / 352.34));
  CHECK(row.passes[0].travel.si * 60e3 == about(150));
}

TEST_CASE("all passes counted share the section as before") {
  const RowFigures<double> row = joint_of(
      v_12 +
      "passes: [{procedure: ROOT, role: root}, {procedure: FILL, count: 2}, {procedure: CAP, role: cap, count: 2}]");
  // They lay 20, 50 and 25 of 95 mm².
  CHECK(mm2(row.passes[0].section) == about(108.859 * 20 / 95));
  CHECK(mm2(row.passes[1].section) == about(108.859 * 50 / 95));
  CHECK(mm2(row.passes[2].section) == about(108.859 * 25 / 95));
}

TEST_CASE("what is gouged is put back by the back passes") {
  const RowFigures<double> row = joint_of(v_12 +
                                          "backgouge: {depth: 4 mm, width: 8 mm}, passes: [{procedure: ROOT, role: "
                                          "root}, {procedure: FILL}, {procedure: FILL, role: back}]");
  // π/4 × 8 × 4 = 25.133 mm², one pass of at most 30 mm² at 7500 / 25.133 = 298.4 mm/min
  CHECK(mm2(row.joint.gouged) == about(25.1327));
  CHECK(mm2(row.passes[2].section) == about(25.1327));
  CHECK(row.passes[2].passes.si == 1);
  CHECK(row.passes[2].travel.si * 60e3 == about(298.415));
  CHECK(mm2(row.passes[1].section) == about(88.859));  // 108.859 - 20
  CHECK(minutes(row.passes[2].labour.gouge) == about(7));
  CHECK(minutes(row.passes[0].labour.gouge) == 0);
  // Carbons of 1 m, and 0.60 EUR/h of the arc.
  CHECK(row.passes[2].wear_cost.si == about(1.1 + 0.6 * minutes(row.passes[2].arc) / 60));
}

TEST_CASE("a gouged joint by one procedure lays the groove too, that of the rate book where it states none") {
  const RowFigures<double> row = joint_of(v_12 + "backgouge: true, procedure: FILL");
  CHECK(mm2(row.passes[0].section) == about(108.859 + 39.2699));  // π/4 × 5 × 10
  CHECK(row.passes[0].passes.si == 5);                            // over 30
  CHECK(minutes(row.passes[0].labour.gouge) == about(7));
}

TEST_CASE("a gouged weld may charge its gouging, which adds no section") {
  const std::string repair = "weld: gouged, depth: 4 mm, width: 10 mm, thickness: 12 mm, excess: 0 %, procedure: FILL";
  const RowFigures<double> free = joint_of(repair), charged = joint_of(repair + ", backgouge: true");
  CHECK(mm2(charged.joint.laid) == about(mm2(free.joint.section)));
  CHECK(minutes(free.passes[0].labour.gouge) == 0);
  CHECK(minutes(charged.passes[0].labour.gouge) == about(7));  // 1 m × 7 min/m
  CHECK(charged.passes[0].wear_cost.si == about(free.passes[0].wear_cost.si + 1.1));
}

TEST_CASE("a limit by leg is for a fillet as full as the joint's") {
  // 6² / 2 × 1.1 = 19.8 mm² is one pass of the largest leg; 6.5² / 2 × 1.1 = 23.2 are two.
  const std::string fillet = ", convexity: 10 %, thickness: 12 mm, position: PF, procedure: TUBULAR";
  CHECK(joint_of("weld: fillet, leg: 6 mm" + fillet).passes[0].passes.si == 1);
  CHECK(joint_of("weld: fillet, leg: 6.5 mm" + fillet).passes[0].passes.si == 2);
}

TEST_CASE("electrodes lose their stubs and are counted") {
  const RowFigures<double> row =
      joint_of("weld: fillet, leg: 6 mm, convexity: 0 %, thickness: 10 mm, procedure: STICK");
  const PassFigures<double>& p = row.passes[0];
  // 18 mm² × 1 m × 7.85 = 141.3 g; 75 % × 300/350 = 64.286 %; 219.8 g; 4 electrodes of 60 g
  CHECK(p.deposit.si * 1e3 == about(141.3));
  CHECK(p.filler.si * 1e3 == about(219.8));
  CHECK(p.pieces.si == 4);
  CHECK(minutes(p.labour.electrode_change) == about(2));
  // 1.5 kg/h over 7.85 g/cm³ is 3184.7 mm³/min; over 18 mm² 176.93 mm/min
  CHECK(p.travel.si * 60e3 == about(176.93));
  CHECK(minutes(p.arc) == about(141.3 / 1500 * 60));
}

TEST_CASE("a tubular wire lays by the mass of its metre, in passes no larger than the limit") {
  const RowFigures<double> row =
      joint_of("weld: fillet, leg: 8 mm, convexity: 0 %, thickness: 12 mm, position: PF, procedure: TUBULAR");
  const PassFigures<double>& p = row.passes[0];
  // 8 m/min × 7 g/m × 85 % / 7.85 = 6063.7 mm³/min; at 100 mm/min 60.6 mm², but the limit is 6²/2 = 18: 2 passes of 16
  CHECK(p.volume_rate.si * 60e9 == about(6063.69));
  CHECK(p.passes.si == 2);
  CHECK(p.travel.si * 60e3 == about(378.98));
  // Tip by the hour, liner by the metre of passes, nozzle by the start.
  CHECK(p.wear_cost.si == about(1.2 * minutes(p.arc) / 60 / 8 + 30 * 2.0 / 5000 + 6 * 2.0 / 400));
}

TEST_CASE("flux goes by weld metal or by wire, as its ratio says") {
  const std::string joint = "weld: fillet, leg: 8 mm, convexity: 0 %, thickness: 12 mm, passes: 1, procedure: ";
  const PassFigures<double> by_deposit = joint_of(joint + "SUB-D").passes[0];
  const PassFigures<double> by_wire = joint_of(joint + "SUB-W").passes[0];
  // 32 mm² × 1 m × 7.85 = 251.2 g of weld metal, 253.74 g of wire
  CHECK(by_deposit.flux.si * 1e3 == about(276.32));
  CHECK(by_wire.flux.si * 1e3 == about(279.11));
  CHECK(by_deposit.flux_cost.si == about(0.55264));
  CHECK(by_deposit.cost.si == about(by_wire.cost.si - by_wire.flux_cost.si + by_deposit.flux_cost.si));
}

TEST_CASE("counted passes that leave nothing are said, and share what there is") {
  const test::LoadedJob loaded = test::load_text(
      "format: 1\njob: j\nweldments:\n  - {name: w, parts: 2, base_metal: S235, free_issue: true, joints: [{length: 1 "
      "m, " +
          v_12 +
          "passes: [{procedure: ROOT, role: root, count: 2}, {procedure: FILL}, {procedure: CAP, role: cap, count: "
          "8}]}]}\n",
      easy_rates());
  REQUIRE(loaded.job);
  const Estimate result = estimate(*loaded.book, *loaded.job);
  const RowFigures<double>& row = result.joints.front();
  CHECK(mm2(row.passes[0].section) == about(108.859 * 40 / 140));
  CHECK(mm2(row.passes[1].section) == 0);
  CHECK(row.passes[1].passes.si == 1);
  CHECK(row.passes[1].travel.si * 60e3 == about(500));
  CHECK(
      is_said(loaded, result,
              "joint 1: the passes counted lay 140.00 mm², the joint takes 108.86 mm²; nothing is left for the passes "
              "to be computed"));
}

TEST_CASE("a pass over the limit is said") {
  const test::LoadedJob loaded = test::load_text(
      "format: 1\njob: j\nweldments:\n  - {name: w, parts: 2, base_metal: S235, free_issue: true, joints: [{length: 1 "
      "m, weld: fillet, "
      "leg: 8 mm, convexity: 0 %, thickness: 12 mm, position: PF, procedure: TUBULAR, passes: 1}]}\n",
      easy_rates());
  REQUIRE(loaded.job);
  CHECK(is_said(loaded, estimate(*loaded.book, *loaded.job),
                "joint 1: a pass of procedure TUBULAR takes 32.00 mm², the rate book's limit in PF is 18.00 mm²"));
}
