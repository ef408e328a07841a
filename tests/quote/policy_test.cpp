// Each line of the price policy by hand.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "../estimate/shop_files.hpp"
#include "quote/quote.hpp"

using namespace seambook;

namespace {

double& of(std::array<Money<>, cost_kinds>& cost, CostKind kind) { return cost[static_cast<std::size_t>(kind)].si; }

/// 50 of labour, 10 of equipment and 20 of base metal a piece; a set-up of 120 a lot; once 40 of labour and 60 besides.
QuoteInputs<double> plain_inputs() {
  QuoteInputs<double> in;
  of(in.each, CostKind::labour) = 50, of(in.each, CostKind::equipment) = 10, of(in.each, CostKind::base_metal) = 20;
  of(in.lot, CostKind::set_up) = 120;
  of(in.once, CostKind::labour) = 40, of(in.once, CostKind::other) = 60;
  in.margin = {0.2};
  return in;
}
PriceFigures<double> priced(const QuoteInputs<double>& in, double quantity) {
  return price_figures(in, cost_figures(in), Ratio<>{quantity}, 0);
}

/// The bracket with these lines at the head of the job and at the end of the shop's book.
test::LoadedJob bracket_with(const std::string& job_lines, const std::string& book_lines,
                             const std::string& in_prices = {}) {
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  text.replace(text.find("drawing:"), 0, job_lines);
  std::vector<test::RateFile> rates = test::rates_without_policy();
  for (test::RateFile& file : rates) {
    if (file.name.find("shop.yaml") == std::string::npos) continue;
    file.text.replace(file.text.find("  margin: 18 %"), 0, in_prices);
    file.text += book_lines;
  }
  return test::load_text(text, rates);
}

std::vector<QuotePrice> prices_of(const test::LoadedJob& loaded) {
  REQUIRE(loaded.job.has_value());
  return make_quote(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job), {}, {2026, 5, 4}).prices;
}

}  // namespace

TEST_CASE("learning falls on labour and equipment alone, by the model that the book names") {
  QuoteInputs<double> in = plain_inputs();
  in.order.learning = true, in.order.learning_rate = {0.8};
  // Cumulative average, 80 %, four pieces: 0.8 × 0.8 = 0.64 of 60; material and a fourth of the set-up stay:
  // 38.4 + 20 + 30 = 88.4.
  CHECK(priced(in, 4).unit_cost.si == doctest::Approx(88.4));
  CHECK(priced(in, 1).unit_cost.si == doctest::Approx(200));
  // The book's times are the average of the first four: one alone takes 1 / 0.64.
  in.order.holds_at_first = false, in.order.learning_holds_at = {4};
  CHECK(priced(in, 1).unit_cost.si == doctest::Approx(60 / 0.64 + 140));
  // Unit model: pieces take 1, 0.8, 0.8^log2(3) = 0.7021037 and 0.64 of the first; on average 0.7855259.
  in.order.unit_model = true, in.order.holds_at_first = true, in.order.learning_holds_at = {1};
  CHECK(priced(in, 4).unit_cost.si == doctest::Approx(60 * 0.7855259 + 20 + 30));
  // The book's times are those of piece 4, which takes 0.64 of the first.
  in.order.holds_at_first = false, in.order.learning_holds_at = {4};
  CHECK(priced(in, 4).unit_cost.si == doctest::Approx(60 * 0.7855259 / 0.64 + 20 + 30));
  in.order.holds_at_first = true, in.order.learning_holds_at = {1};
  // Overhead on that labour falls with it: 50 % of 50 more.
  in.overhead_added = true, in.overhead = {0.5}, in.order.unit_model = false;
  CHECK(priced(in, 4).unit_cost.si == doctest::Approx(85 * 0.64 + 20 + 120 * 1.5 / 4));
}

TEST_CASE("a job learns by the model that the book names") {
  for (const bool unit : {false, true}) {
    const std::string model = unit ? "unit" : "cumulative_average";
    const test::LoadedJob loaded = bracket_with(
        "learning: true\n", "learning: {model: " + model + ", rate: 90 %, basis: assumption, source: test}\n", "");
    REQUIRE(loaded.job.has_value());
    CHECK(policy_inputs(*loaded.book, *loaded.job).order.unit_model == unit);
    const std::vector<std::string> said = assumptions(*loaded.book, *loaded.job);  // what the price hangs on
    CHECK(std::any_of(said.begin(), said.end(), [](const std::string& line) { return line.starts_with("learning"); }));
  }
}

