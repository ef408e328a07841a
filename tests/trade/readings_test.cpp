// Formulas of heat, laser, learning and investment in their three readings: traced they give the bits of plain numbers,
// their spreadsheet formula over cells gives the value, and the backward sweep gives the slope by every input.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <vector>

#include "../trace/evaluate.hpp"
#include "trace/formula.hpp"
#include "trace/traced.hpp"
#include "trade/heat.hpp"
#include "trade/investment.hpp"
#include "trade/laser.hpp"
#include "trade/learning.hpp"
#include "trade/passes.hpp"

using namespace seambook;

namespace {

struct Given {
  double value;  // in its unit
  Unit unit = unit::none;
};
constexpr Figure any_input{"input", "an input", unit::none, 0};

/// The inputs of a formula as plain numbers.
struct Plain {
  using Number = double;
  std::vector<double> si;
  template <Dim D>
  Quantity<D> at(std::size_t i) const {
    return {si[i]};
  }
};
/// The same as inputs on a tape.
struct Recorded {
  using Number = Traced;
  std::vector<double> si;
  Tape* tape;
  template <Dim D>
  Quantity<D, Traced> at(std::size_t i) const {
    const auto number = static_cast<std::uint32_t>(i);
    return lift<Traced>(Quantity<D, Sourced>{{si[i], number + 1}}, any_input, number, tape);
  }
};

std::string cell(std::size_t i) { return "X" + std::to_string(i); }

template <class F>
void check_slopes(F compute, const std::vector<double>& si, const Tape& tape, std::uint32_t node) {
  const std::vector<double> slopes = sweep(tape, {{node, 1}});
  for (std::uint32_t n = 0; n < tape.nodes.size(); ++n) {
    if (tape.nodes[n].op != Op::input) continue;
    const std::size_t i = tape.labels[tape.nodes[n].label].row;
    const double step = 1e-5 * si[i];
    std::vector<double> more = si, less = si;
    more[i] += step, less[i] -= step;
    const double difference = (compute(Plain{more}) - compute(Plain{less})) / (2 * step);
    CAPTURE(i);
    CHECK(slopes[n] == doctest::Approx(difference).epsilon(1e-5));
  }
}

/// `compute` gets the inputs and returns the number of the result; each input is read once.
template <class F>
void check_readings(const char* what, F compute, const std::vector<Given>& given) {
  CAPTURE(what);
  std::vector<double> si;
  evaluate::Cells cells;
  for (std::size_t i = 0; i < given.size(); ++i) {
    si.push_back(given[i].value * given[i].unit.si);
    cells[cell(i)] = given[i].value;
  }
  Tape tape;
  const double plain = compute(Plain{si});
  const Traced traced = compute(Recorded{si, &tape});
  CHECK(traced.value == plain);
  REQUIRE(traced.tape != nullptr);
  const LeafFinder leaf = [&](const Tape& t, std::uint32_t n) {
    const std::size_t i = t.labels[t.nodes[n].label].row;
    return LeafText{cell(i), given[i].unit.si};
  };
  const std::string text = formula(tape, traced.node, 1, leaf);
  CAPTURE(text);
  CHECK(evaluate::formula(text, cells) == doctest::Approx(plain).epsilon(1e-12));
  check_slopes(compute, si, tape, traced.node);
}

constexpr Unit day{"day", 86400};

}  // namespace

TEST_CASE("heat in three readings") {
  check_readings("preheat",
                 [](const auto& in) {
                   return preheat_method_b(in.template at<dim::ratio>(0), in.template at<dim::length>(1),
                                           in.template at<dim::volume_per_mass>(2), in.template at<dim::line_energy>(3))
                       .si;
                 },
                 {{0.31, unit::percent}, {30, unit::mm}, {5, unit::ml_per_100g}, {1.2, unit::kJ_per_mm}});
  const auto steel = [](const auto& in) {
    using N = typename std::decay_t<decltype(in)>::Number;
    const auto share = [&](std::size_t i) { return in.template at<dim::ratio>(i); };
    return Composition<N>{share(0), share(1), share(2), share(3), share(4),
                          share(5), share(6), share(7), share(8), share(9)};
  };
  const std::vector<Given> shares{{0.16, unit::percent}, {0.3, unit::percent},  {1.4, unit::percent},
                                  {0.05, unit::percent}, {0.02, unit::percent}, {0.01, unit::percent},
                                  {0.1, unit::percent},  {0.15, unit::percent}, {0.02, unit::percent},
                                  {0.001, unit::percent}};
  check_readings(
      "CE", [&](const auto& in) { return carbon_equivalent(steel(in)).si; }, shares);
  check_readings(
      "CET", [&](const auto& in) { return carbon_equivalent_cet(steel(in)).si; }, shares);
  check_readings(
      "Pcm", [&](const auto& in) { return crack_parameter(steel(in)).si; }, shares);
}

