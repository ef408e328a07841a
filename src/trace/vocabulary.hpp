// The operations that formulas of the trade may use beside + - * /, for plain numbers and for quantities.
// trace/traced.hpp gives the same words for the number that records itself; each renders as functions that the usual
// office suites compute. A formula never branches with `if` on a value: it selects.
#pragma once

#include <cmath>
#include <span>

#include "basics/units.hpp"

namespace seambook {

/// Counts are taken through whole_up and whole_down only. In SI metres 0.3/0.05 is 5.999..., in a cell 300/50 is 6: a
/// value this close (relatively) to a whole number counts as that number, here and in the rendered formula alike.
inline constexpr double whole_tolerance = 1e-9;

inline double whole_up(double x) { return std::ceil(x * (1 - whole_tolerance)); }
inline double whole_down(double x) { return std::floor(x * (1 + whole_tolerance)); }
inline double least(double a, double b) { return b < a ? b : a; }
inline double greatest(double a, double b) { return a < b ? b : a; }
inline double select_less(double a, double b, double then, double otherwise) { return a < b ? then : otherwise; }
inline double root(double x) { return std::sqrt(x); }
inline double power(double x, double exponent) { return std::pow(x, exponent); }
inline double exponential(double x) { return std::exp(x); }
inline double logarithm(double x) { return std::log(x); }
inline double sine(double x) { return std::sin(x); }
inline double cosine(double x) { return std::cos(x); }
inline double tangent(double x) { return std::tan(x); }
inline double hyperbolic_tangent(double x) { return std::tanh(x); }
inline double arc_sine(double x) { return std::asin(x); }
/// Half away from zero on the 15-significant-digit decimal, which is what spreadsheets do; `digits` 0 to 4.
double round_decimal(double x, int digits);

template <class N>
Ratio<N> whole_up(Ratio<N> x) {
  return {whole_up(x.si)};
}
template <class N>
Ratio<N> whole_down(Ratio<N> x) {
  return {whole_down(x.si)};
}
template <Dim D, class N>
Quantity<D, N> min(Quantity<D, N> a, Quantity<D, N> b) {
  return {least(a.si, b.si)};
}
template <Dim D, class N>
Quantity<D, N> max(Quantity<D, N> a, Quantity<D, N> b) {
  return {greatest(a.si, b.si)};
}
/// `then` where a < b, else `otherwise`.
template <Dim C, Dim D, class N>
Quantity<D, N> select_less(Quantity<C, N> a, Quantity<C, N> b, Quantity<D, N> then, Quantity<D, N> otherwise) {
  return {select_less(a.si, b.si, then.si, otherwise.si)};
}
constexpr Dim half(Dim d) {
  const auto h = [](int x) { return static_cast<std::int8_t>(x / 2); };
  return {h(d.length), h(d.mass), h(d.time), h(d.current), h(d.temperature), h(d.money), h(d.angle)};
}
template <Dim D, class N>
requires(half(D) + half(D) == D) Quantity<half(D), N> sqrt(Quantity<D, N> x) { return {root(x.si)}; }
template <class N>
Ratio<N> pow(Ratio<N> x, double exponent) {
  return {power(x.si, exponent)};
}
template <class N>
Ratio<N> exp(Ratio<N> x) {
  return {exponential(x.si)};
}
template <class N>
Ratio<N> log(Ratio<N> x) {
  return {logarithm(x.si)};
}
template <class N>
Ratio<N> tanh(Ratio<N> x) {
  return {hyperbolic_tangent(x.si)};
}
template <class N>
Ratio<N> sin(Angle<N> x) {
  return {sine(x.si)};
}
template <class N>
Ratio<N> cos(Angle<N> x) {
  return {cosine(x.si)};
}
template <class N>
Ratio<N> tan(Angle<N> x) {
  return {tangent(x.si)};
}
template <class N>
Angle<N> asin(Ratio<N> x) {
  return {arc_sine(x.si)};
}
/// Rounds money to the currency's minor unit (`digits` decimals).
template <class N>
Money<N> round_money(Money<N> x, int digits) {
  return {round_decimal(x.si, digits)};
}
template <Dim D>
Quantity<D> sum(std::span<const Quantity<D>> values) {
  double total = 0;
  for (const Quantity<D>& v : values) total += v.si;
  return {total};
}

}  // namespace seambook
