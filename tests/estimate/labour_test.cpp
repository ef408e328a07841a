// Labour elements, waiting, tests, grades and both labour methods of one job, worked by hand beside each case.
#include <doctest/doctest.h>

#include "estimate/element_sums.hpp"
#include "estimate/gather_labour.hpp"
#include "quote/quote.hpp"
#include "shop_files.hpp"

using namespace seambook;

namespace {

const std::string evidence = ", basis: assumption, source: invented for a test}\n";

/// Two fillets of 1 m on a weldment of 20 kg in two parts.
const std::string job_text =
    "format: 1\njob: frame\nquantities: [1, 10]\nweldments:\n"
    "  - {name: frame, parts: 2, mass: 20 kg, base_metal: S235, bought: 0 EUR each, joints: [\n"
    "      {weld: fillet, leg: 5 mm, thickness: 8 mm, length: 1000 mm, count: 2, procedure: CG-F5, passes: 1}]}\n";

std::string elements(const std::vector<std::string>& entries) {
  std::string text = "labour_elements:\n";
  for (const std::string& entry : entries) text += "  - {" + entry + evidence;
  return text;
}

test::LoadedJob loaded_with(const std::string& more_rates, const std::string& job = job_text) {
  std::vector<test::RateFile> rates = test::rate_texts();
  if (!more_rates.empty()) rates.push_back({"more.yaml", "format: 1\n" + more_rates});
  test::LoadedJob loaded = test::load_text(job, rates);
  INFO(render(loaded.diagnostics));
  REQUIRE(loaded.job.has_value());
  return loaded;
}

Estimate estimated(const test::LoadedJob& loaded) { return estimate(*loaded.book, *loaded.job); }

double minutes_of(const RowFigures<double>& row, LabourKind kind) {
  return row.joint.labour.elements.of[static_cast<std::size_t>(kind)].si / 60;
}
double minutes_of(const WeldmentFigures<double>& own, LabourKind kind) {
  return own.elements.of[static_cast<std::size_t>(kind)].si / 60;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != text.npos);
  return text.replace(at, from.size(), to);
}

}  // namespace

TEST_CASE("elements are counted by what their entries say") {
  const Estimate before = estimated(loaded_with(""));
  const test::LoadedJob loaded = loaded_with(elements(
      {"element: cleaning, per: metre, time: 3 min/m", "element: visual_inspection, per: joint, time: 2 min",
       "element: visual_inspection, per: weld_metre, time: 1 min/m", "element: straightening, per: share, share: 10 %",
       "element: repair, per: share, share: 2 %, multiple: 4",
       "element: pickling, per: joint, time: 30 min, attended: false", "element: packing, per: kg, time: 0.1 min/kg",
       "element: papers, per: weldment, time: 15 min", "element: handling, per: part, time: 3 min"}));
  const Estimate after = estimated(loaded);
  const RowFigures<double>& row = after.joints[0];
  const double welding = (row.passes[0].arc + row.passes[0].labour.start + row.passes[0].labour.interpass).si / 60;
  CHECK(minutes_of(row, LabourKind::cleaning) == doctest::Approx(6));           // 2 m × 3 min/m
  CHECK(minutes_of(row, LabourKind::visual_inspection) == doctest::Approx(6));  // 2 × 2 min + 2 m × 1 min/m
  CHECK(minutes_of(row, LabourKind::straightening) == doctest::Approx(0.1 * welding));
  CHECK(minutes_of(row, LabourKind::repair) == doctest::Approx(0.02 * 4 * welding));
  CHECK(row.joint.labour.elements.waiting.si / 60 == doctest::Approx(60));            // 2 × 30 min, nobody attends
  CHECK(minutes_of(after.weldments[0], LabourKind::packing) == doctest::Approx(2));   // 20 kg × 0.1 min/kg
  CHECK(minutes_of(after.weldments[0], LabourKind::papers) == doctest::Approx(15));   // one weldment
  CHECK(minutes_of(after.weldments[0], LabourKind::handling) == doctest::Approx(6));  // 2 parts × 3 min
  const double more = joint_totals(row).floor.si / 60 - joint_totals(before.joints[0]).floor.si / 60;
  CHECK(more == doctest::Approx((12 + 0.18 * welding) * 1.12));  // with the personal allowance of 12 %
  const double more_of_weldment = after.weldments[0].floor.si / 60 - before.weldments[0].floor.si / 60;
  CHECK(more_of_weldment == doctest::Approx(23 * 1.12));
}

TEST_CASE("the first entry that suits is taken") {
  const test::LoadedJob loaded =
      loaded_with(elements({"element: cleaning, per: metre, time: 9 min/m, groups: [\"8\"]",
                            "element: cleaning, per: metre, time: 7 min/m, thickness: [1 mm, 7.9 mm]",
                            "element: cleaning, per: metre, time: 2 min/m, processes: [135], welds: [fillet]",
                            "element: cleaning, per: metre, time: 5 min/m"}));
  CHECK(minutes_of(estimated(loaded).joints[0], LabourKind::cleaning) == doctest::Approx(4));  // 2 m × 2 min/m
}

