// Every kind of weld from a line of a job to its section and length; figures by hand beside them.
#include <doctest/doctest.h>

#include <algorithm>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

struct OneJoint {
  test::LoadedJob loaded;
  RowFigures<double> row;
};

/// The joint alone in a job, with no cap unless it states one.
OneJoint estimated(const std::string& joint) {
  OneJoint one{
      test::load_text("format: 1\njob: one\nprocedure: CG-V15\nweldments:\n  - parts: 2\n    base_metal: S235\n"
                      "    free_issue: true\n    joints:\n      - {" +
                      joint + "}\n"),
      {}};
  CAPTURE(joint);
  CAPTURE(render(one.loaded.diagnostics));
  REQUIRE(one.loaded.job);
  one.row = estimate(*one.loaded.book, *one.loaded.job).joints.at(0);
  return one;
}

bool is_locked(const OneJoint& one, const Sourced& number) {
  return number.source < first_job_source || one.loaded.job->sources[number.source - first_job_source].frozen;
}

}  // namespace

TEST_CASE("each weld's section and length") {
  struct Row {
    const char* joint;
    double section_mm2, length_mm;
  };
  const Row rows[] = {
      {"weld: fillet, legs: [6 mm, 8 mm], convexity: 0 %, thickness: 10 mm, length: 200 mm", 24, 200},
      {"weld: fillet, legs: [6 mm, 6 mm], convexity: 10 %, thickness: 10 mm, length: 200 mm", 19.8, 200},
      // (6 + 2)²/2
      {"weld: fillet, leg: 6 mm, gap: 2 mm, convexity: 0 %, thickness: 10 mm, length: 200 mm", 32, 200},
      // The deposit stays by the leg.
      {"weld: fillet, leg: 6 mm, deep_throat: 6 mm, convexity: 0 %, thickness: 10 mm, length: 200 mm", 18, 200},
      // Each side: 6 × 3 / 2 + 2/3 × 8 × 1.5 = 9 + 8
      {"weld: square, thickness: 6 mm, gap: 3 mm, excess: {width: 8 mm, height: 1.5 mm}, sides: 2, length: 200 mm", 17,
       400},
      // Partly through: 5 × 2
      {"weld: square, thickness: 10 mm, gap: 2 mm, depth: 5 mm, excess: {height: 0 mm}, length: 200 mm", 10, 200},
      // 8 × 2 + 8² × tan 30°
      {"weld: single_v, thickness: 16 mm, depth: 8 mm, gap: 2 mm, groove_angle: 60 deg, excess: {height: 0 mm}, "
       "length: 200 mm",
       52.9504172, 200},
      // 20 × 2 + 2 × 9² × tan 30°
      {"weld: double_v, thickness: 20 mm, gap: 2 mm, root_face: 2 mm, groove_angle: 60 deg, excess: {height: 0 mm}, "
       "length: 200 mm",
       133.5307436, 200},
      // 24 × 2 + (144 + 100) × tan 30°
      {"weld: double_v, thickness: 24 mm, depth: [12 mm, 10 mm], root_face: 2 mm, gap: 2 mm, groove_angle: 60 deg, "
       "excess: {height: 0 mm}, length: 200 mm",
       188.8734657, 200},
      // Two caps, each 2/3 × 10 × 1.5, on the double V above
      {"weld: double_v, thickness: 20 mm, gap: 2 mm, root_face: 2 mm, groove_angle: 60 deg, excess: {width: 10 mm, "
       "height: 1.5 mm}, length: 200 mm",
       153.5307436, 200},
      // One cap of 2/3 × 10 × 1.5, one of 2/3 × 6 × 1
      {"weld: double_v, thickness: 20 mm, gap: 2 mm, root_face: 2 mm, groove_angle: 60 deg, excess: {width: 10 mm, "
       "height: 1.5 mm}, back_excess: {width: 6 mm, height: 1 mm}, length: 200 mm",
       147.5307436, 200},
      // A tenth more than 12 × 3 + 12²/2
      {"weld: single_bevel, thickness: 12 mm, gap: 3 mm, root_face: 0 mm, groove_angle: 45 deg, excess: 10 %, "
       "length: 200 mm",
       118.8, 200},
      // The fillet over it: 5²/2 × 1.1
      {"weld: single_bevel, thickness: 12 mm, gap: 3 mm, root_face: 0 mm, groove_angle: 45 deg, reinforce: 5 mm, "
       "convexity: 10 %, length: 200 mm",
       121.75, 200},
      // Two sides of 6²/2, two fillets of 5²/2
      {"weld: double_bevel, thickness: 12 mm, gap: 3 mm, root_face: 0 mm, groove_angle: 45 deg, reinforce: 5 mm, "
       "convexity: 0 %, length: 200 mm",
       97, 200},
      // Plane geometry at 7.85 g/cm³: 3.534549 kg/m
      {"weld: single_u, thickness: 30 mm, gap: 2 mm, root_face: 3 mm, groove_angle: 20 deg, radius: 6 mm, "
       "excess: {height: 0 mm}, length: 200 mm",
       450.2609585, 200},
      // 2.002774 kg/m
      {"weld: single_j, thickness: 30 mm, gap: 2 mm, root_face: 3 mm, groove_angle: 10 deg, radius: 6 mm, "
       "excess: {height: 0 mm}, length: 200 mm",
       255.1304792, 200},
      {"weld: flare_bevel, thickness: 8 mm, radius: 10 mm, length: 200 mm", 21.4601837, 200},
      {"weld: flare_v, thickness: 8 mm, radius: 10 mm, gap: 1 mm, length: 200 mm", 52.9203673, 200},
      {"weld: plug, thickness: [8 mm, 20 mm], diameter: 20 mm", 314.1592654, 8},
      {"weld: plug, thickness: [8 mm, 20 mm], diameter: 20 mm, depth: 5 mm, count: 3", 314.1592654, 15},
      {"weld: slot, thickness: [8 mm, 20 mm], width: 12 mm, length: 40 mm", 96, 37.4247780},
      {"weld: overlay, thickness: 20 mm, width: 50 mm, layers: 2, layer_height: 3 mm, length: 200 mm", 300, 200},
      {"weld: gouged, thickness: 20 mm, depth: 10 mm, width: 12 mm, excess: {height: 0 mm}, length: 200 mm",
       104.5486678, 200},
      {"weld: fillet, leg: 6 mm, convexity: 0 %, thickness: 10 mm, around: [60 mm, 40 mm]", 18, 200},
      {"weld: fillet, leg: 6 mm, convexity: 0 %, thickness: 10 mm, outside_diameter: 60 mm, branch_on: 100000 m", 18,
       188.4955592},
      // 4 elements of 40 on one side, 3 on the other
      {"weld: fillet, leg: 6 mm, convexity: 0 %, thickness: 10 mm, length: 560 mm, element: 40 mm, pitch: 150 mm, "
       "sides: 2, layout: staggered",
       18, 280},
  };
  for (const Row& row : rows) {
    CAPTURE(row.joint);
    const OneJoint one = estimated(row.joint);
    CHECK(one.row.joint.section.si * 1e6 == doctest::Approx(row.section_mm2).epsilon(1e-7));
    CHECK(one.row.joint.weld_length.si * 1e3 == doctest::Approx(row.length_mm).epsilon(1e-7));
  }
}

