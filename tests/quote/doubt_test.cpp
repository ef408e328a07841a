// Where a total lies when its inputs are in doubt, against sums whose distribution is known.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "../estimate/shop_files.hpp"
#include "quote/draws.hpp"
#include "quote/moved_order.hpp"

using namespace seambook;

namespace {

struct Quoted {
  test::LoadedJob loaded;
  Estimate estimated;
  Quote quote;

  const RateBook& book() const { return *loaded.book; }
  const Job& job() const { return *loaded.job; }
  Doubt doubt() const { return find_doubt(book(), job(), estimated, quote); }
};

Quoted quoted(const std::string& job, const std::vector<test::RateFile>& rates) {
  Quoted out{test::load_text(job, rates), {}, {}};
  REQUIRE_MESSAGE(out.loaded.job.has_value(), render(out.loaded.diagnostics));
  out.estimated = estimate(out.book(), out.job());
  const auto work = sequence_jobs(out.book(), std::span(&out.job(), 1), out.loaded.diagnostics);
  REQUIRE(work.has_value());
  out.quote = make_quote(out.book(), out.job(), out.estimated, *work, {2026, 5, 18});
  return out;
}

/// The example rate book without what it says of ranges, and one file added.
std::vector<test::RateFile> rates_with(const std::string& added) {
  std::vector<test::RateFile> files = test::rate_texts();
  std::erase_if(files, [](const test::RateFile& file) { return file.name == "ranges.yaml"; });
  for (test::RateFile& file : files) {
    for (std::size_t at; (at = file.text.find(", range: ")) != std::string::npos;)
      file.text.erase(at, file.text.find(" %", at) + 2 - at);
  }
  if (!added.empty()) files.push_back({"ranges.yaml", "format: 1\n" + added});
  return files;
}

/// A small joint that is not in doubt, and lines bought for the job that are.
std::string job_with(const std::string& bought, const std::string& range, const std::string& quantities = "[1]") {
  return fmt::format(
      "format: 1\njob: doubtful\nbase_metal: S235\nquantities: {}\nrange: {}\nbought:\n{}weldments:\n"
      "  - {{name: plate, range: 0 %, bought: 1 EUR each, "
      "joints: [{{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}}]}}\n",
      quantities, range, bought);
}

/// What one unit of cost becomes in the price: contingency, then margin.
double price_of_cost(const RateBook& book) {
  return (1 + book.prices.contingency.si.value) / (1 - book.prices.margin.si.value);
}

constexpr const char* one_line = "  - {what: frame, kind: other, price: 5000 EUR once}\n";
constexpr const char* three_lines =
    "  - {what: frame, kind: other, price: 4000 EUR once}\n"
    "  - {what: lifting, kind: other, price: 2500 EUR once}\n"
    "  - {what: coating, kind: outside, price: 3000 EUR once}\n";

std::string ranges(double published, double practice, double assumption) {
  return fmt::format(
      "ranges: {{published: {:.10f} %, common_practice: {:.10f} %, assumption: {:.10f} %, basis: assumption, source: a "
      "test}}\n",
      published, practice, assumption);
}

}  // namespace

TEST_CASE("draws have the mean and variance of a triangular distribution") {
  // Mean (a + b + c) / 3, variance (a² + b² + c² - ab - ac - bc) / 18: Forbes, Evans, Hastings, Peacock, "Statistical
  // Distributions", chapter "Triangular" (from memory; both follow from two integrals).
  const double shapes[][3] = {{0.6, 1, 1.4}, {0, 1, 4}, {0.9, 1, 1}, {1, 1, 1.3}};
  for (const auto& [a, c, b] : shapes) {
    DrawEngine engine(1);
    constexpr int count = 200'000;
    double sum = 0, squares = 0, low = b, high = a;
    for (int i = 0; i < count; ++i) {
      const double x = triangular(a, c, b, uniform_draw(engine));
      sum += x, squares += x * x, low = std::min(low, x), high = std::max(high, x);
    }
    const double mean = sum / count, variance = squares / count - mean * mean;
    const double wanted = (a + b + c) / 3, spread = (a * a + b * b + c * c - a * b - a * c - b * c) / 18;
    CHECK(std::fabs(mean - wanted) < 4 * std::sqrt(spread / count));
    CHECK(variance == doctest::Approx(spread).epsilon(0.02));
    CHECK(low >= a);
    CHECK(high <= b);
  }
}

