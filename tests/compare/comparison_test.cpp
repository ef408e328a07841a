// Whether an investment pays: a worked break-even by hand, the cabinet's beam against its arc minutes, and laws.
#include "compare/comparison.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

#include "../estimate/shop_files.hpp"
#include "compare/drivers.hpp"
#include "compare/verdict.hpp"

using namespace seambook;

namespace {

const char* const four_seams = R"(format: 1
job: four seams
base_metal: "1.4301"
quantities: [1]
weldments:
  - name: sheet
    bought: 1 EUR each
    joints:
      - {id: corner, weld: square, thickness: 1.5 mm, length: 1000 mm, procedure: TIG, alternatives: LASER, passes: 1, finish: brushed}
      - {id: inside, weld: square, thickness: 1.5 mm, length: 1000 mm, procedure: TIG, alternatives: LASER, passes: 1, finish: hidden}
      - {id: frame, weld: square, thickness: 2 mm, length: 1000 mm, procedure: MAG, alternatives: LASER, passes: 1, finish: dressed}
      - {id: rib, weld: square, thickness: 2 mm, length: 1000 mm, procedure: MAG, alternatives: LASER, passes: 1, finish: hidden}
)";

std::vector<test::RateFile> four_seams_rates(const std::string& old = {}, const std::string& instead = {}) {
  std::string text = test::file_text(SEAMBOOK_ROOT "/tests/compare/four_seams_rates.yaml");
  if (!old.empty()) {
    REQUIRE(text.find(old) != std::string::npos);
    text.replace(text.find(old), old.size(), instead);
  }
  return {{"rates.yaml", text}};
}

test::LoadedJob loaded_seams(const std::string& old = {}, const std::string& instead = {}) {
  test::LoadedJob loaded = test::load_text(four_seams, four_seams_rates(old, instead));
  REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
  return loaded;
}

double metres_of(const std::optional<Length<>>& x) { return x ? x->si : -1; }

}  // namespace

// By hand. A year: (45000 - 4500)/6 = 6750, interest (45000 + 4500)/2 × 6 % = 1485, upkeep 2250, checks 2700: 13185.
// A metre, at 54 an hour (0.90 a minute) less 0.35 of windows and nozzles:
//   corner  7.75 + 16 - (1.25 + 2.5 + 5.8) = 14.2 min: 12.43;  13185/12.43 = 1061 m
//   inside  7.75 - 3.75 = 4.0 min: 3.25;  4057 m
//   frame   1.65 + 3 - (3.75 + 1.6) = -0.7 min: -0.98;  rib  1.65 - 3.75 = -2.1 min: -2.24;  never
// A derived example: its inputs are common practice, no source.
TEST_CASE("a worked break-even is reproduced and two seams never pay") {
  const test::LoadedJob loaded = loaded_seams();
  const Comparison c = compare(*loaded.book, *loaded.job);
  REQUIRE(c.scenarios.size() == 1);
  const ScenarioWorth& stated = c.scenarios.front();
  CHECK(stated.cost.fixed.si == doctest::Approx(13185));
  struct Row {
    double minutes, saved, metres;
  };
  const Row rows[] = {{14.2, 12.43, 1060.74}, {4.0, 3.25, 4056.92}, {-0.7, -0.98, -1}, {-2.1, -2.24, -1}};
  REQUIRE(stated.families.size() == std::size(rows));
  for (std::size_t k = 0; k < std::size(rows); ++k) {
    CAPTURE(c.ways.families[c.both[k]].words);
    CHECK(stated.families[k].minutes_saved.si / 60 == doctest::Approx(rows[k].minutes).epsilon(1e-9));
    CHECK(stated.families[k].saved.si == doctest::Approx(rows[k].saved).epsilon(1e-9));
    CHECK(metres_of(break_even_metres(stated.cost, stated.families[k])) ==
          doctest::Approx(rows[k].metres).epsilon(1e-5));
  }
  // Only the two that save are counted: 12.43 + 3.25 a year over two metres.
  CHECK(stated.worth.worth.si == doctest::Approx(15.68));
  CHECK(stated.worth.suited.si == doctest::Approx(2));
  CHECK(metres_of(break_even(*loaded.book->investment, stated).metres_year) == doctest::Approx(13185 / 7.84));
  CHECK_FALSE(break_even(*loaded.book->investment, stated).payback_years.has_value());
}