TEST_CASE("what lies between staggered elements is told") {
  const OneJoint one = estimated(
      "weld: fillet, leg: 6 mm, thickness: 10 mm, length: 560 mm, element: 40 mm, pitch: 150 mm, sides: 2, "
      "layout: staggered, count: 2");
  CHECK(one.row.joint.unwelded.si * 1e3 == doctest::Approx(2 * (2 * 560 - 280)));
  CHECK(one.row.joint.weld_elements.si == 14);
  const Joint& joint = one.loaded.job->joints[0];
  CHECK(is_locked(one, joint.sides.si));
  CHECK(is_locked(one, joint.pitch.si));
  CHECK_FALSE(is_locked(one, joint.line.si));
}

TEST_CASE("a weld of one unit is the weld of another") {
  const OneJoint mm = estimated(
      "weld: double_j, thickness: 38.1 mm, gap: 3.175 mm, root_face: 3.175 mm, groove_angle: 20 deg, radius: 9.525 mm, "
      "excess: {height: 1.5875 mm}, length: 254 mm");
  const OneJoint inches = estimated(
      "weld: double_j, thickness: 1-1/2 in, gap: 1/8 in, root_face: 1/8 in, groove_angle: 20 deg, radius: 3/8 in, "
      "excess: {height: 1/16 in}, length: 10 in");
  CHECK(mm.row.joint.section.si == doctest::Approx(inches.row.joint.section.si).epsilon(1e-12));
  CHECK(mm.row.passes[0].arc.si == doctest::Approx(inches.row.passes[0].arc.si).epsilon(1e-12));
}

TEST_CASE("sizes that bind each other are locked, others stay open") {
  const OneJoint u = estimated(
      "weld: single_u, thickness: 30 mm, gap: 2 mm, root_face: 3 mm, groove_angle: 20 deg, radius: 6 mm, length: 1 m");
  const Joint& joint = u.loaded.job->joints[0];
  CHECK(is_locked(u, joint.groove.radius.si));
  CHECK(is_locked(u, joint.thickness.si));
  CHECK_FALSE(is_locked(u, joint.gap.si));
  CHECK_FALSE(is_locked(u, joint.groove_angle.si));
  const OneJoint branch =
      estimated("weld: fillet, leg: 5 mm, thickness: 6 mm, outside_diameter: 60.3 mm, branch_on: 114.3 mm");
  CHECK(is_locked(branch, branch.loaded.job->joints[0].line.si));
  CHECK(is_locked(branch, branch.loaded.job->joints[0].outside_diameter.si));
}

TEST_CASE("preparations of the rate book stand in for what a joint leaves out") {
  const OneJoint u = estimated("weld: double_u, thickness: 40 mm, length: 1 m");
  const Joint& joint = u.loaded.job->joints[0];
  CHECK(joint.groove.radius.si.value == doctest::Approx(0.006));
  CHECK(joint.groove_angle.si.value == doctest::Approx(20 * unit::degree.si));
  const OneJoint square = estimated("weld: square, thickness: 6 mm, length: 1 m, sides: 2, procedure: CG-S4");
  CHECK(square.loaded.job->joints[0].gap.si.value == doctest::Approx(0.002));
  const std::vector<std::string>& told = square.loaded.job->assumptions;
  CHECK(std::any_of(told.begin(), told.end(), [](const std::string& words) {
    return words.find("each side lays half of what the gap takes") != words.npos;
  }));
}

TEST_CASE("holes and surfaces are not tacked along a line") {
  const OneJoint plug = estimated("weld: plug, thickness: [8 mm, 20 mm], diameter: 20 mm, count: 6");
  CHECK(plug.row.joint.labour.tacks.si == 0);
  CHECK(plug.row.joint.labour.fit_up.si == 0);
  CHECK(plug.row.passes[0].arc.si > 0);
}
