// Cost becomes money: what is printed adds up, whatever the costs and the policy.
#include <doctest/doctest.h>

#include <cmath>
#include <cstring>
#include <random>

#include "quote/lift.hpp"

using namespace seambook;

namespace {

class Dice {
 public:
  explicit Dice(std::uint32_t seed) : random_(seed) {}
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(random_()) / 4294967296.0);
  }
  bool one_in(unsigned n) { return random_() % n == 0; }
  int whole(int low, int high) { return low + static_cast<int>(random_() % static_cast<unsigned>(high - low + 1)); }

 private:
  std::mt19937 random_;
};

/// A cost from a few cents to some thousands; now and then one that ends on half a cent, or none.
Money<> any_cost(Dice& dice) {
  if (dice.one_in(3)) return {};
  const double size = std::pow(10, dice.whole(-1, 4));
  return {dice.one_in(4) ? dice.whole(1, 99999) * 0.005 : dice.between(0, size)};
}

/// Every line of the policy on or off.
OrderTerms<double> any_order(Dice& dice) {
  OrderTerms<double> in;
  in.learning = dice.one_in(2), in.unit_model = dice.one_in(3), in.holds_at_first = dice.one_in(2);
  in.learning_rate = {dice.whole(70, 100) * 0.01};
  in.learning_holds_at = {in.holds_at_first ? 1.0 : dice.whole(1, 40)};
  in.expedite_asked = dice.one_in(2), in.expedite = {dice.whole(0, 60) * 0.01};
  in.has_freight = dice.one_in(2), in.freight_each = dice.one_in(2), in.freight_with_margin = dice.one_in(2);
  in.freight = any_cost(dice);
  in.piece_mass = {dice.between(0, 300)};
  if (dice.one_in(2)) in.freight_by_mass = {{{30}, any_cost(dice)}, {{400}, any_cost(dice)}, {{0}, any_cost(dice)}};
  in.list_rounded = dice.one_in(2), in.list_step = {dice.one_in(2) ? 5.0 : 50.0};
  in.taxed = dice.one_in(2), in.tax_rate = {dice.whole(0, 50) * 0.005};
  return in;
}

QuoteInputs<double> any_inputs(Dice& dice) {
  QuoteInputs<double> in;
  for (std::size_t k = 0; k < cost_kinds; ++k) {
    in.each[k] = any_cost(dice), in.lot[k] = any_cost(dice), in.once[k] = any_cost(dice);
  }
  in.overhead = {dice.whole(0, 120) * 0.01}, in.contingency = {dice.whole(0, 20) * 0.005};
  in.margin = {dice.whole(0, 60) * 0.01}, in.markup = {dice.whole(0, 150) * 0.01};
  in.minimum_charge = {dice.whole(0, 40) * 50.0};
  in.by_margin = dice.one_in(2), in.overhead_added = dice.one_in(2), in.has_minimum = dice.one_in(2);
  in.digits = dice.one_in(5) ? 0 : 2;
  in.order = any_order(dice);
  return in;
}

/// Each number with a source of its own, for the recording; what is 0 counts as not said.
QuoteInputs<Sourced> sourced(const QuoteInputs<double>& in) {
  QuoteInputs<Sourced> out;
  SourceId source = 0;
  const auto up = [&]<Dim D>(Quantity<D> x) { return Quantity<D, Sourced>{{x.si, x.si == 0 ? no_source : ++source}}; };
  for (std::size_t k = 0; k < cost_kinds; ++k)
    out.each[k] = up(in.each[k]), out.lot[k] = up(in.lot[k]), out.once[k] = up(in.once[k]);
  out.overhead = up(in.overhead), out.contingency = up(in.contingency);
  out.margin = up(in.margin), out.markup = up(in.markup), out.minimum_charge = up(in.minimum_charge);
  out.by_margin = in.by_margin, out.overhead_added = in.overhead_added, out.has_minimum = in.has_minimum;
  out.digits = in.digits;
  const OrderTerms<double>& order = in.order;
  out.order = {up(order.learning_rate),
               up(order.learning_holds_at),
               up(order.expedite),
               up(order.tax_rate),
               up(order.piece_mass),
               up(order.freight),
               up(order.list_step),
               {},
               order.learning,
               order.unit_model,
               order.holds_at_first,
               order.expedite_asked,
               order.has_freight,
               order.freight_each,
               order.freight_with_margin,
               order.list_rounded,
               order.taxed};
  for (const FreightStep<double>& step : order.freight_by_mass)
    out.order.freight_by_mass.push_back({up(step.up_to), up(step.price)});
  return out;
}

