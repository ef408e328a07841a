// The four orders of the invented shop that works in US customary units. Expected figures are plain sums by hand (weld
// length × passes / travel speed; elements = floor((line - element)/pitch) + 1), computed outside the program from the
// joint lists.
#include <doctest/doctest.h>

#include <cstdio>
#include <regex>

#include "shop_orders.hpp"

using namespace seambook;

namespace {

constexpr test::Order orders[] = {
    {"saltbriar/ramp.yaml", 4},
    {"saltbriar/subframe.yaml", 1},
    {"saltbriar/tool-enclosure.yaml", 3},
    {"saltbriar/hinge-set.yaml", 4},
};

const test::Expected expected_findings[] = {
    {"saltbriar/ramp.yaml", "R02", "in on a member of 0.125 in", "planted: leg 3/16 in on a 1/8 in angle"},
    {"saltbriar/ramp.yaml", "R09", "in on a member of 0.25 in", "planted: leg 5/16 in on a 1/4 in rail"},
    {"saltbriar/tool-enclosure.yaml", "E08", "in on a member of 0.125 in", "planted: leg 3/16 in on 0.125 in sheet"},
    {"saltbriar/tool-enclosure.yaml", "E01", "procedure A-T125C: process 141, filler ER4043-3/32",
     "common in shops and debatable: silicon rod on 5052, which has about 2.5 % magnesium"},
    {"saltbriar/tool-enclosure.yaml", "E02", "and 7 more: procedure A-T125: process 141, filler ER4043-3/32",
     "the same"},
    {"saltbriar/tool-enclosure.yaml", "E03", "and 1 more: procedure A-T090: process 141, filler ER4043-3/32",
     "the same"},
};

double number_of(const std::string& text) {
  const std::size_t slash = text.find('/');
  if (slash == std::string::npos) return std::stod(text);
  return std::stod(text.substr(0, slash)) / std::stod(text.substr(slash + 1));
}

/// Every amount in customary units written anew in metric ones; conversions exact by definition (1959 agreement on inch
/// and pound), titles and notes left alone.
std::string in_metric(const std::string& text) {
  struct Unit {
    const char* written;
    const char* metric;
    double factor;
  };
  constexpr double pound = 0.45359237, cubic_foot = 0.3048 * 0.3048 * 0.3048;
  static const Unit units[] = {
      {"lb/in3", "kg/m3", pound / (0.0254 * 0.0254 * 0.0254)},
      {"USD/lb", "USD/kg", 1 / pound},
      {"USD/cf", "USD/m3", 1 / cubic_foot},
      {"in/min", "mm/min", 25.4},
      {"min/ft", "min/m", 1 / 0.3048},
      {"cfh", "L/min", cubic_foot * 1000 / 60},
      {"in2", "mm2", 25.4 * 25.4},
      {"in", "mm", 25.4},
      {"lb", "kg", pound},
  };
  static const std::regex amount(
      R"(([:,] |\[)(\d+(?:/\d+|\.\d+)?) (lb/in3|USD/lb|USD/cf|in/min|min/ft|cfh|in2|in|lb)(?=[,\]}\n]))");
  std::string out;
  auto rest = text.cbegin();
  std::smatch found;
  while (std::regex_search(rest, text.cend(), found, amount)) {
    out.append(rest, found[0].first);
    for (const Unit& unit : units) {
      if (found[3] != unit.written) continue;
      char digits[40];
      std::snprintf(digits, sizeof digits, "%.17g", number_of(found[2]) * unit.factor);
      out += found[1].str() + digits + " " + unit.metric;
    }
    rest = found[0].second;
  }
  return out.append(rest, text.cend());
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  return text.replace(at, from.size(), to);
}

}  // namespace

TEST_CASE("the orders in customary units come to their arc minutes, counts and lengths") {
  const test::ShopSums sums = test::sums_of(orders);
  CHECK(sums.rows == 32);
  CHECK(sums.joints_made == 488);
  CHECK(sums.weld_elements == 1123);
  CHECK(sums.weld_length_m == doctest::Approx(110.2229).epsilon(1e-5));
  auto arc = sums.arc_min;
  CHECK(arc["131"] + arc["135"] == doctest::Approx(138.0619).epsilon(1e-5));  // GMAW by its letters
  CHECK(arc["135"] == doctest::Approx(18.4).epsilon(1e-9));
  CHECK(arc["141"] == doctest::Approx(164.6042).epsilon(1e-5));
  CHECK(arc.size() == 3);
}

