// Formulas as an estimator would type them: scales folded into one constant, brackets only where needed.
#include "trace/formula.hpp"

#include <doctest/doctest.h>

#include "trace/traced.hpp"
#include "trade/consumption.hpp"
#include "trade/length.hpp"
#include "trade/passes.hpp"
#include "trade/section_grooves.hpp"

using namespace seambook;

namespace {

constexpr Figure plain{"plain", "plain", unit::none};
constexpr Figure length_mm{"length_mm", "length", unit::mm};
constexpr Figure length_m{"length_m", "length", unit::m};

/// Inputs that stand in cells, and the formulas made of them.
struct Sheet {
  Tape tape;
  std::vector<std::string> cells{""};  // by source

  template <Dim D = dim::ratio>
  Quantity<D, Traced> cell(const char* text, double shown = 2, const Figure& figure = plain) {
    cells.emplace_back(text);
    const auto source = static_cast<SourceId>(cells.size() - 1);
    return lift<Traced>(Quantity<D, Sourced>{{shown * figure.unit.si, source}}, figure, 0, &tape);
  }
  /// A named result that stands in a cell.
  template <Dim D>
  Quantity<D, Traced> result(const char* text, Quantity<D, Traced> x, const Figure& figure) {
    cells.emplace_back(text);
    const Quantity<D, Traced> named = name(x, figure, static_cast<std::uint32_t>(cells.size() - 1));
    tape.labels.back().source = static_cast<SourceId>(cells.size() - 1);
    return named;
  }
  template <Dim D>
  std::string text(Quantity<D, Traced> x, Unit shown = unit::none, const FormulaStyle& style = {}) const {
    const auto leaf = [this](const Tape& t, std::uint32_t node) -> std::optional<LeafText> {
      const Label& label = t.labels[t.nodes[node].label];
      if (label.source == no_source) return std::nullopt;
      return LeafText{cells[label.source], label.figure->unit.si};
    };
    return formula(tape, x.si.node, shown.si, leaf, style);
  }
};

}  // namespace

TEST_CASE("the formulas of an estimate as they stand on the sheet") {
  const Figure mm2{"area", "area", unit::mm2}, density{"density", "density", unit::g_per_cm3};
  const Figure speed{"speed", "speed", unit::mm_per_min}, minutes{"minutes", "minutes", unit::min};
  const Figure rate{"rate", "rate", unit::money_per_h}, percent{"percent", "percent", unit::percent};
  Sheet s;
  const auto leg = s.cell<dim::length>("C5", 5, length_mm);
  const auto convexity = s.cell("Rates!$B$7", 10, percent);
  const auto section = s.result("F5", fillet_section(leg, number<Traced>(0)), mm2);
  CHECK(s.text(section, unit::mm2) == "C5*C5/2");
  CHECK(s.text(fillet_section(leg, convexity), unit::mm2) == "C5*C5*(100+Rates!$B$7)/200");

  const auto line = s.cell<dim::length>("D5", 1.2, length_m);
  const auto metal = s.cell<dim::density>("Rates!$B$2", 7.85, density);
  CHECK(s.text(deposit_mass(section, line, metal), unit::g) == "F5*D5*Rates!$B$2");
  CHECK(s.text(deposit_mass(section, line, metal), unit::kg) == "F5*D5*Rates!$B$2/1000");
  CHECK(s.text(arc_time(line, number<Traced>(1), s.cell<dim::speed>("E5", 400, speed)), unit::min) == "D5/E5*1000");

  const auto arc = s.cell<dim::time>("H5", 3, minutes), fit_up = s.cell<dim::time>("Rates!$B$5", 2, minutes);
  const auto labour = s.cell<dim::money_per_time>("Rates!$B$3", 54, rate);
  CHECK(s.text((arc + fit_up) * labour, unit::money) == "(H5+Rates!$B$5)*Rates!$B$3/60");
}

TEST_CASE("groove angles stay in degrees and counts carry their tolerance") {
  const Figure degrees{"angle", "angle", unit::degree}, mm2{"area", "area", unit::mm2};
  Sheet s;
  const auto t = s.cell<dim::length>("C5", 10, length_mm), gap = s.cell<dim::length>("D5", 2, length_mm);
  const auto angle = s.cell<dim::angle>("F5", 60, degrees);
  CHECK(s.text(bevel_triangle(t, angle), unit::mm2) == "C5*C5*TAN(RADIANS(F5))/2");
  CHECK(s.text(single_v_section(t, gap, s.cell<dim::length>("E5", 1, length_mm), angle), unit::mm2) ==
        "C5*D5+(C5-E5)*(C5-E5)*TAN(RADIANS(F5/2))");
  CHECK(s.text(elements_on_line(t, gap, s.cell<dim::length>("G5", 3, length_mm))) == "INT(((C5-D5)/G5+1)*1.000000001)");
  CHECK(s.text(
            tacks_on_line(s.cell<dim::length>("D6", 1, length_m), s.cell<dim::length>("Rates!$B$9", 150, length_mm))) ==
        "ROUNDUP(D6/Rates!$B$9*1000*0.999999999,0)+1");
  CHECK(s.text(passes_for(s.cell<dim::area>("F6", 30, mm2), s.cell<dim::area>("G6", 12, mm2))) ==
        "ROUNDUP(F6/G6*0.999999999,0)");
}

