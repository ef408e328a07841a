#include <doctest/doctest.h>

#include <algorithm>

#include "../estimate/shop_files.hpp"

using namespace seambook;

namespace {

/// jobs/bracket.yaml with one piece of its text replaced.
test::LoadedJob bracket_with(const std::string& from, const std::string& to) {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const std::size_t at = text.find(from);
  REQUIRE(at != text.npos);
  return test::load_text(text.replace(at, from.size(), to));
}

const JobSource* source_of(const Job& job, const Sourced& number) {
  if (number.source < first_job_source) return nullptr;
  return &job.sources[number.source - first_job_source];
}

bool is_frozen(const Job& job, const Sourced& number) {
  const JobSource* source = source_of(job, number);
  return source != nullptr && source->frozen;
}

bool assumes(const Job& job, const std::string& words) {
  return std::find(job.assumptions.begin(), job.assumptions.end(), words) != job.assumptions.end();
}

}  // namespace

TEST_CASE("the example jobs resolve without a complaint") {
  for (const char* name : {"bracket.yaml", "brewhouse-platform.yaml", "pipe-set.yaml", "wash-down-cabinet.yaml"}) {
    const test::LoadedJob loaded = test::load_job(name);
    CAPTURE(name);
    CAPTURE(render(loaded.diagnostics));
    CHECK(loaded.job);
    CHECK(loaded.diagnostics.list.empty());
  }
}

TEST_CASE("what the bracket leaves out is filled in") {
  const test::LoadedJob loaded = test::load_job("bracket.yaml");
  REQUIRE(loaded.job);
  const Job& job = *loaded.job;
  const RateBook& book = *loaded.book;
  std::string chosen;
  for (const Joint& joint : job.joints)
    chosen += joint.id + " " + book.procedures[joint.passes[0].procedure].name + " ";
  CHECK(chosen == "1 CG-F5 2 CG-F5 3 CG-F3 4 CG-V8 5 CG-S3 6 CG-F3 ");
  CHECK(job.joints[0].position == "PB");
  CHECK(job.joints[3].position == "PA");
  CHECK(book.finishes[job.joints[0].finish].name == "F0");
  CHECK(job.joints[1].count.si.value == 1);
  CHECK(source_of(job, job.joints[1].count.si)->place == job.joints[1].place);
  CHECK(job.joints[3].groove_angle.si.value == doctest::Approx(60 * unit::degree.si));
  CHECK(book.sources[job.joints[3].groove_angle.si.source].entry == "preparation single V 2 mm to 20 mm");
  CHECK(job.joints[4].gap.si.value == doctest::Approx(1.5e-3));
  CHECK(job.joints[3].excess_width.si.source == no_source);
  CHECK(job.joints[0].convexity.si.value == doctest::Approx(0.1));
  CHECK(job.joints[3].convexity.si.source == no_source);
  CHECK(job.weldments[0].turns.si.value == 1);
  CHECK(book.sources[job.weldments[0].turns.si.source].field == "turns two-sided");
  CHECK(book.handling[job.weldments[0].handling].name == "by hand");
  CHECK(job.quantities == std::vector<std::int64_t>{1, 10, 50});
  CHECK(assumes(job, "position PB where a fillet states none"));
  CHECK(assumes(job, "bracket: turns 1, because joints have two sides, from the rate book"));
}

TEST_CASE("every number of a resolved job knows its place or its entry") {
  for (const char* name : {"bracket.yaml", "brewhouse-platform.yaml", "pipe-set.yaml", "wash-down-cabinet.yaml"}) {
    const test::LoadedJob loaded = test::load_job(name);
    REQUIRE(loaded.job);
    const Job& job = *loaded.job;
    for (const Joint& joint : job.joints) {
      CAPTURE(joint.id);
      CHECK(source_of(job, joint.count.si) != nullptr);
      CHECK(source_of(job, joint.sides.si) != nullptr);
      CHECK(source_of(job, joint.thickness.si)->place.line == joint.place.line);
      CHECK((joint.line.si.source != no_source) != (joint.outside_diameter.si.source != no_source));
      CHECK_FALSE(joint.passes.empty());
    }
    for (const JobSource& source : job.sources) CHECK(source.place.line > 0);
  }
}

