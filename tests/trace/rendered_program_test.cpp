// Precedence, brackets and scales: formulas of random calculations over the whole vocabulary give the traced values.
#include <doctest/doctest.h>

#include <cstring>

#include "random_program.hpp"
#include "recorded_row.hpp"

using namespace seambook;

namespace {

bool near_whole(double x) { return std::fabs(x - std::round(x)) < 1e-10 * (1 + std::fabs(x)); }

/// A hair from a step, a value computed in another order may fall to either side.
bool near_a_step(const Tape& tape) {
  for (const TapeNode& n : tape.nodes) {
    const double a = tape.nodes[n.operands[0]].value, b = tape.nodes[n.operands[1]].value;
    if (n.op == Op::whole_up && near_whole(a * (1 - whole_tolerance))) return true;
    if (n.op == Op::whole_down && near_whole(a * (1 + whole_tolerance))) return true;
    if (n.op == Op::round_decimal && near_whole(a * std::pow(10.0, n.digits) + 0.5)) return true;
    if (n.op == Op::select_less && std::fabs(a - b) < 1e-10 * (1 + std::fabs(a))) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("random calculations give the same bits plain and traced") {
  random_row::Dice dice(11);
  Tape tape;
  for (int trial = 0; trial < 3000; ++trial) {
    CAPTURE(trial);
    const random_program::Program program = random_program::any(dice, 30);
    tape.clear();
    const std::vector<double> plain = random_program::run(program);
    const std::vector<Traced> traced = random_program::run(program, tape);
    for (std::size_t i = 0; i < plain.size(); ++i) {
      CAPTURE(i);
      CHECK(std::memcmp(&plain[i], &traced[i].value, sizeof(double)) == 0);
    }
  }
}

TEST_CASE("formulas of random calculations give the traced values") {
  random_row::Dice dice(12);
  Tape tape;
  int checked = 0, skipped = 0;
  for (int trial = 0; trial < 20000; ++trial) {
    CAPTURE(trial);
    const random_program::Program program = random_program::any(dice, 8);
    tape.clear();
    const Traced last = random_program::run(program, tape).back();
    if (last.tape == nullptr || near_a_step(tape)) {
      ++skipped;
      continue;
    }
    const auto everything = [](const Tape&, std::uint32_t) { return true; };
    const auto inputs_only = [](const Tape& t, std::uint32_t node) { return recorded_row::is_input(t, node); };
    const evaluate::Cells cells = recorded_row::cells_of(tape);
    const double size = recorded_row::term_sizes(tape)[last.node];
    for (const double unit : {1.0, 1e-3}) {
      const std::string over_cells = formula(tape, last.node, unit, recorded_row::leaves(everything));
      const std::string written_out = formula(tape, last.node, unit, recorded_row::leaves(inputs_only));
      CAPTURE(over_cells);
      CAPTURE(written_out);
      CHECK(std::fabs(evaluate::formula(over_cells, cells) * unit - last.value) <= 1e-9 * size);
      CHECK(std::fabs(evaluate::formula(written_out, cells) * unit - last.value) <= 1e-9 * size);
    }
    ++checked;
  }
  CHECK(checked > 3 * skipped);
  MESSAGE(checked << " calculations, " << skipped << " left out");
}
