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

std::vector<double> sweep(const Tape& tape, const std::vector<Seed>& seeds) {
  std::vector<double> adjoint(tape.nodes.size(), 0.0);
  for (const Seed& seed : seeds) adjoint[seed.node] += seed.weight;
  for (std::size_t i = tape.nodes.size(); i-- > 0;) {
    const double d = adjoint[i];
    if (d == 0) continue;
    const TapeNode& n = tape.nodes[i];
    const auto value = [&](int k) { return tape.nodes[n.operands[k]].value; };
    const auto pass = [&](int k, double slope) { adjoint[n.operands[k]] += d * slope; };
    switch (n.op) {
      case Op::constant:
      case Op::input:
      case Op::whole_up:
      case Op::whole_down:
        break;
      case Op::named:
      case Op::round_decimal:
        pass(0, 1);
        break;
      case Op::add:
        pass(0, 1), pass(1, 1);
        break;
      case Op::subtract:
        pass(0, 1), pass(1, -1);
        break;
      case Op::multiply:
        pass(0, value(1)), pass(1, value(0));
        break;
      case Op::divide:
        pass(0, 1 / value(1)), pass(1, -n.value / value(1));
        break;
      case Op::least:
        pass(value(1) < value(0) ? 1 : 0, 1);
        break;
      case Op::greatest:
        pass(value(0) < value(1) ? 1 : 0, 1);
        break;
      case Op::select_less:
        pass(value(0) < value(1) ? 2 : 3, 1);
        break;
      case Op::root:
        pass(0, n.value > 0 ? 0.5 / n.value : 0);
        break;
      case Op::power:
        pass(0, value(1) * std::pow(value(0), value(1) - 1));
        break;
      case Op::exponential:
        pass(0, n.value);
        break;
      case Op::logarithm:
        pass(0, 1 / value(0));
        break;
      case Op::sine:
        pass(0, std::cos(value(0)));
        break;
      case Op::cosine:
        pass(0, -std::sin(value(0)));
        break;
      case Op::tangent:
        pass(0, 1 + n.value * n.value);
        break;
      case Op::hyperbolic_tangent:
        pass(0, 1 - n.value * n.value);
        break;
    }
  }
  return adjoint;
}

}  // namespace seambook
