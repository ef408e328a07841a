#include <doctest/doctest.h>

#include "complaints.hpp"
#include "read/job_text.hpp"

using namespace seambook;

namespace {

struct TakenOff {
  JobText job;
  Diagnostics diagnostics;
};

/// A job of one weldment whose joints come from `csv`, after one joint of its own.
TakenOff take_off(const std::string& csv, const std::string& units = "") {
  TakenOff taken;
  const std::uint32_t file = taken.diagnostics.add_file(
      "jobs/a.yaml",
      "format: 1\n" + units +
          "job: a\nweldments:\n  - joints_from: a.csv\n    joints: [{id: J1, weld: edge, length: 1 m}]\n");
  const auto find = [&](const std::string& name) {
    return name == "a.csv" ? std::optional<std::string>(csv) : std::nullopt;
  };
  taken.job = read_job(file, find, taken.diagnostics);
  return taken;
}

}  // namespace

TEST_CASE("a take-off gives joints behind those of the job") {
  const TakenOff taken = take_off(
      "id,weld,leg,thickness,length,count,after,purge\n"
      "J2,fillet,5 mm,3 mm / 10 mm,240 mm,4,J1,\n"
      "J3,square,,1/8 in,1 m,,J1 J2,true\n");
  CHECK(render(taken.diagnostics) == "");
  const std::vector<JointText>& joints = taken.job.weldments.at(0).joints;
  REQUIRE(joints.size() == 3);
  CHECK(joints[0].id->text == "J1");
  CHECK(joints[1].leg->value.si == doctest::Approx(0.005));
  CHECK(joints[1].thickness->low.value.si == doctest::Approx(0.003));
  CHECK(joints[1].thickness->high.value.si == doctest::Approx(0.010));
  CHECK(!joints[1].thickness->one_value);  // though both stand at one place
  CHECK(joints[2].thickness->one_value);
  CHECK(joints[1].count->value == 4);
  CHECK(!joints[1].purge);
  CHECK(joints[1].after.size() == 1);
  CHECK(!joints[2].leg);
  CHECK(!joints[2].count);
  CHECK(joints[2].thickness->low.value.si == doctest::Approx(0.003175));
  CHECK(joints[2].after.at(1).text == "J2");
  CHECK(joints[2].purge->value);
  CHECK(where(taken.diagnostics, joints[2].length->place) == "jobs/a.csv:3:19");
}

TEST_CASE("a take-off takes the units of its job") {
  const TakenOff taken = take_off("weld;leg;length\nfillet;5;240\n", "units: {length: mm}\n");
  CHECK(render(taken.diagnostics) == "");
  CHECK(taken.job.weldments.at(0).joints.at(1).length->value.si == doctest::Approx(0.240));
}

TEST_CASE("a heading gives a unit to the bare numbers below it") {
  const TakenOff taken = take_off("weld,leg (mm),thickness [in],length\nfillet,5,1/8 / 4 mm,\"2'-6 1/2\"\"\"\n");
  CHECK(render(taken.diagnostics) == "");
  const JointText& joint = taken.job.weldments.at(0).joints.at(1);
  CHECK(joint.leg->value.si == doctest::Approx(0.005));
  CHECK(joint.thickness->low.value.si == doctest::Approx(0.003175));
  CHECK(joint.thickness->high.value.si == doctest::Approx(0.004));
  CHECK(joint.length->value.si == doctest::Approx(0.7747));
}

TEST_CASE("columns without heading or text and the capitals of a spreadsheet program are no faults") {
  const TakenOff taken = take_off("weld;purge;length;;\r\nedge;TRUE;1 m;;\r\nedge;FALSE;1 m;;\r\n;;;;\r\n");
  CHECK(render(taken.diagnostics) == "");
  REQUIRE(taken.job.weldments.at(0).joints.size() == 3);
  CHECK(taken.job.weldments[0].joints[1].purge->value);
  CHECK(!taken.job.weldments[0].joints[2].purge->value);
}

TEST_CASE("rows that cannot be read do not hide the faults of others") {
  const TakenOff taken = take_off("weld,leg\nfillet,3,5 mm\nfillet,5 mn\n\"fillet\"x,5 mm\n");
  CHECK(complaints_given(taken.diagnostics) ==
        "2 3 fields under 2 headings; put a text with ',' in double quotes; decimals take a point\n"
        "3 'leg': unknown unit 'mn'; did you mean 'mm'?\n"
        "4 text after the closing quote; write a quote inside a quoted field twice\n");
}