TEST_CASE("the orders in customary units take their filler and gas") {
  test::ShopSums sums = test::sums_of(orders);
  // By hand from wire feed × wire section × density × arc minutes; the program goes by the section of the weld, within
  // what the procedures were made to agree.
  CHECK(sums.filler_kg["ER5356-3/64"] == doctest::Approx(3.34).epsilon(0.06));
  CHECK(sums.filler_kg["ER4043-3/32"] == doctest::Approx(0.40).epsilon(0.06));
  CHECK(sums.filler_kg["ER70S-6-0.035"] == doctest::Approx(0.99).epsilon(0.06));
  CHECK(sums.gas_l["100Ar"] == doctest::Approx(3812.5).epsilon(1e-4));
  CHECK(sums.gas_l["90Ar10CO2"] == doctest::Approx(303.935).epsilon(1e-4));
}

TEST_CASE("the orders in customary units take about the hours that a rough build-up gives") {
  // Sums of fit-up, tacks, starts, arc, cleaning, finish and turning by hand; a band, not a golden value.
  test::ShopSums sums = test::sums_of(orders);
  CHECK(sums.floor_h["saltbriar/ramp.yaml"] == doctest::Approx(22.0).epsilon(0.25));
  CHECK(sums.floor_h["saltbriar/subframe.yaml"] == doctest::Approx(3.2).epsilon(0.25));
  CHECK(sums.floor_h["saltbriar/tool-enclosure.yaml"] == doctest::Approx(17.6).epsilon(0.25));
  CHECK(sums.floor_h["saltbriar/hinge-set.yaml"] == doctest::Approx(3.6).epsilon(0.25));
  CHECK(test::all_floor_h(sums) > 35);
  CHECK(test::all_floor_h(sums) < 58);
  // Elements × minutes a start by process; metres × minutes by finish.
  CHECK(sums.element_h["starts"] == doctest::Approx(3.9).epsilon(0.02));
  CHECK(sums.element_h["finish"] == doctest::Approx(4.6).epsilon(0.02));
}

TEST_CASE("the orders in customary units are found to have their planted faults and the listed ones") {
  test::check_findings(orders, expected_findings);
}

TEST_CASE("the orders written in metric take the same minutes and cost the same") {
  std::vector<test::RateFile> rates = test::rate_texts("jobs/saltbriar/rates");
  for (test::RateFile& file : rates) file.text = in_metric(file.text);
  for (const test::Order& order : orders) {
    CAPTURE(order.file);
    const test::LoadedJob customary = test::load_job(order.file);
    const std::string text = in_metric(test::file_text(SEAMBOOK_ROOT "/jobs/" + std::string(order.file)));
    CHECK(!std::regex_search(text, std::regex(R"(\d (in|lb)[,\]}\n])")));
    const test::LoadedJob metric = test::load_text(text, rates);
    REQUIRE_MESSAGE(metric.job.has_value(), render(metric.diagnostics));
    const Estimate a = estimate(*customary.book, *customary.job), b = estimate(*metric.book, *metric.job);
    for (std::size_t j = 0; j < a.joints.size(); ++j) {
      const Totals x = joint_totals(a.joints[j]), y = joint_totals(b.joints[j]);
      CHECK(x.arc.si == doctest::Approx(y.arc.si).epsilon(1e-9));
      CHECK(x.floor.si == doctest::Approx(y.floor.si).epsilon(1e-9));
      CHECK(x.filler.si == doctest::Approx(y.filler.si).epsilon(1e-9));
      CHECK(welding_cost(x).si == doctest::Approx(welding_cost(y).si).epsilon(1e-9));
      CHECK(x.weld_elements == y.weld_elements);
    }
  }
}

TEST_CASE("a wire of 0.045 in is 1.143 mm, not 1.2 mm") {
  std::vector<test::RateFile> rates = test::rate_texts("jobs/saltbriar/rates");
  for (test::RateFile& file : rates) {
    if (file.name == "materials.yaml") file.text = replaced(file.text, "diameter: 0.035 in", "diameter: 0.045 in");
  }
  const test::LoadedJob loaded =
      test::load_text(test::file_text(SEAMBOOK_ROOT "/jobs/saltbriar/hinge-set.yaml"), rates);
  REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
  CHECK(loaded.book->fillers.at(2).diameter.si.value == doctest::Approx(0.001143).epsilon(1e-12));
  const Estimate estimated = estimate(*loaded.book, *loaded.job);
  // H02 by S-F316: 420 in/min of 0.045 in wire at 96 % deposition.
  const double expected = 420 * 25.4 / 60 * 3.14159265358979 / 4 * 1.143 * 1.143 * 0.96;  // mm3/s
  CHECK(estimated.joints.at(1).passes.at(0).volume_rate.si * 1e9 == doctest::Approx(expected).epsilon(1e-9));
}