TEST_CASE("a bevelled edge is prepared on both members of a V and on one of a bevel") {
  const std::string rates = elements({"element: edge_preparation, per: edge_metre, time: 4 min/m"});
  const auto of = [&](const std::string& weld) {
    const std::string joint =
        "{weld: " + weld + ", thickness: 8 mm, length: 1000 mm, count: 2, procedure: CG-V8, passes: 2}";
    const std::string job =
        replaced(job_text,
                 "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 1000 mm, count: 2, procedure: CG-F5, "
                 "passes: 1}",
                 joint);
    return minutes_of(estimated(loaded_with(rates, job)).joints[0], LabourKind::edge_preparation);
  };
  CHECK(of("single_v") == doctest::Approx(16));     // 2 m × 2 edges × 4 min/m
  CHECK(of("single_bevel") == doctest::Approx(8));  // 2 m × 1 edge × 4 min/m
}

TEST_CASE("a test is charged where a joint asks for it, to its extent") {
  const std::string rates = elements({"element: ultrasonic, per: weld_metre, time: 10 min/m"});
  CHECK(minutes_of(estimated(loaded_with(rates)).joints[0], LabourKind::ultrasonic) == 0);
  const std::string tested = replaced(job_text, "passes: 1}", "passes: 1, inspection: [{method: UT, extent: 20 %}]}");
  CHECK(minutes_of(estimated(loaded_with(rates, tested)).joints[0], LabourKind::ultrasonic) == doctest::Approx(4));
}

TEST_CASE("a joint's grade overrides the grade of its process") {
  const std::string rates = "labour:\n  - {name: pipe welder, rate: 108 EUR/h" + evidence;
  const std::string job = replaced(job_text, "passes: 1}", "passes: 1, grade: pipe welder}");
  const double usual = joint_totals(estimated(loaded_with(rates)).joints[0]).labour.si;
  CHECK(joint_totals(estimated(loaded_with(rates, job)).joints[0]).labour.si == doctest::Approx(2 * usual));
}

TEST_CASE("an element of its own grade is paid at that grade's rate") {
  const std::string grades = "labour:\n  - {name: inspector, rate: 108 EUR/h" + evidence;
  const std::string own =
      grades + elements({"element: visual_inspection, per: joint, time: 6 min, grade: inspector",
                         "element: cleaning, per: metre, time: 3 min/m",
                         "element: dimensional_inspection, per: weldment, time: 15 min, grade: inspector"});
  const std::string usual = grades + elements({"element: visual_inspection, per: joint, time: 6 min",
                                               "element: cleaning, per: metre, time: 3 min/m",
                                               "element: dimensional_inspection, per: weldment, time: 15 min"});
  const std::string hard = replaced(job_text, "passes: 1}", "passes: 1, access: 150 %}");
  const Estimate dear = estimated(loaded_with(own, hard)), cheap = estimated(loaded_with(usual, hard));
  CHECK(joint_totals(dear.joints[0]).floor.si == joint_totals(cheap.joints[0]).floor.si);
  // 2 joints × 6 min × 1.5 for access × 1.12 for the allowance, at 108 in place of 54 EUR/h.
  const double more = joint_totals(dear.joints[0]).labour.si - joint_totals(cheap.joints[0]).labour.si;
  CHECK(more == doctest::Approx(2 * 6 * 1.5 * 1.12 / 60 * 54));
  const double of_weldment = dear.weldments[0].labour_cost.si - cheap.weldments[0].labour_cost.si;
  CHECK(of_weldment == doctest::Approx(15 * 1.12 / 60 * 54));
  CHECK(joint_totals(dear.joints[0]).equipment.si == joint_totals(cheap.joints[0]).equipment.si);
}

TEST_CASE("a grade of wage and burden pays an element too") {
  const std::string rates = "labour:\n  - {name: inspector, wage: 40 EUR/h, burden: 35 %" + evidence +
                            elements({"element: visual_inspection, per: joint, time: 6 min, grade: inspector"});
  const double with = joint_totals(estimated(loaded_with(rates)).joints[0]).labour.si;
  const double without = joint_totals(estimated(loaded_with("")).joints[0]).labour.si;
  CHECK(with - without == doctest::Approx(2 * 6 * 1.12 / 60 * 40 * 1.35));
}

TEST_CASE("work of the job as a whole is paid once or for each lot, whatever the quantity") {
  const std::string rates =
      "job_elements:\n  - {element: take_off, per: joint_line, time: 2 min" + evidence +
      "  - {element: papers, per: job, time: 60 min, paid: per lot" + evidence +
      "  - {element: consumable_preparation, per: job, time: 120 min, paid: per lot, attended: false" + evidence;
  const std::string job = job_text + "one_offs:\n  - {what: fixture, time: 5 h, price: 80 EUR}\n";
  const test::LoadedJob loaded = loaded_with(rates, job);
  const Quote quote = make_quote(*loaded.book, *loaded.job, estimated(loaded), {}, {2026, 5, 4});
  const auto of = [](const auto& cost, CostKind kind) { return cost[static_cast<std::size_t>(kind)].si; };
  CHECK(of(quote.inputs.once, CostKind::labour) == doctest::Approx((2.0 / 60 + 5) * 54));  // at 54 EUR/h
  CHECK(of(quote.inputs.once, CostKind::other) == doctest::Approx(80));
  CHECK(of(quote.inputs.lot, CostKind::labour) == doctest::Approx(54));
  CHECK(quote.prices[0].figures.one_offs.si == quote.prices[1].figures.one_offs.si);
  CHECK(quote.prices[1].figures.unit_cost.si == doctest::Approx(quote.cost.each.si + quote.cost.lot.si / 10));
}