TEST_CASE("percentiles are by nearest rank") {
  std::vector<double> ten(10);
  std::iota(ten.begin(), ten.end(), 1);
  const Percentiles p = percentiles(ten);
  CHECK(p.p10 == 1);
  CHECK(p.p50 == 5);
  CHECK(p.p80 == 8);
  CHECK(p.p90 == 9);
  const Percentiles three = percentiles({1, 2, 3});  // ranks 0.3, 1.5, 2.4, 2.7, each to the next whole one
  CHECK(three.p10 == 1);
  CHECK(three.p50 == 2);
  CHECK(three.p80 == 3);
  CHECK(three.p90 == 3);
  const Percentiles one = percentiles({7});
  CHECK(one.p10 == 7);
  CHECK(one.p90 == 7);
}

TEST_CASE("one line in doubt lies where its triangle says") {
  // Of a triangle about 1 with half-width r, a share p lies below 1 - r + r √(2p), and the upper half mirrors it.
  const Quoted q = quoted(job_with(one_line, "30 %"), rates_with(""));
  const Doubt doubt = q.doubt();
  CHECK(doubt.inputs == 1);
  CHECK(doubt.samples >= 1000);
  const double half = 0.3 * 5000, root = std::sqrt(0.2), price = price_of_cost(q.book());
  const double error = 4 * std::sqrt(0.1 * 0.9 / static_cast<double>(doubt.samples)) * half / root;  // of P10 and P90
  CHECK(std::fabs(doubt.costs.p10 - (doubt.cost.si - half * (1 - root))) < error);
  CHECK(std::fabs(doubt.costs.p90 - (doubt.cost.si + half * (1 - root))) < error);
  CHECK(std::fabs(doubt.totals.p10 - (doubt.total.si - half * (1 - root) * price)) < error * price);
  CHECK(std::fabs(doubt.totals.p50 - doubt.total.si) < error * price);
  CHECK(doubt.contingency_p90.si == doctest::Approx(doubt.costs.p90 / doubt.cost.si - 1));
  CHECK(doubt.contingency_p80.si < doubt.contingency_p90.si);
  REQUIRE(doubt.drivers.size() == 1);
  REQUIRE(doubt.bars.size() == 20);  // high in the middle, where the triangle is
  CHECK(std::accumulate(doubt.bars.begin(), doubt.bars.end(), std::size_t{0}) == doubt.samples);
  CHECK(doubt.bars[9] > 3 * doubt.bars[0]);
  CHECK(doubt.bars[10] > 3 * doubt.bars[19]);
  CHECK(doubt.bars[0] > 0);
  CHECK(doubt.bars[19] > 0);
  CHECK(doubt.drivers[0].words == "bought: frame");
  CHECK(doubt.drivers[0].low == doctest::Approx(3500));
  CHECK(doubt.drivers[0].total_high.si - doubt.drivers[0].total_low.si == doctest::Approx(2 * half * price));
}

TEST_CASE("the sum of lines in doubt has the mean and variance of their triangles' sum") {
  const Quoted q = quoted(job_with(three_lines, "40 %"), rates_with(""));
  const std::vector<Doubtful> inputs = doubtful_inputs(q.book(), q.job(), q.quote);
  REQUIRE(inputs.size() == 3);
  const OrderInputs order =
      order_inputs(q.book(), q.job(), q.quote, {inputs[0].source, inputs[1].source, inputs[2].source});
  DrawEngine engine(7);
  constexpr int count = 4000;
  double sum = 0, squares = 0;
  for (int i = 0; i < count; ++i) {
    Factors factors;
    for (const Doubtful& input : inputs)
      move_to(factors, input.source, triangular(input.low, 1, input.high, uniform_draw(engine)));
    const double cost = moved_order(order, factors).cost;
    sum += cost, squares += cost * cost;
  }
  const double quoted_cost = moved_order(order, {}).cost;
  const double variance = 0.4 * 0.4 / 6 * (4000.0 * 4000 + 2500.0 * 2500 + 3000.0 * 3000);  // r² / 6 each, independent
  const double mean = sum / count;
  CHECK(std::fabs(mean - quoted_cost) < 4 * std::sqrt(variance / count));
  CHECK(squares / count - mean * mean == doctest::Approx(variance).epsilon(0.1));
}

TEST_CASE("each driver is moved alone") {
  const Quoted q = quoted(job_with(three_lines, "40 %"), rates_with(""));
  const Doubt doubt = q.doubt();
  REQUIRE(doubt.drivers.size() == 3);
  for (const DoubtDriver& driver : doubt.drivers) {  // each total is a sum: its middle is the total as quoted
    CAPTURE(driver.words);
    CHECK((driver.total_low.si + driver.total_high.si) / 2 == doctest::Approx(doubt.total.si));
  }
}

