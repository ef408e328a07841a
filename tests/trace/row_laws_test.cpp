// Laws of the estimate that hold whatever the numbers: what doubles, what adds up, what does not depend on the unit.
#include <doctest/doctest.h>

#include <algorithm>

#include "random_row.hpp"

using namespace seambook;

namespace {

RowFigures<double> figures(const Row<Sourced>& row) { return row_figures(lift_row<double>(row)); }
doctest::Approx near(double x) { return doctest::Approx(x).epsilon(1e-12); }

/// A row in one length, so that lengths may be stretched without another count of elements.
Row<Sourced> continuous(random_row::Dice& dice) {
  Row<Sourced> row = random_row::any(dice);
  const auto by_length = [](const JointShape& s) {
    return !s.intermittent && !s.tube && !s.sizes.rectangle && !is_hole(s.weld);
  };
  while (!by_length(row.shape)) row = random_row::any(dice);
  return row;
}

bool changes_electrodes(const Row<Sourced>& row) {
  return std::any_of(row.pass_shapes.begin(), row.pass_shapes.end(),
                     [](const PassShape& shape) { return shape.metal.changes; });
}

}  // namespace

TEST_CASE("twice the length is twice the weld metal and the arc time") {
  random_row::Dice dice(31);
  for (int trial = 0; trial < 1000; ++trial) {
    CAPTURE(trial);
    Row<Sourced> row = continuous(dice);
    const RowFigures<double> once = figures(row);
    row.joint.line.si.value *= 2;
    const RowFigures<double> twice = figures(row);
    CHECK(twice.joint.weld_length.si == 2 * once.joint.weld_length.si);
    CHECK(twice.joint.weld_elements == once.joint.weld_elements);
    for (std::size_t g = 0; g < once.passes.size(); ++g) {
      CHECK(twice.passes[g].deposit.si == near(2 * once.passes[g].deposit.si));
      CHECK(twice.passes[g].filler.si == near(2 * once.passes[g].filler.si));
      CHECK(twice.passes[g].filler_cost.si == near(2 * once.passes[g].filler_cost.si));
      CHECK(twice.passes[g].arc.si == near(2 * once.passes[g].arc.si));
      CHECK(twice.passes[g].energy.si == near(2 * once.passes[g].energy.si));
      CHECK(twice.passes[g].passes == once.passes[g].passes);
      CHECK(twice.passes[g].labour.start.si == once.passes[g].labour.start.si);
    }
  }
}

TEST_CASE("twice the weldments cost twice as much") {
  random_row::Dice dice(32);
  for (int trial = 0; trial < 1000; ++trial) {
    CAPTURE(trial);
    Row<Sourced> row = random_row::any(dice);
    if (changes_electrodes(row)) continue;  // whole electrodes: twice the work may take one fewer than twice as many
    const RowFigures<double> once = figures(row);
    row.joint.weldments.si.value *= 2;
    const RowFigures<double> twice = figures(row);
    for (std::size_t g = 0; g < once.passes.size(); ++g) {
      CHECK(twice.passes[g].cost.si == near(2 * once.passes[g].cost.si));
      CHECK(twice.passes[g].labour.floor.si == near(2 * once.passes[g].labour.floor.si));
      CHECK(twice.passes[g].section == once.passes[g].section);
    }
  }
}

TEST_CASE("the sections of the pass groups with filler add up to the section") {
  random_row::Dice dice(33);
  int shared = 0;
  for (int trial = 0; trial < 2000; ++trial) {
    CAPTURE(trial);
    const Row<Sourced> row = random_row::any(dice);
    const RowFigures<double> out = figures(row);
    double laid = 0;
    int groups = 0;
    for (std::size_t g = 0; g < out.passes.size(); ++g) {
      laid += out.passes[g].section.si;
      groups += row.pass_shapes[g].filler ? 1 : 0;
      if (!row.pass_shapes[g].filler) CHECK(out.passes[g].section.si == 0);
    }
    if (groups == 0) continue;
    CHECK(laid == near(out.joint.laid.si));
    shared += groups > 1 ? 1 : 0;
  }
  CHECK(shared > 300);
}

TEST_CASE("the costs of a group add up to its cost") {
  random_row::Dice dice(34);
  for (int trial = 0; trial < 1000; ++trial) {
    CAPTURE(trial);
    for (const PassFigures<double>& p : figures(random_row::any(dice)).passes) {
      const Money<> parts =
          p.labour_cost + p.filler_cost + p.flux_cost + p.gas_cost + p.power_cost + p.wear_cost + p.equipment_cost;
      CHECK(p.cost.si == near(parts.si));
    }
  }
}

TEST_CASE("computed passes fill the section and travel keeps its limits") {
  random_row::Dice dice(35);
  int filled = 0;
  for (int trial = 0; trial < 3000; ++trial) {
    CAPTURE(trial);
    const Row<Sourced> row = random_row::any(dice);
    const bool computed = row.passes.size() == 1 && row.pass_shapes[0].metal.count == PassCount::from_section;
    if (!computed || !row.pass_shapes[0].filler) continue;
    const PassFigures<double> p = figures(row).passes[0];
    const Row<double> lifted = lift_row<double>(row);
    const double largest = largest_pass(row.pass_shapes[0], lifted.passes[0], lifted.joint.convexity, p.volume_rate).si;
    const double low = row.passes[0].travel_low.si.value, high = row.passes[0].travel_high.si.value;
    CHECK(p.passes.si >= 1);
    CHECK(p.travel.si >= low);
    CHECK(p.travel.si <= high);
    // One pass fewer could not have laid the section with the largest passes there may be.
    CHECK((p.passes.si - 1) * largest <= p.section.si * (1 + 1e-8));
    CHECK(largest <= p.volume_rate.si / low);
    if (p.travel.si > low && p.travel.si < high) {
      CHECK(p.arc.si == near(p.arc_by_deposition.si));
      ++filled;
    }
  }
  CHECK(filled > 100);
}

TEST_CASE("the same joint given as plate of its circumference takes the same weld") {
  random_row::Dice dice(36);
  for (int trial = 0; trial < 300; ++trial) {
    CAPTURE(trial);
    Row<Sourced> row = random_row::any(dice);
    if (!row.shape.tube) continue;
    const RowFigures<double> tube = figures(row);
    row.shape.tube = false;
    row.joint.line = {{row.joint.outside_diameter.si.value * 3.14159265358979323846, 1}};
    const RowFigures<double> plate = figures(row);
    for (std::size_t g = 0; g < tube.passes.size(); ++g) CHECK(tube.passes[g].cost == plate.passes[g].cost);
  }
}

TEST_CASE("a fillet by throat is the fillet by its leg") {
  random_row::Dice dice(37);
  int fillets = 0;
  for (int trial = 0; trial < 4000; ++trial) {
    CAPTURE(trial);
    Row<Sourced> row = random_row::any(dice);
    const bool plain = row.shape.weld == WeldKind::fillet && !row.shape.sizes.unequal && !row.shape.sizes.gapped;
    if (!plain || !row.shape.from_throat) continue;
    const RowFigures<double> by_throat = figures(row);
    row.shape.from_throat = false;
    row.joint.leg = {{row.joint.throat.si.value * std::sqrt(2), 1}};
    const RowFigures<double> by_leg = figures(row);
    CHECK(by_throat.joint.section.si == near(by_leg.joint.section.si));
    const double throat = row.joint.throat.si.value;
    CHECK(by_leg.joint.section.si == near(throat * throat * (1 + row.joint.convexity.si.value)));
    ++fillets;
  }
  CHECK(fillets > 20);
}
