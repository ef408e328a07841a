// The orders of the invented heavy shop. Expected figures are plain sums by hand (weld length × passes / travel speed;
// elements = floor((line - element)/pitch) + 1), computed outside the program from the joint lists.
#include <doctest/doctest.h>

#include <map>

#include "quote/quote.hpp"
#include "shop_orders.hpp"

using namespace seambook;

namespace {

constexpr test::Order orders[] = {
    {"marlgannet/machine-base.yaml", 1},
    {"marlgannet/coolant-tank.yaml", 2},
    {"marlgannet/coolant-manifold.yaml", 3},
    {"marlgannet/bracket-repair.yaml", 1},
};

constexpr const char* thick = "thick plate without a word on preheat, planted";
constexpr test::Expected expected_findings[] = {
    {"marlgannet/machine-base.yaml", "B06", "combined thickness 80 mm is more than 50 mm, and no preheat is stated",
     thick},
    {"marlgannet/machine-base.yaml", "B08", "combined thickness 55 mm is more than 50 mm, and no preheat is stated",
     thick},
    {"marlgannet/machine-base.yaml", "B10", "combined thickness 100 mm is more than 50 mm, and no preheat is stated",
     thick},
    {"marlgannet/machine-base.yaml", "B15", "combined thickness 70 mm is more than 50 mm, and no preheat is stated",
     thick},
    {"marlgannet/machine-base.yaml", "B17", "combined thickness 65 mm is more than 50 mm, and no preheat is stated",
     thick},
};

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  return text.replace(at, from.size(), to);
}

/// Unrounded price of a piece of the first quantity, with one line of the shop's prices and overhead changed.
QuotePrice first_price(const std::string& file, const std::string& from, const std::string& to) {
  std::vector<test::RateFile> rates = test::rate_texts("jobs/marlgannet/rates");
  for (test::RateFile& rate : rates) {
    if (rate.name == "shop.yaml") rate.text = replaced(rate.text, from, to);
  }
  test::LoadedJob loaded = test::load_text(test::file_text(SEAMBOOK_ROOT "/jobs/marlgannet/" + file), rates);
  REQUIRE_MESSAGE(loaded.job.has_value(), render(loaded.diagnostics));
  const auto work = sequence_jobs(*loaded.book, std::span(&*loaded.job, 1), loaded.diagnostics);
  REQUIRE(work.has_value());
  return make_quote(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job), *work, {2026, 9, 4}).prices.at(0);
}

}  // namespace

TEST_CASE("the heavy shop's orders come to their arc minutes, counts and lengths") {
  test::ShopSums sums = test::sums_of(orders);
  CHECK(sums.rows == 30);
  CHECK(sums.joints_made == 185);
  CHECK(sums.weld_elements == 419);
  CHECK(sums.weld_length_m == doctest::Approx(105.568).epsilon(1e-9));
  CHECK(sums.arc_min["135"] == doctest::Approx(202.8970).epsilon(1e-5));
  CHECK(sums.arc_min["138"] == doctest::Approx(671.5440).epsilon(1e-5));
  CHECK(sums.arc_min["136"] == doctest::Approx(213.1717).epsilon(1e-5));
  CHECK(sums.arc_min["111"] == doctest::Approx(14.5552).epsilon(1e-5));
  CHECK(sums.arc_min["141"] == doctest::Approx(135.0534).epsilon(1e-5));
  CHECK(sums.arc_min.size() == 5);
}

TEST_CASE("the heavy shop's orders take their filler and gas") {
  test::ShopSums sums = test::sums_of(orders);
  // By hand from wire feed × wire section × density × arc minutes; the program goes by the section of the weld, within
  // what the procedures were made to agree.
  CHECK(sums.filler_kg["G3Si1-1.0"] == doctest::Approx(2.00).epsilon(0.06));
  CHECK(sums.filler_kg["G3Si1-1.2"] == doctest::Approx(5.21).epsilon(0.06));
  // Cored wires by the mass of their metre: 7.6 and 7.2 g/m.
  CHECK(sums.filler_kg["MC-1.2"] == doctest::Approx(52.00).epsilon(0.06));
  CHECK(sums.filler_kg["RC-1.2"] == doctest::Approx(11.35).epsilon(0.06));
  // 14.6 min at 1.04 kg/h, 60 % of the electrode; X01 is drawn a sixth larger than its eight passes.
  CHECK(sums.filler_kg["E-basic-3.2"] == doctest::Approx(0.41).epsilon(0.20));
  CHECK(sums.filler_kg["308L-rod-1.6"] == doctest::Approx(0.38).epsilon(0.10));
  CHECK(sums.gas_l["M21"] == doctest::Approx(19577.0).epsilon(1e-4));
  CHECK(sums.gas_l["I1"] == doctest::Approx(1080.43).epsilon(1e-4));
}