/// An amount in units of the last printed digit, as a person reads it off the page.
std::int64_t printed(Money<> x, int digits) { return std::llround(round_decimal(x.si, digits) * std::pow(10, digits)); }

template <class N>
std::vector<N> numbers(const PriceFigures<N>& p) {
  return {p.unit_cost.si, p.exact_price.si,    p.unit_price.si, p.pieces.si,        p.one_offs.si,
          p.expedite.si,  p.freight.si,        p.supplement.si, p.list_rounding.si, p.total.si,
          p.tax.si,       p.total_with_tax.si, p.cost.si,       p.left.si};
}

bool same_bits(double a, double b) { return std::memcmp(&a, &b, sizeof a) == 0; }

/// Costs that are easy to follow: 80 a piece, 120 a lot, 300 once.
QuoteInputs<double> plain_inputs() {
  QuoteInputs<double> in;
  in.each[static_cast<std::size_t>(CostKind::labour)] = {50};
  in.each[static_cast<std::size_t>(CostKind::base_metal)] = {30};
  in.lot[static_cast<std::size_t>(CostKind::set_up)] = {120};
  in.once[static_cast<std::size_t>(CostKind::other)] = {300};
  return in;
}
PriceFigures<double> priced(const QuoteInputs<double>& in, double quantity) {
  return price_figures(in, cost_figures(in), Ratio<>{quantity}, 0);
}

}  // namespace

TEST_CASE("printed lines add up to the printed total") {
  Dice dice(1);
  for (int trial = 0; trial < 10000; ++trial) {
    CAPTURE(trial);
    const QuoteInputs<double> in = any_inputs(dice);
    const int quantity = dice.one_in(2) ? dice.whole(1, 20) : dice.whole(1, 5000);
    const PriceFigures<double> p = priced(in, quantity);
    const auto cents = [&](Money<> x) { return printed(x, in.digits); };
    CHECK(same_bits(p.unit_price.si, round_decimal(p.exact_price.si, in.digits)));
    CHECK(cents(p.pieces) == cents(p.unit_price) * quantity);
    CHECK(cents(p.total) == cents(p.pieces) + cents(p.one_offs) + cents(p.expedite) + cents(p.supplement) +
                                cents(p.freight) + cents(p.list_rounding));
    CHECK(cents(p.total_with_tax) == cents(p.total) + cents(p.tax));
    if (!in.has_minimum) CHECK(p.supplement.si == 0);
    if (in.has_minimum) CHECK(cents(p.total) >= cents(in.minimum_charge));
    CHECK(p.supplement.si >= 0);
    const bool countable = p.total.si < 1e7;  // so many steps that one of them is not lost in the tolerance of counts
    if (in.order.list_rounded && countable) CHECK(cents(p.total) % cents(in.order.list_step) == 0);
    if (!in.order.list_rounded) CHECK(p.list_rounding.si == 0);
    if (countable) CHECK(p.list_rounding.si >= 0);
    if (!in.order.taxed) CHECK(p.tax.si == 0);
    // What is left is total less cost, and nothing is rounded in the cost.
    CHECK(p.left.si == p.total.si - p.cost.si);
  }
}

TEST_CASE("a quote traced gives the same bits as one of plain numbers") {
  Dice dice(2);
  Tape tape;
  for (int trial = 0; trial < 3000; ++trial) {
    CAPTURE(trial);
    const QuoteInputs<double> in = any_inputs(dice);
    const double quantity = dice.whole(1, 500);
    tape.clear();
    const QuoteInputs<Traced> recorded = lift_quote<Traced>(sourced(in), &tape);
    const Ratio<Traced> pieces = lift<Traced>(Ratio<Sourced>{{quantity, 1}}, fig::quantity, 0, &tape);
    const std::vector<double> plain = numbers(priced(in, quantity));
    const std::vector<Traced> other = numbers(price_figures(recorded, cost_figures(recorded), pieces, 0));
    for (std::size_t i = 0; i < plain.size(); ++i) {
      CAPTURE(i);
      CHECK(same_bits(plain[i], other[i].value));
    }
  }
}