TEST_CASE("an hour that is not sold again is worth its avoidable cost and the lower view decides") {
  const test::LoadedJob loaded = loaded_seams("  upkeep: 5 %", "  upkeep: 5 %\n  avoidable_rate: 30 EUR/h");
  const FamilyWorth<double> corner = compare(*loaded.book, *loaded.job).scenarios.front().families.front();
  CHECK(corner.saved_loaded.si == doctest::Approx(12.43));
  CHECK(corner.saved_avoidable.si == doctest::Approx(14.2 * 0.5 - 0.35));
  CHECK(corner.saved.si == corner.saved_avoidable.si);
  const test::LoadedJob told =
      loaded_seams("  upkeep: 5 %", "  upkeep: 5 %\n  avoidable_rate: 30 EUR/h\n  labour_value: loaded");
  CHECK(compare(*told.book, *told.job).scenarios.front().families.front().saved.si == doctest::Approx(12.43));
}

TEST_CASE("scenarios change fit-up and finish and metres and price") {
  const test::LoadedJob loaded = loaded_seams("  basis: assumption\n  source: worked example\n",
                                              "  scenarios: [{name: bad, capital: 120 %, fit_up: 200 %, finish: 50 %, "
                                              "metres: 70 %}]\n  basis: assumption\n  source: worked example\n");
  const ScenarioWorth bad = compare(*loaded.book, *loaded.job).scenarios.at(1);
  // 54000: 8100 + 1782 + 2700 + 2700. Corner: 12.43 - 2.5 × 0.9 - 10.2 × 0.9 / 2 = 5.59; inside: 3.25 - 2.25 = 1.
  CHECK(bad.cost.fixed.si == doctest::Approx(15282));
  CHECK(bad.families[0].saved.si == doctest::Approx(5.59));
  CHECK(bad.families[1].saved.si == doctest::Approx(1));
  CHECK(bad.families[0].metres_year.si == doctest::Approx(0.7));
}

TEST_CASE("more orders a year scale what is saved and nothing of what it costs") {
  const test::LoadedJob once = loaded_seams();
  test::LoadedJob often = loaded_seams();
  often.job->per_year = {{2500, first_job_source}};
  const ScenarioWorth a = compare(*once.book, *once.job).scenarios.front();
  const ScenarioWorth b = compare(*often.book, *often.job).scenarios.front();
  CHECK(b.worth.worth.si == doctest::Approx(2500 * a.worth.worth.si));
  CHECK(b.cost.fixed.si == a.cost.fixed.si);
  // 39200 a year less 4950 of upkeep and running: 34250; 45000/34250 = 1.314 years.
  const BreakEven even = break_even(*often.book->investment, b);
  REQUIRE(even.payback_years.has_value());
  CHECK(*even.payback_years == doctest::Approx(45000 / 34250.0));
  CHECK(*even.discounted_years > *even.payback_years);
  CHECK(b.worth.present_value.si > 0);
  CHECK(verdict(*often.book, compare(*often.book, *often.job)).find("pays at this year's seams") != std::string::npos);
}

// 6 pieces: the joints that the cabinet welds by laser and names an arc procedure for. Plain sums of weld length over
// travel speed, computed outside the program from the joint list.
TEST_CASE("the cabinet takes 81.6 beam minutes or 434.7 arc minutes and saves far less floor time") {
  const test::LoadedJob loaded = test::load_job("wash-down-cabinet.yaml");
  REQUIRE(loaded.job.has_value());
  const Comparison c = compare(*loaded.book, *loaded.job);
  double beam = 0, arc = 0, metres = 0, beam_floor = 0, arc_floor = 0;
  for (std::size_t f = 0; f < c.judged.size(); ++f) {
    const Joint& joint = loaded.job->joints[c.ways.families[f].joints.front()];
    if (joint.alternatives.empty()) continue;
    const auto way_of = [&](const std::string& process) -> const WaySums& {
      for (std::size_t w = 0; w < c.ways.families[f].ways.size(); ++w)
        if (loaded.book->processes[c.ways.families[f].ways[w].process].number == process) return c.sums[f][w];
      throw std::runtime_error("no way by " + process);
    };
    const Totals &laser = way_of("521").totals, &other = way_of("141").totals;
    beam += 6 * laser.arc.si / 60, arc += 6 * other.arc.si / 60, metres += 6 * laser.weld_length.si;
    beam_floor += 6 * laser.floor.si / 3600, arc_floor += 6 * other.floor.si / 3600;
  }
  CHECK(beam == doctest::Approx(81.6026).epsilon(1e-5));
  CHECK(arc == doctest::Approx(434.7).epsilon(1e-3));
  CHECK(metres == doctest::Approx(57.5).epsilon(1e-2));
  CHECK(arc_floor / beam_floor < 2);  // while the arc times stand as 5.3 to 1
}

