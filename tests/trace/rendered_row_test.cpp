// Every formula of random rows, computed from the cells it names, gives the value that was traced.
#include <doctest/doctest.h>

#include "recorded_row.hpp"

using namespace seambook;

namespace {

/// Counts the named figures checked.
template <class Shown>
std::size_t check_formulas(const Tape& tape, Shown shown) {
  const evaluate::Cells cells = recorded_row::cells_of(tape);
  const std::vector<double> sizes = recorded_row::term_sizes(tape);
  std::size_t checked = 0;
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    if (tape.nodes[i].op != Op::named) continue;
    const double unit = recorded_row::figure_of(tape, i).unit.si;
    const std::string text = formula(tape, i, unit, recorded_row::leaves(shown));
    CAPTURE(recorded_row::figure_of(tape, i).key);
    CAPTURE(text);
    const double found = evaluate::formula(text, cells) * unit;
    CHECK(std::fabs(found - tape.nodes[i].value) <= 1e-12 * sizes[i]);
    ++checked;
  }
  return checked;
}

/// Traces `count` random rows and checks each.
template <class Shown>
void check_rows(std::uint32_t seed, int count, Shown shown) {
  random_row::Dice dice(seed);
  Tape tape;
  std::size_t checked = 0;
  for (int trial = 0; trial < count; ++trial) {
    CAPTURE(trial);
    tape.clear();
    row_figures(lift_row<Traced>(random_row::any(dice), &tape));
    checked += check_formulas(tape, shown);
  }
  MESSAGE(checked << " formulas computed");
}

}  // namespace

TEST_CASE("formulas over cells give the traced values") {
  check_rows(2, 2000, [](const Tape&, std::uint32_t) { return true; });
}

TEST_CASE("formulas that write out what they are made of give the traced values") {
  check_rows(3, 150, [](const Tape& tape, std::uint32_t node) { return recorded_row::is_input(tape, node); });
}

TEST_CASE("formulas over some cells and some written out give the traced values") {
  check_rows(4, 300,
             [](const Tape& tape, std::uint32_t node) { return recorded_row::is_input(tape, node) || node % 3 != 0; });
}

TEST_CASE("formulas over plain numbers give the traced values") {
  check_rows(5, 150, [](const Tape& tape, std::uint32_t node) { return !recorded_row::is_input(tape, node); });
  check_rows(6, 50, [](const Tape&, std::uint32_t) { return false; });
}