TEST_CASE("one change of the bracket resolves as expected") {
  struct Change {
    std::string from, to, procedure;
    std::size_t joint = 0;
  };
  // Procedures by reading rates/procedures-*.yaml.
  const Change changes[] = {
      {"{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4}",
       "{weld: fillet, leg: 6 mm, thickness: 8 mm, length: 240 mm, count: 4}", "CG-F6", 0},
      {"{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4}",
       "{weld: fillet, throat: 3.5 mm, thickness: 8 mm, length: 240 mm, count: 4}", "CG-F5", 0},
      {"length: 180 mm", "outside_diameter: 60.3 mm", "CG-S3", 4},
      {"thickness: 8 mm, length: 300 mm", "thickness: 12 mm, length: 300 mm", "CG-V15", 3},
      {"length: 120 mm, sides: 2", "length: 120 mm", "CG-F5", 1},
      {"element: 40 mm, pitch: 150 mm", "element: 40 mm, gap_e: 110 mm", "CG-F3", 2},
      {"base_metal: S235", "base_metal: S355J2", "CG-F5", 0},
      {"length: 240 mm, count: 4", "length: 240 mm, count: 4, procedure: CG-F6, passes: 2", "CG-F6", 0},
      {"length: 240 mm, count: 4", "length: 240 mm, count: 4, position: 3F", "CG-F5V", 0},
      {"length: 240 mm, count: 4", "length: 240 mm, count: 9, finish: F2", "CG-F5", 0},
      {"bought: 38 EUR each", "base_metal_by: mass", "CG-F5", 0},
      {"process: 135", "process: GMAW", "CG-F5", 0},
      {"thickness: 3 mm, length: 180 mm", "thickness: 1/8 in, length: 7 in", "CG-S4", 4},
  };
  for (const Change& change : changes) {
    const test::LoadedJob loaded = bracket_with(change.from, change.to);
    CAPTURE(change.to);
    CAPTURE(render(loaded.diagnostics));
    REQUIRE(loaded.job);
    CHECK_FALSE(loaded.diagnostics.has_errors());
    CHECK(loaded.book->procedures[loaded.job->joints[change.joint].passes[0].procedure].name == change.procedure);
  }
}

TEST_CASE("a gap between weld elements becomes a pitch and line and pitch keep clear of the element") {
  const test::LoadedJob loaded = bracket_with("pitch: 150 mm", "gap_e: 110 mm");
  REQUIRE(loaded.job);
  const Joint& joint = loaded.job->joints[2];
  CHECK(joint.pitch.si.value == doctest::Approx(0.150));
  CHECK(is_frozen(*loaded.job, joint.element.si));
  const auto limits = [&](const Sourced& number) {
    return loaded.job->sources[number.source - first_job_source].limits;
  };
  CHECK(limits(joint.pitch.si).low == doctest::Approx(0.040));
  CHECK(limits(joint.pitch.si).low_open);
  CHECK(limits(joint.line.si).low == doctest::Approx(0.040));
}

