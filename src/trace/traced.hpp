// The number that remembers how it was made: a value and its node on a tape. It computes with the same operations, in
// the same order, as `double`, so both give the same bits.
#pragma once

#include <vector>

#include "trace/tape.hpp"
#include "trace/vocabulary.hpp"

namespace seambook {

/// A constant has no tape until it meets a number that has one.
struct Traced {
  double value = 0;
  Tape* tape = nullptr;
  std::uint32_t node = 0;

  Traced() = default;
  explicit Traced(double constant) : value(constant) {}
  Traced(double v, Tape& t, std::uint32_t n) : value(v), tape(&t), node(n) {}
};

namespace traced_detail {

inline std::uint32_t operand(const Traced& x, Tape& tape) {
  return x.tape != nullptr ? x.node : tape.add({.value = x.value, .op = Op::constant});
}
inline Traced record(Op op, double value, Traced a) {
  if (a.tape == nullptr) return Traced(value);
  return {value, *a.tape, a.tape->add({.value = value, .operands = {a.node}, .op = op})};
}
inline Traced record(Op op, double value, Traced a, Traced b) {
  Tape* tape = a.tape != nullptr ? a.tape : b.tape;
  if (tape == nullptr) return Traced(value);
  const std::uint32_t left = operand(a, *tape);
  const std::uint32_t right = operand(b, *tape);
  return {value, *tape, tape->add({.value = value, .operands = {left, right}, .op = op})};
}

}  // namespace traced_detail

/// Sums start at a plain 0, and kinds that do not arise add one: neither leaves a mark.
inline Traced operator+(Traced a, Traced b) {
  if (a.tape == nullptr && a.value == 0) return b;
  if (b.tape == nullptr && b.value == 0) return a;
  return traced_detail::record(Op::add, a.value + b.value, a, b);
}
inline Traced operator-(Traced a, Traced b) { return traced_detail::record(Op::subtract, a.value - b.value, a, b); }
inline Traced operator*(Traced a, Traced b) { return traced_detail::record(Op::multiply, a.value * b.value, a, b); }
inline Traced operator/(Traced a, Traced b) { return traced_detail::record(Op::divide, a.value / b.value, a, b); }
inline Traced least(Traced a, Traced b) { return traced_detail::record(Op::least, least(a.value, b.value), a, b); }
inline Traced greatest(Traced a, Traced b) {
  return traced_detail::record(Op::greatest, greatest(a.value, b.value), a, b);
}
inline Traced whole_up(Traced x) { return traced_detail::record(Op::whole_up, whole_up(x.value), x); }
inline Traced whole_down(Traced x) { return traced_detail::record(Op::whole_down, whole_down(x.value), x); }
inline Traced root(Traced x) { return traced_detail::record(Op::root, root(x.value), x); }
inline Traced exponential(Traced x) { return traced_detail::record(Op::exponential, exponential(x.value), x); }
inline Traced logarithm(Traced x) { return traced_detail::record(Op::logarithm, logarithm(x.value), x); }
inline Traced sine(Traced x) { return traced_detail::record(Op::sine, sine(x.value), x); }
inline Traced cosine(Traced x) { return traced_detail::record(Op::cosine, cosine(x.value), x); }
inline Traced tangent(Traced x) { return traced_detail::record(Op::tangent, tangent(x.value), x); }
inline Traced hyperbolic_tangent(Traced x) {
  return traced_detail::record(Op::hyperbolic_tangent, hyperbolic_tangent(x.value), x);
}
inline Traced arc_sine(Traced x) { return traced_detail::record(Op::arc_sine, arc_sine(x.value), x); }
inline Traced power(Traced x, double exponent) {
  return traced_detail::record(Op::power, power(x.value, exponent), x, Traced(exponent));
}
inline Traced round_decimal(Traced x, int digits) {
  Traced rounded = traced_detail::record(Op::round_decimal, round_decimal(x.value, digits), x);
  if (rounded.tape != nullptr) rounded.tape->nodes[rounded.node].digits = static_cast<std::int8_t>(digits);
  return rounded;
}
inline Traced select_less(Traced a, Traced b, Traced then, Traced otherwise) {
  const double value = select_less(a.value, b.value, then.value, otherwise.value);
  Tape* tape = nullptr;
  for (const Traced* x : {&a, &b, &then, &otherwise}) tape = tape != nullptr ? tape : x->tape;
  if (tape == nullptr) return Traced(value);
  TapeNode node{.value = value, .op = Op::select_less};
  int k = 0;
  for (const Traced* x : {&a, &b, &then, &otherwise}) node.operands[k++] = traced_detail::operand(*x, *tape);
  return {value, *tape, tape->add(node)};
}

/// Gives a result its name (and so its cell). Plain numbers pass through.
template <Dim D>
Quantity<D> name(Quantity<D> x, const Figure&, std::uint32_t = 0) {
  return x;
}
template <Dim D>
Quantity<D, Traced> name(Quantity<D, Traced> x, const Figure& figure, std::uint32_t row = 0) {
  if (x.si.tape == nullptr) return x;
  Tape& tape = *x.si.tape;
  tape.labels.push_back({&figure, row, no_source});
  const auto label = static_cast<std::uint32_t>(tape.labels.size() - 1);
  return {Traced(x.si.value, tape,
                 tape.add({.value = x.si.value, .operands = {x.si.node}, .label = label, .op = Op::named}))};
}

/// A resolved number and where it was written.
struct Sourced {
  double value = 0;
  SourceId source = no_source;
  friend bool operator==(const Sourced&, const Sourced&) = default;
};

/// By how much numbers are multiplied wherever they stand: rows are SourceIds of the rate book and of the job. Those
/// beyond the ends, and sums, stay as they are.
struct Factors {
  std::vector<double> rates, job;

  double of(SourceId source) const {
    const std::vector<double>& factors = source < first_job_source ? rates : job;
    const std::size_t at = source < first_job_source ? source : source - first_job_source;
    return at < factors.size() ? factors[at] : 1;
  }
};

/// Where numbers are recorded while they are lifted (Traced needs it), and what multiplies them.
struct Lifting {
  Tape* tape = nullptr;
  const Factors* factors = nullptr;

  Lifting() = default;
  Lifting(Tape* onto) : tape(onto) {}
  Lifting(const Factors* by) : factors(by) {}

  double moved(const Sourced& x) const { return factors == nullptr ? x.value : x.value * factors->of(x.source); }
};

/// Turns a resolved quantity into one to calculate with: `double` drops the source, Traced records an input. What has
/// no source (an absent number) stays a constant and gets no cell.
inline double lift_number(const Sourced& x, const Figure&, std::uint32_t, double*, const Lifting& by) {
  return by.moved(x);
}
inline Traced lift_number(const Sourced& x, const Figure& figure, std::uint32_t row, Traced*, const Lifting& by) {
  const double value = by.moved(x);
  if (x.source == no_source) return Traced(value);
  Tape& tape = *by.tape;
  tape.labels.push_back({&figure, row, x.source});
  const auto label = static_cast<std::uint32_t>(tape.labels.size() - 1);
  return {value, tape, tape.add({.value = value, .label = label, .op = Op::input})};
}
template <class N, Dim D>
Quantity<D, N> lift(Quantity<D, Sourced> x, const Figure& figure, std::uint32_t row, const Lifting& by) {
  return {lift_number(x.si, figure, row, static_cast<N*>(nullptr), by)};
}

}  // namespace seambook