TEST_CASE("the heavy shop's orders take about the hours that a rough build-up gives") {
  // Sums of fit-up, tacks, starts, arc, cleaning, finish, turning, preheat, gouging and purging by hand; a band, not a
  // golden value.
  test::ShopSums sums = test::sums_of(orders);
  CHECK(sums.floor_h["marlgannet/machine-base.yaml"] == doctest::Approx(46.9).epsilon(0.25));
  CHECK(sums.floor_h["marlgannet/bracket-repair.yaml"] == doctest::Approx(0.9).epsilon(0.25));
  CHECK(sums.floor_h["marlgannet/coolant-tank.yaml"] == doctest::Approx(6.3).epsilon(0.25));
  CHECK(sums.floor_h["marlgannet/coolant-manifold.yaml"] == doctest::Approx(12.2).epsilon(0.25));
}

TEST_CASE("the heavy shop's orders take their hours by element") {
  test::ShopSums sums = test::sums_of(orders);
  // Elements × minutes a start by process; 105.6 m × 1.5 min; 48 joints × 3 min; 10.46 m gouged × 6 min.
  CHECK(sums.element_h["starts"] == doctest::Approx(2.6).epsilon(0.02));
  CHECK(sums.element_h["finish"] == doctest::Approx(2.6).epsilon(0.02));
  CHECK(sums.element_h["purging"] == doctest::Approx(2.4).epsilon(0.02));
  CHECK(sums.element_h["gouging"] == doctest::Approx(1.05).epsilon(0.01));
  CHECK(test::all_floor_h(sums) > 50);
  CHECK(test::all_floor_h(sums) < 83);
}

TEST_CASE("the heavy shop's orders are found to have their planted faults") {
  test::check_findings(orders, expected_findings);
}

TEST_CASE("combined thickness of the heavy shop's joints counts the runs of plate") {
  const test::LoadedJob loaded = test::load_job("marlgannet/machine-base.yaml");
  REQUIRE(loaded.job.has_value());
  const Estimate estimated = estimate(*loaded.book, *loaded.job);
  // By hand: a splice of two plates of 40 mm; tees on the second member, 2 × 50 + 30 and 2 × 30 + 5; laps and corners
  // join two runs.
  const std::map<std::string, double> by_hand = {{"B01", 80}, {"B02", 130}, {"B04", 60}, {"B06", 80}, {"B08", 55},
                                                 {"B09", 90}, {"B10", 100}, {"B15", 70}, {"B16", 16}, {"B17", 65}};
  for (std::size_t j = 0; j < loaded.job->joints.size(); ++j) {
    const auto found = by_hand.find(loaded.job->joints[j].id);
    if (found == by_hand.end()) continue;
    CAPTURE(found->first);
    CHECK(estimated.joints[j].joint.heat.combined_thickness.si * 1000 == doctest::Approx(found->second).epsilon(1e-9));
  }
}

TEST_CASE("a margin of 18 % asks for more than a mark-up of 18 %") {
  const Money<> margin = first_price("coolant-tank.yaml", "margin: 15 %", "margin: 18 %").figures.exact_price;
  const Money<> markup = first_price("coolant-tank.yaml", "margin: 15 %", "markup: 18 %").figures.exact_price;
  CHECK(margin.si / markup.si == doctest::Approx(1 / 0.82 / 1.18).epsilon(1e-12));
}

TEST_CASE("overhead is charged where it is said to be, and only there") {
  const QuotePrice added = first_price("coolant-tank.yaml", "added: 85 %", "added: 85 %");
  const QuotePrice in_rate = first_price("coolant-tank.yaml", "added: 85 %", "in_rate: true");
  const test::LoadedJob loaded = test::load_job("marlgannet/coolant-tank.yaml");
  const Estimate estimated = estimate(*loaded.book, *loaded.job);
  Money<> labour{};
  for (const RowFigures<double>& row : estimated.joints) labour = labour + joint_totals(row).labour;
  for (const WeldmentFigures<double>& weldment : estimated.weldments) labour = labour + weldment.labour_cost;
  const double difference = added.figures.unit_cost.si - in_rate.figures.unit_cost.si;
  CHECK(difference > 0.85 * labour.si);              // 85 % of the labour of a piece
  CHECK(difference < 0.85 * labour.si + 0.85 * 58);  // and of its share of the set-ups, under an hour
}

TEST_CASE("a repair below the minimum charge shows what is added to reach it") {
  const PriceFigures<double> price =
      first_price("bracket-repair.yaml", "minimum_charge: 250 EUR", "minimum_charge: 250 EUR").figures;
  CHECK(price.pieces.si < 250);
  CHECK(price.supplement.si == doctest::Approx(250 - price.pieces.si - price.one_offs.si).epsilon(1e-12));
  CHECK(price.total.si == doctest::Approx(250).epsilon(1e-12));
}