TEST_CASE("without doubt every percentile is the total, and twice the range is about twice the spread") {
  const std::string bracket = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const auto doubt_at = [&](double share) { return quoted(bracket, rates_with(ranges(share, share, share))).doubt(); };
  const Doubt none = doubt_at(0), ten = doubt_at(10), twenty = doubt_at(20);
  CHECK(none.samples == 0);
  CHECK_FALSE(none.ranges_stated);
  CHECK(none.drivers.size() == 10);                  // by a tenth either way
  CHECK(std::fabs(none.total.si - 157.66) < 0.005);  // the price of one, before rounding
  const auto spread = [](const Doubt& doubt) { return doubt.totals.p90 - doubt.totals.p10; };
  CHECK(spread(ten) > 0);
  CHECK(spread(twenty) / spread(ten) == doctest::Approx(2).epsilon(0.05));
  CHECK(ten.totals.p10 < ten.total.si);
  CHECK(ten.totals.p90 > ten.total.si);
  const Doubt nearly_none = doubt_at(1e-9);
  for (const double p : {nearly_none.totals.p10, nearly_none.totals.p50, nearly_none.totals.p90})
    CHECK(p == doctest::Approx(none.total.si).epsilon(1e-9));
  CHECK(std::accumulate(ten.bars.begin(), ten.bars.end(), std::size_t{0}) == ten.samples);
}

TEST_CASE("the same inputs give the same bits") {
  const std::string bracket = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const Quoted q = quoted(bracket, rates_with(ranges(5, 20, 40)));
  const Doubt a = q.doubt(), b = q.doubt();
  CHECK(a.totals.p10 == b.totals.p10);
  CHECK(a.totals.p90 == b.totals.p90);
  CHECK(a.bars == b.bars);
}

TEST_CASE("an entry's own range goes before that of its basis, and decisions are never in doubt") {
  std::vector<test::RateFile> files = rates_with(ranges(0, 0, 0));
  for (test::RateFile& file : files) {
    const std::string rate = "rate: 54 EUR/h";
    if (const std::size_t at = file.text.find(rate); at != std::string::npos)
      file.text.replace(at, rate.size(), rate + ", range: 15 %");
    const std::string margin = "  margin: 18 %";
    if (const std::size_t at = file.text.find(margin); at != std::string::npos) file.text.insert(at, "  range: 25 %\n");
  }
  const Quoted q = quoted(test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml"), files);
  const Doubt doubt = q.doubt();
  CHECK(doubt.inputs == 2);  // the rate, and electricity that stands beside the margin
  REQUIRE(!doubt.drivers.empty());
  CHECK(doubt.drivers[0].words == "labour welder, rate");
  CHECK(doubt.drivers[0].high / doubt.drivers[0].quoted == doctest::Approx(1.15));
}

TEST_CASE("drivers are estimated again at both ends, rows together and the minimum charge counted") {
  std::vector<test::RateFile> files = rates_with(ranges(10, 10, 10));
  const std::string bracket = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const Doubt doubt = quoted(bracket, files).doubt();
  REQUIRE(doubt.drivers.size() == 10);
  for (std::size_t i = 1; i < doubt.drivers.size(); ++i) {
    const auto swing = [](const DoubtDriver& d) { return std::fabs(d.total_high.si - d.total_low.si); };
    CHECK(swing(doubt.drivers[i - 1]) >= swing(doubt.drivers[i]));
  }
  // The strongest, changed in the rate book and quoted again.
  REQUIRE(doubt.drivers[0].words == "labour welder, rate");
  for (test::RateFile& file : files)
    if (const std::size_t at = file.text.find("rate: 54 EUR/h"); at != std::string::npos)
      file.text.replace(at, 14, "rate: 59.4 EUR/h");
  CHECK(quoted(bracket, files).doubt().total.si == doctest::Approx(doubt.drivers[0].total_high.si).epsilon(1e-9));
  // A minimum charge far above: nothing moves the total.
  for (test::RateFile& file : files)
    if (const std::size_t at = file.text.find("minimum_charge: 120 EUR"); at != std::string::npos)
      file.text.replace(at, 23, "minimum_charge: 9000 EUR");
  const Doubt bound = quoted(bracket, files).doubt();
  CHECK(bound.drivers.empty());
  CHECK(bound.totals.p10 == bound.totals.p90);
  CHECK(bound.costs.p10 < bound.costs.p90);
  CHECK(bound.bars.empty());
}

TEST_CASE("what is moved stays within what the rate book would admit") {
  CHECK_FALSE(doubtful(1, 0, 0.4, {}).has_value());
  CHECK_FALSE(doubtful(1, 0.9, 0, {}).has_value());
  const auto efficiency = doubtful(1, 0.9, 0.4, {0, 1, true, false});
  REQUIRE(efficiency.has_value());
  CHECK(efficiency->low == doctest::Approx(0.6));
  CHECK(efficiency->high == doctest::Approx(1 / 0.9));
  const auto open = doubtful(1, 0.9, 0.4, {0, 1, true, true});
  REQUIRE(open.has_value());
  CHECK(open->high * 0.9 < 1);
  CHECK(open->high > 1);
}