TEST_CASE("what is a name or in words may look like a date") {
  const TakenOff taken =
      take_off("id,weld,length,mark,note\n5-2-2026,edge,1 m,see 10-May,10-May\nA-mar-1,edge,1 m,,\n");
  CHECK(render(taken.diagnostics) == "");
}

TEST_CASE("a sheet without a workbook is refused") {
  Diagnostics diagnostics;
  const std::uint32_t file = diagnostics.add_file(
      "a.yaml", "format: 1\njob: a\nweldments:\n  - {joints_from: a.csv, joints_sheet: S}\n  - joints_sheet: S\n");
  read_job(
      file, [](const std::string&) { return std::optional<std::string>("weld,leg\nfillet,5 mm\n"); }, diagnostics);
  CHECK(complaints_given(diagnostics) ==
        "4 'joints_sheet': the take-off is no workbook; leave the key out\n"
        "5 'joints_sheet' without a take-off; name its workbook with 'joints_from'\n");
}

TEST_CASE("faults of a take-off at their places in its file") {
  TakenOff taken = take_off(
      "weld,leg,lenght,back_excess,colour,passes\n"
      "fillet,5,1 m,,red,\n"
      ",5 mm,,,,2\n"
      "fillet,5 mm,,,,A\n");
  CHECK(
      complaints_given(taken.diagnostics) ==
      "1 unknown heading 'lenght'; did you mean 'length'?\n"
      "1 'back_excess': a column cannot hold it; write such joints in the job file\n"
      "1 unknown heading 'colour'; headings known here: id, mark, note, weld, joint_type, count, sides, passes, after, "
      "alternatives, lap, purge, backgouge, "
      "access, "
      "leg, throat, thickness, length, outside_diameter, element, pitch, gap_e, gap, gap_max, root_face, groove_angle, "
      "convexity, legs, deep_throat, depth, radius, backing, excess, reinforce, diameter, width, layers, layer_height, "
      "branch_on, branch_angle, around, corner_radius, layout, hold, tube, ready, blocked, base_metal, process, "
      "procedure, "
      "position, finish, "
      "grade, qualified, range, preheat, interpass_max, heat_input_max\n"
      "2 'leg': a length needs a unit; units of length: mm, cm, m, in, inch, \", ft, ', dm, feet, inches\n"
      "3 the key 'weld' is missing; fillet, square, single_v, double_v, "
      "single_bevel, double_bevel, single_u, double_u, single_j, double_j, flare_bevel, flare_v, edge, plug, slot, "
      "overlay "
      "or gouged\n"
      "4 'passes': a number was expected, not 'A'; write a plain number such as 8 or 3.2\n");
  for (const Diagnostic& d : taken.diagnostics.list) CHECK(d.place.file == 2);
}

TEST_CASE("a take-off without joints and pairs that are none are refused") {
  CHECK(complaints_given(take_off("weld,leg\n").diagnostics) == "0 the take-off lists no joint\n");
  for (const std::string pair : {"3 mm / ", "3 mm / 4 mm / 5 mm", "3 mm/4 mm", "/"}) {
    CAPTURE(pair);
    const TakenOff taken = take_off("weld,leg,thickness\nfillet,3 mm," + pair + "\n");
    CHECK(taken.diagnostics.list.size() == 1);
    CHECK(!taken.job.weldments.at(0).joints.at(1).thickness);
  }
}

TEST_CASE("two weldments may draw on one take-off and its faults are told once") {
  Diagnostics diagnostics;
  const std::uint32_t file =
      diagnostics.add_file("a.yaml", "format: 1\njob: a\nweldments:\n  - joints_from: a.csv\n  - joints_from: a.csv\n");
  int asked = 0;
  const auto find = [&](const std::string&) {
    ++asked;
    return std::optional<std::string>("weld,leg\nfillet,0 mm\n");
  };
  const JobText job = read_job(file, find, diagnostics);
  CHECK(asked == 1);
  CHECK(complaints_given(diagnostics) == "2 'leg' must be more than 0\n");
  CHECK(job.weldments.at(0).joints.size() == 1);
  CHECK(job.weldments.at(1).joints.size() == 1);
}
