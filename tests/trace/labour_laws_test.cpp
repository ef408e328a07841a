// Laws of the labour of random rows: floor time is the sum of its elements, lengths and counts scale, waiting costs
// nothing.
#include <doctest/doctest.h>

#include "estimate/element_sums.hpp"
#include "random_row.hpp"

using namespace seambook;

namespace {

constexpr int rows_thrown = 400;

doctest::Approx close_to(double x) { return doctest::Approx(x).epsilon(1e-12).scale(1e-6); }

RowFigures<double> figures_of(const Row<Sourced>& row) { return row_figures(lift_row<double>(row)); }

double floor_of(const RowFigures<double>& row) {
  double floor = 0;
  for (const PassFigures<double>& group : row.passes) floor += group.labour.floor.si;
  return floor;
}

double minutes_of(const Row<Sourced>& row, const RowFigures<double>& figures) {
  double sum = 0;
  each_labour_element(row.shape.labour, figures, [&](std::string_view, Time<> minutes) { sum += minutes.si; });
  return sum;
}

/// A row whose labour scales with its length: no ends of tacks, no whole elements, passes as given.
Row<Sourced> smooth(random_row::Dice& dice) {
  Row<Sourced> row = random_row::any(dice);
  while (row.shape.weld == WeldKind::plug || row.shape.weld == WeldKind::slot) row = random_row::any(dice);
  row.shape.intermittent = row.shape.tube = false;
  row.shape.sizes.rectangle = row.shape.sizes.staggered = row.shape.sizes.branch = false;
  if (row.joint.line.si.value == 0) dice.give(row.joint.line, 100, 5000, unit::mm);
  return row;
}

}  // namespace

TEST_CASE("floor minutes are the elements together with access and allowance") {
  random_row::Dice dice(20260518);
  for (int i = 0; i < rows_thrown; ++i) {
    const Row<Sourced> row = random_row::any(dice);
    const RowFigures<double> figures = figures_of(row);
    const double access = row.shape.labour.access ? row.joint.labour.access.si.value : 1;
    const double allowance = row.shape.labour.by_factor ? 1 : 1 + row.joint.labour.personal.si.value;
    CAPTURE(i);
    CHECK(floor_of(figures) == close_to(minutes_of(row, figures) * access * allowance));
  }
}

TEST_CASE("twice the length doubles what is counted by metres and leaves what is counted by joints") {
  random_row::Dice dice(7);
  int seen = 0;
  for (int i = 0; i < rows_thrown; ++i) {
    Row<Sourced> row = smooth(dice);
    const RowFigures<double> once = figures_of(row);
    row.joint.line.si.value *= 2;
    const RowFigures<double> twice = figures_of(row);
    for (std::size_t k = 0; k < labour_kinds; ++k) {
      bool metres = true, joints = true, any = false;
      for (const ElementTerm<Sourced>& term : row.joint.labour.terms) {
        if (static_cast<std::size_t>(term.kind) != k || !term.attended) continue;
        const bool by_length = term.per >= Driver::metre && term.per <= Driver::pass_metre;
        any = true, metres = metres && by_length, joints = joints && (term.per == Driver::joint);
      }
      const double before = once.joint.labour.elements.of[k].si, after = twice.joint.labour.elements.of[k].si;
      if (any && metres) CHECK(after == close_to(2 * before));
      if (any && joints) CHECK(after == close_to(before));
      seen += any && (metres || joints);
    }
  }
  CHECK(seen > 50);
}

TEST_CASE("waiting is kept apart and costs nothing") {
  random_row::Dice dice(11);
  int seen = 0;
  for (int i = 0; i < rows_thrown; ++i) {
    Row<Sourced> row = random_row::any(dice);
    row.heat_shape.heated = false;  // its own waiting comes with minutes that are charged
    const RowFigures<double> with = figures_of(row);
    if (with.joint.labour.elements.waiting.si == 0) continue;
    ++seen;
    std::erase_if(row.joint.labour.terms, [](const ElementTerm<Sourced>& term) { return !term.attended; });
    const RowFigures<double> without = figures_of(row);
    CHECK(without.joint.labour.elements.waiting.si == 0);
    CHECK(floor_of(without) == floor_of(with));
    for (std::size_t g = 0; g < with.passes.size(); ++g) CHECK(without.passes[g].cost.si == with.passes[g].cost.si);
  }
  CHECK(seen > 30);
}

TEST_CASE("twice the operating factor halves the time that it stands for") {
  random_row::Dice dice(13);
  int seen = 0;
  for (int i = 0; i < rows_thrown; ++i) {
    Row<Sourced> row = random_row::any(dice);
    if (!row.shape.labour.by_factor) continue;
    ++seen;
    const RowFigures<double> before = figures_of(row);
    for (PassInputs<Sourced>& pass : row.passes) pass.labour.operating_factor.si.value *= 2;
    const RowFigures<double> after = figures_of(row);
    for (std::size_t g = 0; g < before.passes.size(); ++g) {
      CHECK(after.passes[g].labour.welding.si == close_to(before.passes[g].labour.welding.si / 2));
      CHECK(after.passes[g].arc.si == before.passes[g].arc.si);
    }
  }
  CHECK(seen > 30);
}
