#include "resolve/qualified.hpp"

#include <doctest/doctest.h>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

/// The light example shop with one more welder, who has this qualification and no other.
test::LoadedJob shop_with(const std::string& qualification, const std::string& joint) {
  std::vector<test::RateFile> files = test::rate_texts();
  files.push_back(
      {"z.yaml",
       "format: 1\nqualification_lapses: 6 months\nwelders:\n  - {stamp: W, grade: welder, qualifications: [" +
           qualification + "]}\n"});
  return test::load_text(
      "format: 1\njob: a\nbase_metal: S235\nfinish: F1\nweldments:\n  - name: a\n    parts: 2\n"
      "    free_issue: true\n    joints:\n      - {" +
          joint + "}\n",
      files);
}

/// Of that welder.
WelderFit fit_of(const std::string& qualification, const std::string& joint, std::optional<Date> date = {}) {
  const test::LoadedJob loaded = shop_with(qualification, joint);
  CAPTURE(render(loaded.diagnostics));
  REQUIRE(loaded.job);
  return welders_for(*loaded.book, loaded.job->joints.at(0), date).back();
}

const std::string fillet =
    "weld: fillet, leg: 3 mm, thickness: [12 mm, 4 mm], length: 100 mm, process: 135, position: ";
const std::string ring = "weld: fillet, leg: 3 mm, thickness: 4 mm, process: 135, position: PB, ";
const std::string seam = "weld: square, thickness: 3 mm, length: 100 mm, process: 135, position: PA";

}  // namespace

TEST_CASE("a qualification covers a joint, or the reason is told in words") {
  const struct {
    std::string qualification, joint, reason;  // no reason: covered
  } rows[] = {
      {"{process: 135, groups: 1, positions: PB}", fillet + "PB", ""},
      {"{process: 141, groups: 1, positions: PB}", fillet + "PB", "no qualification for process 135"},
      {"{process: 135, groups: 8, positions: PB}", fillet + "PB", "base-metal group 1.1 not covered"},
      {"{process: 135, groups: 1, positions: [PA, PB]}", fillet + "PF", "PF not covered"},
      // The thinner member is 4 mm, the thicker one does not count.
      {"{process: 135, groups: 1, positions: PB, thickness: [1 mm, 4 mm]}", fillet + "PB", ""},
      {"{process: 135, groups: 1, positions: PB, thickness: [1 mm, 3.9 mm]}", fillet + "PB",
       "thickness 4 mm above 3.9 mm"},
      {"{process: 135, groups: 1, positions: PB, thickness: [5 mm, 20 mm]}", fillet + "PB",
       "thickness 4 mm below 5 mm"},
      {"{process: 135, groups: 1, positions: PB, welds: groove}", fillet + "PB", "fillet welds not covered"},
      {"{process: 135, groups: 1, positions: PA, welds: groove}", seam, ""},
      {"{process: 135, groups: 1, positions: PA, welds: fillet}", seam, "groove welds not covered"},
      {"{process: 135, groups: 1, positions: PB, forms: tube}", fillet + "PB", "plate not covered"},
      {"{process: 135, groups: 1, positions: PB, forms: plate}", ring + "outside_diameter: 60 mm", "tube not covered"},
      {"{process: 135, groups: 1, positions: PB, forms: plate}", ring + "length: 188 mm, tube: 60 mm",
       "tube not covered"},
      {"{process: 135, groups: 1, positions: PB, diameter: 60 mm}", ring + "outside_diameter: 60 mm", ""},
      {"{process: 135, groups: 1, positions: PB, diameter: 60 mm}", ring + "outside_diameter: 200 mm", ""},
      {"{process: 135, groups: 1, positions: PB, diameter: 61 mm}", ring + "outside_diameter: 60 mm",
       "outside diameter 60 mm below 61 mm"},
      {"{process: 135, groups: 1, positions: PB, diameter: [20 mm, 59 mm]}", ring + "outside_diameter: 60 mm",
       "outside diameter 60 mm above 59 mm"},
      // Of several, the one that comes furthest tells why.
      {"{process: 135, groups: 8, positions: PB}, {process: 135, groups: 1, positions: PA}", fillet + "PB",
       "PB not covered"},
  };
  for (const auto& row : rows) {
    CAPTURE(row.qualification);
    CAPTURE(row.joint);
    const WelderFit fit = fit_of(row.qualification, row.joint);
    CHECK(fit.qualified == row.reason.empty());
    CHECK(fit.reason == row.reason);
  }
}

