// The backward sweep against central differences: move one input a little both ways and compute again.
#include <doctest/doctest.h>

#include <array>

#include "random_program.hpp"

using namespace seambook;

namespace {

/// Which way each choice went and where each step stood. Between two different ones lies a kink: no derivative.
std::vector<double> choices(const Tape& tape) {
  std::vector<double> found;
  for (const TapeNode& n : tape.nodes) {
    const double a = tape.nodes[n.operands[0]].value, b = tape.nodes[n.operands[1]].value;
    if (n.op == Op::least || n.op == Op::greatest || n.op == Op::select_less) {
      found.push_back(a < b ? 1 : b < a ? 2 : 3);
    }
    if (n.op == Op::whole_up || n.op == Op::whole_down) found.push_back(n.value);
  }
  return found;
}

struct Counts {
  int compared = 0, kinks = 0, curved = 0;
};

/// `computed(share, tape)` is the result with one input moved by a share of itself; `slope` the derivative by that
/// share, as swept.
template <class F>
void check_slope(F computed, double slope, Counts& counts) {
  std::vector<std::vector<double>> chosen;
  const auto at = [&](double share) {
    Tape tape;
    const double result = computed(share, tape);
    chosen.push_back(choices(tape));
    return result;
  };
  const double result = at(0);
  const auto difference = [&](double h) { return (at(h) - at(-h)) / (2 * h); };
  const double wide = difference(2e-4), narrow = difference(1e-4);
  for (const std::vector<double>& c : chosen) {
    if (c == chosen.front()) continue;
    ++counts.kinks;
    return;
  }
  const double size = std::fabs(narrow) + std::fabs(result) * 1e-3 + 1e-9;
  if (std::fabs(wide - narrow) > 1e-4 * size) {
    ++counts.curved;
    return;
  }
  ++counts.compared;
  const double best = (4 * narrow - wide) / 3;  // the error of second order removed
  CAPTURE(best);
  CAPTURE(slope);
  CHECK(std::fabs(best - slope) <= 1e-6 * size);
}

void tell(const Counts& counts) {
  MESSAGE(counts.compared << " derivatives compared, " << counts.kinks << " at kinks and " << counts.curved
                          << " too curved left out");
}

/// Calls f(number) for every input of a row in the order in which they are lifted.
template <class F>
void each_row_input(Row<Sourced>& row, F f) {
  const auto one = [&](const Figure&, auto& a, auto&) { f(a.si); };
  each_joint_input(row.joint, row.joint, one);
  each_gouge_input(row.gouge, row.gouge, one);
  each_heat_input(row.heat, row.heat, one);
  for (ElementTerm<Sourced>& term : row.joint.labour.terms) {
    f(term.time.si), f(term.pace.si), f(term.mass_pace.si), f(term.share.si), f(term.multiple.si);
    if (term.has_extent) f(term.extent.si);
  }
  for (PassInputs<Sourced>& pass : row.passes) {
    each_pass_input(pass, pass, one);
    each_metal_input(pass.metal, pass.metal, one);
    for (auto& part : pass.wear_parts) each_wear_part_input(part, part, one);
  }
}

std::size_t input_count(Row<Sourced> row) {
  std::size_t count = 0;
  each_row_input(row, [&](Sourced&) { ++count; });
  return count;
}

/// `row` with its input number k moved by a share; its value before.
double move_input(Row<Sourced>& row, std::size_t k, double share) {
  std::size_t i = 0;
  double before = 0;
  each_row_input(row, [&](Sourced& input) {
    if (i++ != k) return;
    before = input.value;
    input.value *= 1 + share;
  });
  return before;
}

Traced total_cost(const Row<Sourced>& row, Tape& tape) {
  Traced total;
  for (const PassFigures<Traced>& p : row_figures(lift_row<Traced>(row, &tape)).passes) total = total + p.cost.si;
  return total;
}

}  // namespace