TEST_CASE("an order's terms are those that job and book state") {
  const std::string freight = "freight: {with_margin: false, basis: assumption, source: test}\n";
  const auto terms = [&](const std::string& job, const std::string& prices) {
    const test::LoadedJob loaded = bracket_with(job, freight, prices);
    REQUIRE(loaded.job.has_value());
    return policy_inputs(*loaded.book, *loaded.job).order;
  };
  CHECK(terms("freight: 25 EUR each\n", "").freight_each);
  CHECK_FALSE(terms("freight: 25 EUR per lot\n", "").freight_each);
  CHECK_FALSE(terms("", "").has_freight);
  CHECK(terms("", "  tax_rate: 19 %\n").taxed);
  CHECK_FALSE(terms("untaxed: reverse charge\n", "  tax_rate: 19 %\n").taxed);
  CHECK_FALSE(terms("", "").taxed);
}

TEST_CASE("haste is a share of all labour, with margin, never of material") {
  QuoteInputs<double> in = plain_inputs();
  in.order.expedite_asked = true, in.order.expedite = {0.3};
  // Labour of two: 2 × 50 + 120 + 40 = 260; 30 % are 78; over 0.8: 97.50.
  CHECK(priced(in, 2).expedite.si == 97.5);
  const double without = priced(plain_inputs(), 2).total.si;
  CHECK(priced(in, 2).total.si == doctest::Approx(without + 97.5));
  CHECK(priced(in, 2).cost.si == doctest::Approx(priced(plain_inputs(), 2).cost.si + 78));
  of(in.each, CostKind::base_metal) = 5000;
  CHECK(priced(in, 2).expedite.si == 97.5);
  of(in.lot, CostKind::labour) += 20;  // 20 × 0.3 / 0.8 more
  CHECK(priced(in, 2).expedite.si == 105);
}

TEST_CASE("freight is of the first mass that takes the whole order, or as stated") {
  QuoteInputs<double> in = plain_inputs();
  in.order.has_freight = true, in.order.piece_mass = {12};
  in.order.freight_by_mass = {{{24}, {18}}, {{100}, {45}}, {{0}, {160}}};
  CHECK(priced(in, 2).freight.si == 18);   // 24 kg
  CHECK(priced(in, 3).freight.si == 45);   // 36 kg
  CHECK(priced(in, 9).freight.si == 160);  // 108 kg
  in.order.freight_with_margin = true;
  CHECK(priced(in, 2).freight.si == 22.5);  // 18 / 0.8
  in.order.freight_by_mass.clear(), in.order.freight = {7};
  CHECK(priced(in, 3).freight.si == 8.75);
  in.order.freight_each = true, in.order.freight_with_margin = false;
  CHECK(priced(in, 3).freight.si == 21);
}

TEST_CASE("tax and the price list's step are lines below, each rounded once") {
  QuoteInputs<double> in = plain_inputs();
  in.order.list_rounded = true, in.order.list_step = {50};
  in.order.taxed = true, in.order.tax_rate = {0.19};
  // One piece 200 / 0.8 = 250; one-offs 100 / 0.8 = 125: 375 is raised to 400; 19 % of that are 76.
  const PriceFigures<double> p = priced(in, 1);
  CHECK(p.list_rounding.si == 25);
  CHECK(p.total.si == 400);
  CHECK(p.tax.si == 76);
  CHECK(p.total_with_tax.si == 476);
  // Three pieces: (80 + 40) / 0.8 = 150 each and 125: 575 becomes 600. A multiple stays: two pieces 175 each, 475.
  CHECK(priced(in, 3).total.si == 600);
  in.order.list_step = {25};
  CHECK(priced(in, 2).list_rounding.si == 0);
}

TEST_CASE("a margin of 18 % asks for more than a mark-up of 18 %") {
  // 1 / (1 - 0.18) = 1.2195 of the cost against 1.18.
  QuoteInputs<double> in = plain_inputs();
  in.margin = {0.18}, in.markup = {0.18};
  CHECK(priced(in, 1).exact_price.si / priced(in, 1).unit_cost.si == doctest::Approx(1.2195).epsilon(1e-4));
  in.by_margin = false;
  CHECK(priced(in, 1).exact_price.si / priced(in, 1).unit_cost.si == doctest::Approx(1.18));
}