TEST_CASE("margin is a share of the price and mark-up a share of the cost") {
  QuoteInputs<double> in = plain_inputs();
  in.margin = {0.20}, in.markup = {0.25};
  // One piece: 80 + 120 = 200. Margin 20 %: 200 / 0.8 = 250. Mark-up 25 %: 200 × 1.25 = 250, the same price.
  CHECK(priced(in, 1).unit_price.si == 250);
  in.by_margin = false;
  CHECK(priced(in, 1).unit_price.si == 250);
  in.markup = {0.20};
  CHECK(priced(in, 1).unit_price.si == 240);
  CHECK(price_by_margin(Money<>{200}, Ratio<>{0.2}).si == 250);
  CHECK(price_by_markup(Money<>{200}, Ratio<>{0.2}).si == 240);
}

TEST_CASE("a lot is shared by its pieces and one-offs stay one line") {
  QuoteInputs<double> in = plain_inputs();
  in.margin = {0.20};
  // Seven pieces: (80 + 120/7) / 0.8 = 121.428571... rounded, then × 7; one-offs 300 / 0.8.
  const PriceFigures<double> p = priced(in, 7);
  CHECK(p.unit_price.si == 121.43);
  CHECK(printed(p.pieces, 2) == 85001);
  CHECK(p.one_offs.si == 375);
  CHECK(printed(p.total, 2) == 122501);
  CHECK(p.cost.si == doctest::Approx(80 * 7 + 120 + 300));
}

TEST_CASE("contingency and overhead come before margin") {
  QuoteInputs<double> in = plain_inputs();
  in.overhead_added = true, in.overhead = {0.5}, in.contingency = {0.1}, in.margin = {0.2};
  // Ten pieces: 80 + 50 × 0.5 = 105 each; lot 120 × 1.5 = 180, 18 a piece; 123 × 1.1 / 0.8 = 169.125, rounded 169.13.
  const PriceFigures<double> p = priced(in, 10);
  CHECK(p.unit_cost.si == doctest::Approx(123));
  CHECK(p.unit_price.si == 169.13);
  CHECK(p.one_offs.si == 412.5);  // 300 × 1.1 / 0.8
  in.once[static_cast<std::size_t>(CostKind::labour)] = {100};
  CHECK(priced(in, 10).one_offs.si == 618.75);  // (300 + 100 × 1.5) × 1.1 / 0.8
}

TEST_CASE("a minimum charge is reached by a line of its own") {
  QuoteInputs<double> in = plain_inputs();
  in.has_minimum = true, in.minimum_charge = {600};
  // One piece 200, one-offs 300: 100 are missing. Two pieces 140 each, one-offs 300: 20. Ten: 92 each, more than
  // enough.
  CHECK(priced(in, 1).supplement.si == 100);
  CHECK(priced(in, 1).total.si == 600);
  CHECK(priced(in, 2).supplement.si == 20);
  CHECK(priced(in, 10).supplement.si == 0);
  CHECK(priced(in, 10).total.si == 1220);
}

TEST_CASE("a currency without a minor unit rounds to whole units") {
  QuoteInputs<double> in = plain_inputs();
  in.digits = 0, in.markup = {0.25}, in.by_margin = false;
  // Seven pieces: (80 + 120/7) × 1.25 = 121.43, printed 121, × 7 = 847; 300 × 1.25 = 375.
  const PriceFigures<double> p = priced(in, 7);
  CHECK(p.unit_price.si == 121);
  CHECK(p.pieces.si == 847);
  CHECK(p.total.si == 1222);
}

TEST_CASE("a set-up costs the tasks it calls at the rates of who waits for it") {
  SetupInputs<double> in;
  in.tasks = {Time<>{5 * 60}, Time<>{12 * 60}, Time<>{3 * 60}};
  in.labour_rate = {60.0 / 3600}, in.equipment_rate = {15.0 / 3600};
  // 20 min at 60 an hour: 20; at 15 an hour: 5.
  CHECK(setup_figures(in, 0).change.si == 1200);
  CHECK(setup_figures(in, 0).labour_cost.si == doctest::Approx(20));
  CHECK(setup_figures(in, 0).equipment_cost.si == doctest::Approx(5));
  in.loaded_rate = false, in.wage = {20.0 / 3600}, in.burden = {0.8};  // 36 an hour: 12
  CHECK(setup_figures(in, 0).labour_cost.si == doctest::Approx(12));
}