TEST_CASE("two jobs together save what both save and the investment is paid once") {
  const test::LoadedJob loaded = loaded_seams();
  const Comparison one = compare(*loaded.book, *loaded.job);
  const Comparison jobs[] = {one, one, one};
  const Comparison all = together(*loaded.book, jobs);
  CHECK(all.scenarios.front().worth.worth.si == doctest::Approx(3 * one.scenarios.front().worth.worth.si));
  CHECK(all.scenarios.front().cost.fixed.si == one.scenarios.front().cost.fixed.si);
  CHECK(all.metres_year.si == doctest::Approx(3 * one.metres_year.si));
  CHECK(metres_of(break_even(*loaded.book->investment, all.scenarios.front()).metres_year) ==
        doctest::Approx(metres_of(break_even(*loaded.book->investment, one.scenarios.front()).metres_year)));
}

TEST_CASE("a first year that saves less is earned like the price") {
  test::LoadedJob whole = loaded_seams(), part = loaded_seams("  upkeep: 5 %", "  upkeep: 5 %\n  first_year: 60 %");
  whole.job->per_year = part.job->per_year = {{2500, first_job_source}};
  const ScenarioWorth a = compare(*whole.book, *whole.job).scenarios.front();
  const ScenarioWorth b = compare(*part.book, *part.job).scenarios.front();
  // 40 % of 39200 a year is not saved in the first: 15680, worth 15680/1.06 today.
  CHECK(b.worth.learning.si == doctest::Approx(15680));
  CHECK(b.worth.present_value.si == doctest::Approx(a.worth.present_value.si - 15680 / 1.06));
  CHECK(*break_even(*part.book->investment, b).payback_years == doctest::Approx((45000 + 15680) / 34250.0));
}

TEST_CASE("the drivers are the slopes of what is left a year") {
  const test::LoadedJob loaded = loaded_seams();
  const std::vector<Sensitivity> all = drivers(*loaded.book, *loaded.job, compare(*loaded.book, *loaded.job));
  REQUIRE_FALSE(all.empty());
  const double before = compare(*loaded.book, *loaded.job).scenarios.front().worth.left.si;
  const auto slope = [&](const std::string& words) {
    for (const Sensitivity& s : all)
      if (s.words == words) return s.per_percent.si;
    return 0.0;
  };
  const struct {
    const char *words, *old, *instead;
  } changes[] = {{"labour welder, rate", "rate: 54 EUR/h", "rate: 54.54 EUR/h"},
                 {"finish brushed, time", "time: 16 min/m", "time: 16.16 min/m"},
                 {"process 521, close fit-up", "fit_up_extra: 2.5 min/m", "fit_up_extra: 2.525 min/m"},
                 {"laser cell, cell", "price: 45000 EUR", "price: 45450 EUR"}};
  for (const auto& change : changes) {
    CAPTURE(change.words);
    const test::LoadedJob moved = loaded_seams(change.old, change.instead);
    const double after = compare(*moved.book, *moved.job).scenarios.front().worth.left.si;
    CHECK(after != before);
    CHECK(slope(change.words) == doctest::Approx(after - before).epsilon(1e-6));
  }
}

TEST_CASE("what cannot be welded by the investment says why") {
  std::string text = four_seams;
  for (std::size_t at; (at = text.find("alternatives: LASER, ")) != std::string::npos;) text.erase(at, 21);
  const test::LoadedJob unnamed =
      test::load_text(text, four_seams_rates("positions: [PA], beam_power", "positions: [PC], beam_power"));
  REQUIRE(unnamed.job.has_value());
  const Comparison c = compare(*unnamed.book, *unnamed.job);
  CHECK(c.both.empty());
  CHECK(c.unsuited_year.si == doctest::Approx(4));
  for (const Judged& judged : c.judged) CHECK(judged.why_not.find("is for position PC, not PA") != std::string::npos);
  CHECK(verdict(*unnamed.book, c).find("does not pay here") != std::string::npos);
}