TEST_CASE("from 6 to 24 the set-ups are shared by more, the one-offs stay") {
  test::LoadedJob loaded = test::load_job("wash-down-cabinet.yaml");
  REQUIRE(loaded.job.has_value());
  loaded.job->quantities = {6, 24};
  const auto work = sequence_jobs(*loaded.book, std::span(&*loaded.job, 1), loaded.diagnostics);
  REQUIRE(work.has_value());
  const Quote quote = make_quote(*loaded.book, *loaded.job, estimate(*loaded.book, *loaded.job), *work, {2026, 5, 4});
  const PriceFigures<double>&six = quote.prices[0].figures, &many = quote.prices[1].figures;
  CHECK(many.unit_price.si < six.unit_price.si);
  CHECK(many.one_offs.si == six.one_offs.si);
  // The lot's cost a piece falls from a sixth to a 24th of it; all else of a piece is as before.
  CHECK(six.unit_cost.si - many.unit_cost.si == doctest::Approx(quote.cost.lot.si * (1.0 / 6 - 1.0 / 24)));
}

TEST_CASE("contingency is that of the job's risk class, else the plain one") {
  const std::string classes =
      "contingencies:\n"
      "  - {risk: repeat, contingency: 3 %, basis: assumption, source: test}\n"
      "  - {risk: first_off, contingency: 15 %, basis: assumption, source: test}\n";
  const double plain = prices_of(bracket_with("", classes))[0].figures.exact_price.si;
  const double repeat = prices_of(bracket_with("risk: repeat\n", classes))[0].figures.exact_price.si;
  const double first_off = prices_of(bracket_with("risk: first_off\n", classes))[0].figures.exact_price.si;
  CHECK(repeat / plain == doctest::Approx(1.03 / 1.06));
  CHECK(first_off / plain == doctest::Approx(1.15 / 1.06));
}

TEST_CASE("what the customer supplies is handled for a share of its value") {
  const std::string supplied = "    free_issue: true\n    free_issue_value: 200 EUR\n";
  test::LoadedJob loaded = bracket_with("", "", "  free_issue_handling: 5 %\n");
  std::string text = test::file_text(SEAMBOOK_ROOT "/jobs/bracket.yaml");
  const std::string bought = "    bought: 38 EUR each\n";
  REQUIRE(text.find(bought) != std::string::npos);
  text.replace(text.find(bought), bought.size(), supplied);
  std::vector<test::RateFile> rates = test::rates_without_policy();
  for (test::RateFile& file : rates)
    if (const std::size_t at = file.text.find("  margin: 18 %"); at != std::string::npos)
      file.text.insert(at, "  free_issue_handling: 5 %\n");
  const test::LoadedJob valued = test::load_text(text, rates);
  const double bought_cost = prices_of(loaded)[0].figures.unit_cost.si;
  // 38 of plates bought become 10 of handling.
  CHECK(prices_of(valued)[0].figures.unit_cost.si == doctest::Approx(bought_cost - 38 + 10));
}

TEST_CASE("a quote says its price policy in words") {
  const test::LoadedJob loaded =
      bracket_with("expedite: true\nlearning: true\nfreight: 25 EUR per lot\nuntaxed: reverse charge\n",
                   "learning: {model: cumulative_average, rate: 90 %, basis: assumption, source: test}\n"
                   "freight: {with_margin: false, basis: assumption, source: test}\n",
                   "  expedite: 30 %\n  tax_rate: 19 %\n");
  REQUIRE(loaded.job.has_value());
  std::string all;
  for (const std::string& line : policy_in_words(*loaded.book, *loaded.job)) all += line + "\n";
  for (const char* wanted :
       {"Contingency: 6 %", "Margin: 18 %", "cumulative-average", "Expedite: 30 %", "Minimum charge: 120.00 EUR",
        "25.00 EUR a lot, passed on without margin", "reverse charge", "half away from zero"})
    CHECK_MESSAGE(all.find(wanted) != std::string::npos, wanted);
  // Reverse charge: no tax is added, although the book knows its rate.
  const PriceFigures<double> p = prices_of(loaded)[0].figures;
  CHECK(p.tax.si == 0);
  CHECK(p.freight.si == 25);
}