TEST_CASE("brackets stand where precedence asks for them and nowhere else") {
  Sheet s;
  const auto a = s.cell("A1", 7), b = s.cell("B1", 3), c = s.cell("C1", 2), d = s.cell("D1", 5);
  struct Row {
    Ratio<Traced> value;
    const char* expected;
  };
  const Row rows[] = {
      {a + b + c, "A1+B1+C1"},
      {a + (b + c), "A1+B1+C1"},
      {a - b - c, "A1-B1-C1"},
      {a - (b + c), "A1-(B1+C1)"},
      {a - (b - c), "A1-(B1-C1)"},
      {a - b * c, "A1-B1*C1"},
      {(a + b) * c, "(A1+B1)*C1"},
      {a * (b - c), "A1*(B1-C1)"},
      {(a + b) * (c + d), "(A1+B1)*(C1+D1)"},
      {a / b / c, "A1/B1/C1"},
      {a / (b * c), "A1/(B1*C1)"},
      {a / (b / c), "A1/(B1/C1)"},
      {a * b / c, "A1*B1/C1"},
      {a / (b + c), "A1/(B1+C1)"},
      {number<Traced>(1) / a, "1/A1"},
      {number<Traced>(1) / (a - b), "1/(A1-B1)"},
      {number<Traced>(1) - a, "1-A1"},
      {a - number<Traced>(1), "A1-1"},
      {2 * a, "A1*2"},
      {a / 4, "A1/4"},
      {2 * (a + b), "(A1+B1)*2"},
      {a * 2 * b / 4, "A1*B1/2"},
      {pow(a, 2), "A1^2"},
      {pow(a * b, 2), "(A1*B1)^2"},
      {pow(a, 2) * b, "A1^2*B1"},
      {b / pow(a, 0.5), "B1/(A1^0.5)"},
      {pow(pow(a, 2), 3), "(A1^2)^3"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.expected);
    CHECK(s.text(row.value) == row.expected);
  }
  MESSAGE(std::size(rows) << " rows");
}

TEST_CASE("functions take their arguments in one unit") {
  Sheet s;
  const auto mm = s.cell<dim::length>("A1", 500, length_mm), m = s.cell<dim::length>("B1", 0.4, length_m);
  const auto x = s.cell("C1", 0.3), y = s.cell("D1", 0.2);
  CHECK(s.text(min(mm, m), unit::mm) == "MIN(A1,B1*1000)");
  CHECK(s.text(min(m, mm), unit::mm) == "MIN(B1,A1/1000)*1000");
  CHECK(s.text(max(m, mm), unit::m) == "MAX(B1,A1/1000)");
  CHECK(s.text(max(mm - m, Length<Traced>{Traced(0)}), unit::mm) == "MAX(A1-B1*1000,0)");
  CHECK(s.text(select_less(mm, m, x, y)) == "IF(A1<B1*1000,C1,D1)");
  CHECK(s.text(min(max(mm, m), 2 * m), unit::mm) == "MIN(MAX(A1,B1*1000),B1*2000)");
  CHECK(s.text(sqrt(mm * m), unit::mm) == "SQRT(A1*B1)*31.6227766016838");
  CHECK(s.text(sqrt(mm * mm + mm * mm), unit::mm) == "SQRT(A1*A1+A1*A1)");
  CHECK(s.text(exp(x) + log(y)) == "EXP(C1)+LN(D1)");
  CHECK(s.text(tanh(mm / m)) == "TANH(A1/B1/1000)");
  CHECK(s.text(asin(mm / m)) == "ASIN(A1/B1/1000)");
  CHECK(s.text(whole_down(x * 3)) == "INT(C1*3*1.000000001)");
  CHECK(s.text(whole_up(x + y)) == "ROUNDUP((C1+D1)*0.999999999,0)");
  CHECK(s.text(round_money(Money<Traced>{x.si} + Money<Traced>{y.si}, 2), unit::money) == "ROUND(C1+D1,2)");
}

TEST_CASE("named results are cells where they stand and are written out where they do not") {
  Sheet s;
  const auto a = s.cell("A1", 7), b = s.cell("B1", 3);
  const auto sum = s.result("E9", a + b, plain);
  const auto unplaced = name(a + b, plain);
  CHECK(s.text(sum) == "A1+B1");
  CHECK(s.text(sum * a) == "E9*A1");
  CHECK(s.text(unplaced * a) == "(A1+B1)*A1");
  const FormulaStyle words{" × ", " / ", " + ", " - "};
  CHECK(s.text(unplaced * a / b - a, unit::none, words) == "(A1 + B1) × A1 / B1 - A1");
}

TEST_CASE("numbers of formulas keep fifteen digits") {
  CHECK(formula_number(1000) == "1000");
  CHECK(formula_number(0.1) == "0.1");
  CHECK(formula_number(1 / 3.0) == "0.333333333333333");
  CHECK(formula_number(1e-7) == "1E-07");
  CHECK(formula_number(123456789012345) == "123456789012345");
  CHECK(formula_number(1e21) == "1E+21");
  CHECK(formula_number(-2.5) == "-2.5");
}
