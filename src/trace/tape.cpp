#include "trace/tape.hpp"

#include <cmath>

namespace seambook {

void Tape::clear() {
  nodes.clear();
  labels.resize(1);
}

int operand_count(Op op) {
  switch (op) {
    case Op::constant:
    case Op::input:
      return 0;
    case Op::add:
    case Op::subtract:
    case Op::multiply:
    case Op::divide:
    case Op::least:
    case Op::greatest:
    case Op::power:
      return 2;
    case Op::select_less:
      return 4;
    default:
      return 1;
  }
}

std::vector<bool> read_nodes(const Tape& tape) {
  std::vector<bool> read(tape.nodes.size(), false);
  for (const TapeNode& node : tape.nodes) {
    for (int k = 0; k < operand_count(node.op); ++k) read[node.operands[k]] = true;
  }
  return read;
}

namespace {

/// Hands what a node has received, `d`, on to its operands.
void pass_on(const Tape& tape, const TapeNode& n, double d, std::vector<double>& adjoint) {
  const auto value = [&](int k) { return tape.nodes[n.operands[k]].value; };
  const auto pass = [&](int k, double slope) { adjoint[n.operands[k]] += d * slope; };
  switch (n.op) {
    case Op::constant:
    case Op::input:
    case Op::whole_up:
    case Op::whole_down:
      return;
    case Op::named:
    case Op::round_decimal:
      return pass(0, 1);
    case Op::add:
      pass(0, 1);
      return pass(1, 1);
    case Op::subtract:
      pass(0, 1);
      return pass(1, -1);
    case Op::multiply:
      pass(0, value(1));
      return pass(1, value(0));
    case Op::divide:
      pass(0, 1 / value(1));
      return pass(1, -n.value / value(1));
    case Op::least:
      return pass(value(1) < value(0) ? 1 : 0, 1);
    case Op::greatest:
      return pass(value(0) < value(1) ? 1 : 0, 1);
    case Op::select_less:
      return pass(value(0) < value(1) ? 2 : 3, 1);
    case Op::root:
      return pass(0, n.value > 0 ? 0.5 / n.value : 0);
    case Op::power:
      return pass(0, value(1) * std::pow(value(0), value(1) - 1));
    case Op::exponential:
      return pass(0, n.value);
    case Op::logarithm:
      return pass(0, 1 / value(0));
    case Op::sine:
      return pass(0, std::cos(value(0)));
    case Op::cosine:
      return pass(0, -std::sin(value(0)));
    case Op::tangent:
      return pass(0, 1 + n.value * n.value);
    case Op::hyperbolic_tangent:
      return pass(0, 1 - n.value * n.value);
    case Op::arc_sine: {  // at a right angle the slope is beyond all bounds: it counts as flat
      const double cosine = std::cos(n.value);
      return pass(0, cosine > 1e-7 ? 1 / cosine : 0);
    }
  }
}

}  // namespace

std::vector<double> sweep(const Tape& tape, const std::vector<Seed>& seeds) {
  std::vector<double> adjoint(tape.nodes.size(), 0.0);
  for (const Seed& seed : seeds) adjoint[seed.node] += seed.weight;
  for (std::size_t i = tape.nodes.size(); i-- > 0;) {
    if (adjoint[i] != 0) pass_on(tape, tape.nodes[i], adjoint[i], adjoint);
  }
  return adjoint;
}

}  // namespace seambook
