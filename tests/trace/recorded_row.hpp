// A row of the estimate traced on its own tape, its labelled nodes standing in cells: every input in column C onwards
// of a rates page or of its own row, every named figure in a cell of its own.
#pragma once

#include "evaluate.hpp"
#include "random_row.hpp"
#include "trace/formula.hpp"

namespace recorded_row {

using namespace seambook;

inline bool labelled(const Tape& tape, std::uint32_t node) { return tape.nodes[node].label != 0; }
inline const Figure& figure_of(const Tape& tape, std::uint32_t node) {
  return *tape.labels[tape.nodes[node].label].figure;
}
inline bool is_input(const Tape& tape, std::uint32_t node) { return tape.nodes[node].op == Op::input; }
/// A cell's text: inputs stand on another page, named figures on the row's own.
inline std::string cell_of(const Tape& tape, std::uint32_t node) {
  return (is_input(tape, node) ? "Rates!$B$" : "AB") + std::to_string(node + 1);
}
/// What the sheet shows in each cell, in the unit of its figure.
inline evaluate::Cells cells_of(const Tape& tape) {
  evaluate::Cells cells;
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    if (labelled(tape, i)) cells[cell_of(tape, i)] = tape.nodes[i].value / figure_of(tape, i).unit.si;
  }
  return cells;
}
/// Labelled nodes that `shown` admits are cells; named ones that it does not are written out.
template <class Shown>
LeafFinder leaves(Shown shown) {
  return [shown](const Tape& tape, std::uint32_t node) -> std::optional<LeafText> {
    if (!shown(tape, node)) return std::nullopt;
    return LeafText{cell_of(tape, node), figure_of(tape, node).unit.si};
  };
}

/// How large the terms are that made each value: what a rounding error of one of them is measured against. It exceeds
/// |value| where terms of a difference cancel.
inline std::vector<double> term_sizes(const Tape& tape) {
  std::vector<double> sizes(tape.nodes.size());
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const TapeNode& n = tape.nodes[i];
    const double a = sizes[n.operands[0]], b = sizes[n.operands[1]];
    const double right = std::fabs(tape.nodes[n.operands[1]].value);
    sizes[i] = std::fabs(n.value);
    if (n.op == Op::named) sizes[i] = a;
    if (n.op == Op::add || n.op == Op::subtract) sizes[i] = a + b;
    if (n.op == Op::least || n.op == Op::greatest) sizes[i] = n.value == tape.nodes[n.operands[0]].value ? a : b;
    if (n.op == Op::multiply) sizes[i] = a * b;
    if (n.op == Op::divide && right > 0) sizes[i] = a * b / (right * right);
    // Near 1 a logarithm is as uncertain as its argument is relative to itself.
    const double argument = std::fabs(tape.nodes[n.operands[0]].value);
    if (n.op == Op::logarithm && argument > 0) sizes[i] = std::fabs(n.value) + a / argument;
  }
  return sizes;
}

}  // namespace recorded_row