TEST_CASE("qualifications end, and lapse when the process is not used") {
  const std::string all = "{process: 135, groups: 1, positions: PB, ";
  const WelderFit last = fit_of(all + "until: 2026-05-13}", fillet + "PB", Date{2026, 5, 13});
  CHECK(last.qualified);
  REQUIRE(last.until);
  CHECK(iso(*last.until) == "2026-05-13");
  CHECK(fit_of(all + "until: 2026-05-13}", fillet + "PB", Date{2026, 5, 14}).reason == "expired 2026-05-13");
  CHECK(fit_of(all + "until: 2026-05-13}", fillet + "PB").qualified);  // no date is asked about
  // Six months after 14 November is 14 May.
  CHECK(fit_of(all + "last_used: 2025-11-14}", fillet + "PB", Date{2026, 5, 14}).qualified);
  CHECK(fit_of(all + "last_used: 2025-11-14}", fillet + "PB", Date{2026, 5, 15}).reason ==
        "lapsed: not used since 2025-11-14");
  // Six months after 31 August is the last day of February.
  const WelderFit short_month =
      fit_of(all + "last_used: 2025-08-31, until: 2026-12-31}", fillet + "PB", Date{2026, 2, 28});
  CHECK(short_month.qualified);
  CHECK(iso(*short_month.until) == "2026-02-28");
  CHECK_FALSE(fit_of(all + "last_used: 2025-08-31}", fillet + "PB", Date{2026, 3, 1}).qualified);
  // The one that ends last counts.
  const std::string two =
      "{process: 135, groups: 1, positions: PB, until: 2026-06-30}, {process: 135, groups: 1, "
      "positions: PB, until: 2026-09-30, basis_note: in-house test}";
  const WelderFit later = fit_of(two, fillet + "PB", Date{2026, 5, 1});
  CHECK(iso(*later.until) == "2026-09-30");
  CHECK(later.note == "in-house test");
}

TEST_CASE("a joint by two processes needs both, and the earlier end counts") {
  const std::string both =
      "weld: single_v, thickness: 4 mm, length: 100 mm, position: PA, passes: [{procedure: "
      "ST-PR, count: 1}, {procedure: SG-B4, count: 1}], base_metal: \"1.4301\"";
  const std::string tig = "{process: 141, groups: 8, positions: PA, until: 2026-06-30}";
  const std::string mag = "{process: 135, groups: 8, positions: PA, until: 2026-05-31}";
  CHECK(fit_of(tig, both).reason == "no qualification for process 135");
  CHECK(fit_of(mag, both).reason == "no qualification for process 141");
  const WelderFit fit = fit_of(tig + ", " + mag, both, Date{2026, 5, 1});
  CHECK(fit.qualified);
  CHECK(iso(*fit.until) == "2026-05-31");
}

TEST_CASE("only one welder of the example shop may weld its tubes, until the day before the closed one") {
  const test::LoadedJob loaded = test::load_job("pipe-set.yaml");
  REQUIRE(loaded.job);
  for (const Joint& joint : loaded.job->joints) {
    CHECK(joint.plan.qualified);
    CHECK(tube_of(joint).has_value());
    const std::vector<WelderFit> fits = welders_for(*loaded.book, joint, Date{2026, 5, 13});
    for (std::size_t w = 0; w < fits.size(); ++w) {
      CAPTURE(loaded.book->welders[w].stamp);
      CHECK(fits[w].qualified == (loaded.book->welders[w].stamp == "Q2"));
    }
    CHECK(welders_for(*loaded.book, joint, Date{2026, 5, 15}).at(1).reason == "expired 2026-05-13");
  }
}

TEST_CASE("of the machine base the late shift may weld four joints, by the thinner member of each") {
  const test::LoadedJob loaded = test::load_job("marlgannet/machine-base.yaml");
  REQUIRE(loaded.job);
  REQUIRE(loaded.book->welders.at(1).stamp == "H2");
  std::string late;
  for (const Joint& joint : loaded.job->joints)
    if (welders_for(*loaded.book, joint, Date{2026, 9, 7}).at(1).qualified) late += joint.id + " ";
  CHECK(late == "B07 B15 B16 B17 ");
}

TEST_CASE(
    "nobody may weld the subframe's gussets upwards: one is not qualified for it, one has lapsed, one welds steel") {
  const test::LoadedJob loaded = test::load_job("saltbriar/subframe.yaml");
  REQUIRE(loaded.job);
  const Joint& gusset = loaded.job->joints.at(2);
  REQUIRE(gusset.id == "F03");
  const std::vector<WelderFit> fits = welders_for(*loaded.book, gusset, Date{2026, 6, 1});
  REQUIRE(fits.size() == 3);
  CHECK(fits[0].reason == "3F not covered");
  CHECK(fits[1].reason == "lapsed: not used since 2025-11-14");
  CHECK(fits[2].reason == "no qualification for process GMAW (131)");
  // Turned to lie flat it is no question.
  Joint flat = gusset;
  flat.position = "PB";
  CHECK(welders_for(*loaded.book, flat, Date{2026, 6, 1}).at(0).qualified);
}
