// Laws of shared sections: what given passes leave is laid by the computed ones, and what is gouged is put back.
#include <doctest/doctest.h>

#include "random_row.hpp"

using namespace seambook;

namespace {

RowFigures<double> figures_of(const Row<Sourced>& row) { return row_figures(lift_row<double>(row)); }

/// The group whose passes are computed from what the others leave.
std::optional<std::size_t> computed_group(const Row<Sourced>& row) {
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    if (shape.filler && shape.metal.count == PassCount::from_section) return g;
  }
  return std::nullopt;
}

}  // namespace

TEST_CASE("given passes lay what they lay, and the computed ones all that is left") {
  random_row::Dice dice(41);
  int left_over = 0, nothing_left = 0;
  for (int trial = 0; trial < 6000; ++trial) {
    CAPTURE(trial);
    const Row<Sourced> row = random_row::any(dice);
    const auto rest = computed_group(row);
    if (!rest || row.passes.size() == 1) continue;
    const RowFigures<double> out = figures_of(row);
    double laid = 0, left = out.joint.laid.si;
    for (std::size_t g = 0; g < row.passes.size(); ++g) {
      if (!row.pass_shapes[g].filler) continue;
      if (row.pass_shapes[g].metal.count == PassCount::given) laid += out.passes[g].lays.si;
      if (row.pass_shapes[g].metal.count == PassCount::from_gouge) {
        CHECK(out.passes[g].section.si == out.joint.gouged.si);
        left -= out.joint.gouged.si;
      }
    }
    const PassFigures<double>& p = out.passes[*rest];
    CHECK(p.passes.si >= 1);
    CHECK(p.travel.si <= row.passes[*rest].travel_high.si.value);
    CHECK(p.travel.si >= row.passes[*rest].travel_low.si.value);
    if (laid >= left) {
      CHECK(p.section.si == 0);
      CHECK(p.deposit.si == 0);
      ++nothing_left;
      continue;
    }
    CHECK(p.section.si == doctest::Approx(left - laid).epsilon(1e-9));
    for (std::size_t g = 0; g < row.passes.size(); ++g) {
      if (row.pass_shapes[g].filler && row.pass_shapes[g].metal.count == PassCount::given)
        CHECK(out.passes[g].section.si == out.passes[g].lays.si);
    }
    ++left_over;
  }
  CHECK(left_over > 200);
  CHECK(nothing_left > 200);
}

TEST_CASE("gouging adds exactly its section, its minutes and nothing else to lay") {
  random_row::Dice dice(42);
  int gouged = 0;
  for (int trial = 0; trial < 4000; ++trial) {
    CAPTURE(trial);
    Row<Sourced> row = random_row::any(dice);
    if (!row.gouge_shape.gouged) continue;
    const RowFigures<double> with = figures_of(row);
    row.gouge_shape.gouged = false;
    for (std::size_t g = 0; g < row.passes.size(); ++g) {
      MetalShape& metal = row.pass_shapes[g].metal;
      if (metal.count == PassCount::from_gouge)
        metal.count = PassCount::given, dice.count(row.passes[g].given_passes, 1, 1);
    }
    const RowFigures<double> without = figures_of(row);
    const double groove = 3.14159265358979323846 / 4 * row.gouge.depth.si.value * row.gouge.width.si.value;
    CHECK(with.joint.section.si == without.joint.section.si);
    CHECK(with.joint.laid.si == doctest::Approx(without.joint.laid.si + groove).epsilon(1e-12));
    double deposit = 0, minutes = 0;
    for (const PassFigures<double>& p : with.passes) deposit += p.deposit.si, minutes += p.labour.gouge.si;
    CHECK(minutes == doctest::Approx(with.joint.weld_length.si * row.gouge.pace.si.value));
    if (deposit == 0) continue;
    for (const PassFigures<double>& p : without.passes) deposit -= p.deposit.si;
    const double put_back = groove * with.joint.weld_length.si * row.joint.density.si.value;
    CHECK(deposit == doctest::Approx(put_back).epsilon(1e-6));
    ++gouged;
  }
  CHECK(gouged > 300);
}
