// Random calculations over the whole vocabulary, computed alike for plain and for traced numbers. Each step takes
// earlier results; one that would leave the domain of its function or grow out of hand is never chosen.
#pragma once

#include "random_row.hpp"

namespace random_program {

using namespace seambook;

inline constexpr Figure shown_plainly{"plain", "plain", unit::none};
inline constexpr Figure shown_in_mm{"length", "length", unit::mm};

struct Step {
  Op op = Op::constant;
  std::size_t operands[4] = {0, 0, 0, 0};
  double constant = 0;  // value, or exponent
  int digits = 0;
  bool named = false;
};
struct Program {
  std::vector<double> inputs;
  std::vector<Step> steps;
};

template <class N>
N take(const Step& step, const std::vector<N>& x) {
  const N& a = x[step.operands[0]];
  const N& b = x[step.operands[1]];
  switch (step.op) {
    case Op::add:
      return a + b;
    case Op::subtract:
      return a - b;
    case Op::multiply:
      return a * b;
    case Op::divide:
      return a / b;
    case Op::least:
      return least(a, b);
    case Op::greatest:
      return greatest(a, b);
    case Op::select_less:
      return select_less(a, b, x[step.operands[2]], x[step.operands[3]]);
    case Op::whole_up:
      return whole_up(a);
    case Op::whole_down:
      return whole_down(a);
    case Op::round_decimal:
      return round_decimal(a, step.digits);
    case Op::root:
      return root(a);
    case Op::power:
      return power(a, step.constant);
    case Op::exponential:
      return exponential(a);
    case Op::logarithm:
      return logarithm(a);
    case Op::sine:
      return sine(a);
    case Op::cosine:
      return cosine(a);
    case Op::tangent:
      return tangent(a);
    case Op::hyperbolic_tangent:
      return hyperbolic_tangent(a);
    case Op::arc_sine:
      return arc_sine(a);
    default:
      return N(step.constant);
  }
}

/// All results: the inputs first, then one for each step.
inline std::vector<double> run(const Program& program) {
  std::vector<double> x = program.inputs;
  for (const Step& step : program.steps) x.push_back(take(step, x));
  return x;
}
inline std::vector<Traced> run(const Program& program, Tape& tape) {
  std::vector<Traced> x;
  for (std::size_t i = 0; i < program.inputs.size(); ++i) {
    const Figure& figure = i % 2 == 0 ? shown_plainly : shown_in_mm;
    x.push_back(lift_number(Sourced{program.inputs[i], 1}, figure, 0, static_cast<Traced*>(nullptr), &tape));
  }
  for (const Step& step : program.steps) {
    Traced result = take(step, x);
    if (step.named) result = name(Ratio<Traced>{result}, shown_plainly).si;
    x.push_back(result);
  }
  return x;
}

/// Whether formulas of the trade may take this step: within the domain, of a size that keeps its digits.
inline bool fits(const Step& step, const std::vector<double>& x, double result) {
  const double a = x[step.operands[0]], b = x[step.operands[1]];
  const bool positive = step.op == Op::root || step.op == Op::logarithm || step.op == Op::power;
  if (positive && a < 0.01) return false;
  if (step.op == Op::divide && std::fabs(b) < 0.01) return false;
  const bool angle = step.op == Op::sine || step.op == Op::cosine || step.op == Op::tangent;
  if (angle && std::fabs(a) > 1.3) return false;  // far out an angle has no digits left, near 90° the tangent has none
  if (step.op == Op::arc_sine && std::fabs(a) > 0.95) return false;       // near its end the slope is beyond all bounds
  if (step.op == Op::logarithm && std::fabs(a - 1) < 0.01) return false;  // near 1 it has no digits left
  if (step.op == Op::whole_up && a < 0) return false;                     // counts are never negative
  return std::isfinite(result) && std::fabs(result) < 1e4 && (result == 0 || std::fabs(result) > 1e-4);
}

inline Program any(random_row::Dice& dice, int steps, bool rounding = true) {
  Program program;
  for (int i = 0; i < 4; ++i) program.inputs.push_back(dice.between(0.1, 4));
  std::vector<double> x = program.inputs;
  while (static_cast<int>(program.steps.size()) < steps) {
    Step step;
    step.op = static_cast<Op>(dice.whole(0, static_cast<int>(Op::arc_sine)));
    if (step.op == Op::input || step.op == Op::named || (step.op == Op::round_decimal && !rounding)) continue;
    // The latest results twice as often, so that calculations grow deep.
    const int last = static_cast<int>(x.size()) - 1;
    for (std::size_t& operand : step.operands) {
      operand = static_cast<std::size_t>(dice.whole(dice.one_in(2) ? 0 : last / 2, last));
    }
    step.constant = dice.one_in(3) ? dice.whole(-3, 3) : dice.between(-2.5, 2.5);
    step.digits = dice.whole(0, 4);
    step.named = dice.one_in(5);
    const double result = take(step, x);
    if (!fits(step, x, result)) continue;
    program.steps.push_back(step);
    x.push_back(result);
  }
  return program;
}

}  // namespace random_program