TEST_CASE("a composition of which little is given is as if the rest were none") {
  Tape tape;
  const Recorded in{{0.0016, 0.014}, &tape};
  Composition<Traced> steel;
  steel.carbon = in.at<dim::ratio>(0), steel.manganese = in.at<dim::ratio>(1);
  CHECK(carbon_equivalent(steel).si.value == doctest::Approx(0.0016 + 0.014 / 6));
  CHECK(crack_parameter(steel).si.value == doctest::Approx(0.0016 + 0.014 / 20));
}

TEST_CASE("laser limits in three readings") {
  check_readings("speed ceiling",
                 [](const auto& in) {
                   return speed_ceiling(in.template at<dim::ratio>(0), in.template at<dim::ratio>(1),
                                        in.template at<dim::power>(2), in.template at<dim::area>(3),
                                        in.template at<dim::energy_per_volume>(4))
                       .si;
                 },
                 {{70, unit::percent}, {40, unit::percent}, {1.5, unit::kW}, {6, unit::mm2}, {9, unit::J_per_mm3}});
  check_readings("gap",
                 [](const auto& in) {
                   return gap_limit_with_beam(in.template at<dim::length>(0), in.template at<dim::ratio>(1),
                                              in.template at<dim::length>(2), in.template at<dim::ratio>(3))
                       .si;
                 },
                 {{2, unit::mm}, {10, unit::percent}, {0.3, unit::mm}, {50, unit::percent}});
}

TEST_CASE("learning in three readings") {
  const std::vector<Given> given{{40, unit::min}, {7, unit::none}, {85, unit::percent}};
  const auto exponent = [](const auto& in) { return learning_exponent(in.template at<dim::ratio>(2)); };
  check_readings(
      "unit model",
      [&](const auto& in) {
        return unit_model_piece(in.template at<dim::time>(0), in.template at<dim::ratio>(1), exponent(in)).si;
      },
      given);
  check_readings(
      "average model",
      [&](const auto& in) {
        return average_model_total(in.template at<dim::time>(0), in.template at<dim::ratio>(1), exponent(in)).si;
      },
      given);
  check_readings(
      "average model, one piece",
      [&](const auto& in) {
        return average_model_piece(in.template at<dim::time>(0), in.template at<dim::ratio>(1), exponent(in)).si;
      },
      given);
  check_readings(
      "unit model, total",
      [](const auto& in) {
        return unit_model_total(in.template at<dim::time>(0), 6, learning_exponent(in.template at<dim::ratio>(1))).si;
      },
      {{40, unit::min}, {85, unit::percent}});
}

TEST_CASE("investment in three readings") {
  check_readings("net present value",
                 [](const auto& in) {
                   return net_present_value(in.template at<dim::money>(0), in.template at<dim::money>(1),
                                            in.template at<dim::money>(2), in.template at<dim::ratio>(3),
                                            in.template at<dim::ratio>(4))
                       .si;
                 },
                 {{30000, unit::money}, {9600, unit::money}, {3000, unit::money}, {8, unit::percent}, {6, unit::none}});
  check_readings("discounted payback",
                 [](const auto& in) {
                   return discounted_payback(in.template at<dim::money>(0), in.template at<dim::money>(1),
                                             in.template at<dim::ratio>(2))
                       .si;
                 },
                 {{30000, unit::money}, {9600, unit::money}, {8, unit::percent}});
  check_readings("machine hour",
                 [](const auto& in) {
                   return machine_hour_rate(in.template at<dim::money>(0), in.template at<dim::time>(1),
                                            in.template at<dim::money_per_time>(2))
                       .si;
                 },
                 {{12000, unit::money}, {75, day}, {0.4, unit::money_per_h}});
  check_readings("capacity",
                 [](const auto& in) {
                   return cost_at_capacity(in.template at<dim::money>(0), in.template at<dim::ratio>(1),
                                           in.template at<dim::ratio>(2))
                       .si;
                 },
                 {{20000, unit::money}, {3, unit::none}, {0.65, unit::none}});
}