TEST_CASE("a seam without cap keeps a gap on the sheet, one with a cap may close it") {
  const std::string square = "{weld: square, thickness: 3 mm, length: 180 mm}";
  const auto gap_may_close = [&](const std::string& excess) {
    const test::LoadedJob loaded =
        bracket_with(square, "{weld: square, thickness: 3 mm, length: 180 mm, gap: 1 mm, excess: " + excess + "}");
    INFO(render(loaded.diagnostics));
    REQUIRE(loaded.job);
    const Sourced& gap = loaded.job->joints[4].gap.si;
    const Limits& limits = loaded.job->sources[gap.source - first_job_source].limits;
    CHECK(limits.low == 0);
    return !limits.low_open;
  };
  CHECK(gap_may_close("{width: 5 mm, height: 1 mm}"));
  CHECK_FALSE(gap_may_close("{width: 5 mm, height: 0 mm}"));
  // The resolver agrees: no gap and no cap is refused.
  CHECK_FALSE(bracket_with(square,
                           "{weld: square, thickness: 3 mm, length: 180 mm, gap: 0 mm, excess: {width: 5 mm, "
                           "height: 0 mm}}")
                  .job);
}

TEST_CASE("what can choose another procedure or preparation is locked") {
  const test::LoadedJob chosen = test::load_job("bracket.yaml");
  REQUIRE(chosen.job);
  CHECK(is_frozen(*chosen.job, chosen.job->joints[0].leg.si));
  CHECK(is_frozen(*chosen.job, chosen.job->joints[0].thickness.si));
  CHECK_FALSE(is_frozen(*chosen.job, chosen.job->joints[0].line.si));
  CHECK(is_frozen(*chosen.job, chosen.job->weldments[0].mass.si));  // chooses how it is turned
  const test::LoadedJob named = bracket_with("length: 240 mm, count: 4", "length: 240 mm, count: 4, procedure: CG-F5");
  REQUIRE(named.job);
  CHECK_FALSE(is_frozen(*named.job, named.job->joints[0].leg.si));
  CHECK(named.job->joints[0].choice.words.empty());
}

TEST_CASE("the nearest statement of metal process and finish wins") {
  const test::LoadedJob loaded = test::load_text(
      "format: 1\njob: levels\nbase_metal: S235\nprocess: 141\nfinish: F1\nweldments:\n"
      "  - parts: 1\n    free_issue: true\n    process: 135\n    joints:\n"
      "      - {weld: fillet, leg: 3 mm, thickness: 4 mm, length: 100 mm, finish: F2}\n"
      "      - {weld: fillet, leg: 3 mm, thickness: 3 mm, length: 100 mm, base_metal: '304', process: 141}\n"
      "      - {weld: fillet, leg: 3 mm, thickness: 4 mm, length: 100 mm, after: ['1', '2']}\n");
  CAPTURE(render(loaded.diagnostics));
  REQUIRE(loaded.job);
  const Job& job = *loaded.job;
  std::string got;
  for (const Joint& joint : job.joints)
    got += loaded.book->base_metals[joint.base_metal].name + " " +
           loaded.book->procedures[joint.passes[0].procedure].name + " " + loaded.book->finishes[joint.finish].name +
           "\n";
  CHECK(got == "S235 CG-F3 F2\n1.4301 ST-C3 F1\nS235 CG-F3 F1\n");
  CHECK(job.after == std::vector<Edge>{{0, 2}, {1, 2}});
  CHECK(job.weldments[0].name == "levels");
  CHECK(job.weldments[0].turns.si.source == no_source);
}

TEST_CASE("two members keep their thicknesses apart and one value is one number") {
  const test::LoadedJob loaded = test::load_job("wash-down-cabinet.yaml");
  REQUIRE(loaded.job);
  const Joint& boss = loaded.job->joints[11];  // C12: [10 mm, 1.5 mm]
  CHECK(boss.thickness.si.value == doctest::Approx(0.010));
  CHECK(boss.thickness_second.si.value == doctest::Approx(0.0015));
  CHECK(boss.thickness.si.source != boss.thickness_second.si.source);
  const Joint& vent = loaded.job->joints[12];  // C13: [1.5 mm, 1.5 mm]
  CHECK(vent.thickness.si.source != vent.thickness_second.si.source);
  const test::LoadedJob bracket = test::load_job("bracket.yaml");
  CHECK(bracket.job->joints[0].thickness.si.source == bracket.job->joints[0].thickness_second.si.source);
}