TEST_CASE("the sweep gives the derivatives of random calculations") {
  random_row::Dice dice(21);
  Counts counts;
  for (int trial = 0; trial < 4000; ++trial) {
    CAPTURE(trial);
    // Rounding passes a derivative on as if nothing were rounded, so it has no place here.
    const random_program::Program program = random_program::any(dice, 12, false);
    Tape tape;
    const std::vector<Traced> results = random_program::run(program, tape);
    if (results.back().tape == nullptr) continue;
    const std::vector<double> adjoint = sweep(tape, {{results.back().node, 1}});
    for (std::size_t k = 0; k < program.inputs.size(); ++k) {
      CAPTURE(k);
      const auto moved = [&](double share, Tape& scratch) {
        random_program::Program other = program;
        other.inputs[k] *= 1 + share;
        return random_program::run(other, scratch).back().value;
      };
      check_slope(moved, adjoint[results[k].node] * program.inputs[k], counts);
    }
  }
  CHECK(counts.compared > 10 * (counts.kinks + counts.curved));
  tell(counts);
}

TEST_CASE("the sweep gives the derivatives of a row's cost by each of its inputs") {
  random_row::Dice dice(22);
  Counts counts;
  for (int trial = 0; trial < 300; ++trial) {
    CAPTURE(trial);
    const Row<Sourced> row = random_row::any(dice);
    Tape tape;
    const Traced cost = total_cost(row, tape);
    const std::vector<double> adjoint = sweep(tape, {{cost.node, 1}});
    // Inputs with a source are the first nodes, in order; those without have no node.
    std::uint32_t node = 0;
    const std::size_t inputs = input_count(row);
    for (std::size_t k = 0; k < inputs; ++k) {
      Row<Sourced> same = row;
      const double value = move_input(same, k, 0);
      if (value == 0) continue;
      CAPTURE(k);
      CAPTURE(tape.labels[tape.nodes[node].label].figure->key);
      const auto moved = [&](double share, Tape& scratch) {
        Row<Sourced> other = row;
        move_input(other, k, share);
        return total_cost(other, scratch).value;
      };
      check_slope(moved, adjoint[node++] * value, counts);
    }
    CHECK(tape.nodes[node].op != Op::input);
  }
  CHECK(counts.compared > 20 * (counts.kinks + counts.curved));
  tell(counts);
}

TEST_CASE("a weighted sum of results sweeps like the sum of sweeps") {
  random_row::Dice dice(23);
  for (int trial = 0; trial < 200; ++trial) {
    CAPTURE(trial);
    Tape tape;
    const RowFigures<Traced> row = row_figures(lift_row<Traced>(random_row::any(dice), &tape));
    const std::uint32_t cost = row.passes[0].cost.si.node, floor = row.passes[0].labour.floor.si.node;
    const std::vector<double> both = sweep(tape, {{cost, 2}, {floor, -0.5}});
    const std::vector<double> by_cost = sweep(tape, {{cost, 1}}), by_floor = sweep(tape, {{floor, 1}});
    double largest = 0;
    for (const double x : both) largest = greatest(largest, std::fabs(x));
    for (std::size_t i = 0; i < both.size(); ++i) {
      const double expected = 2 * by_cost[i] - 0.5 * by_floor[i];
      const double size = std::fabs(2 * by_cost[i]) + std::fabs(0.5 * by_floor[i]);
      CHECK(std::fabs(both[i] - expected) <= 1e-12 * size + 1e-13 * largest);
    }
  }
}

TEST_CASE("counts have no slope and rounding passes it on") {
  Tape tape;
  const Traced x =
      lift_number(Sourced{2.345, 1}, random_program::shown_plainly, 0, static_cast<Traced*>(nullptr), &tape);
  CHECK(sweep(tape, {{whole_up(x).node, 1}})[x.node] == 0);
  CHECK(sweep(tape, {{whole_down(x).node, 1}})[x.node] == 0);
  CHECK(sweep(tape, {{(round_decimal(x, 2) * Traced(3)).node, 1}})[x.node] == 3);
}
