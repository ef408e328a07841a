// Times that fall as work is repeated: each doubling of the count takes the same share, the learning rate r, of what it
// took. Two models are in use and differ by a quarter on the fourth piece: the unit model (Crawford) applies the rate
// to the time of one piece, the cumulative-average model (Wright) to the average of all so far. A figure names its
// model. Sources: the two models as in the textbooks of operations management and cost accounting.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// b of n^b: log r / log 2, -0.322 at 80 %.
template <class N>
Ratio<N> learning_exponent(Ratio<N> rate) {
  return log(rate) / log(number<N>(2));
}

/// n^b, n at least 1.
template <class N>
Ratio<N> learning_factor(Ratio<N> count, Ratio<N> exponent) {
  return exp(exponent * log(count));
}

/// Unit model: the time of piece n.
template <class N>
Time<N> unit_model_piece(Time<N> first, Ratio<N> piece, Ratio<N> exponent) {
  return first * learning_factor(piece, exponent);
}

/// Unit model: the time of pieces 1 to n. A sum of n terms, so the count is a plain one: whoever shows it in a cell
/// must freeze it.
template <class N>
Time<N> unit_model_total(Time<N> first, int pieces, Ratio<N> exponent) {
  Time<N> total{N(0)};
  for (int n = 1; n <= pieces; ++n) total = total + unit_model_piece(first, number<N>(n), exponent);
  return total;
}

/// Cumulative-average model: the average of pieces 1 to n.
template <class N>
Time<N> average_model_average(Time<N> first, Ratio<N> pieces, Ratio<N> exponent) {
  return first * learning_factor(pieces, exponent);
}

/// Cumulative-average model: the time of pieces 1 to n.
template <class N>
Time<N> average_model_total(Time<N> first, Ratio<N> pieces, Ratio<N> exponent) {
  return average_model_average(first, pieces, exponent) * pieces;
}

/// Cumulative-average model: the time of piece n alone, n at least 2: the difference of two totals.
template <class N>
Time<N> average_model_piece(Time<N> first, Ratio<N> piece, Ratio<N> exponent) {
  return average_model_total(first, piece, exponent) - average_model_total(first, piece - number<N>(1), exponent);
}

/// Cumulative-average model: the rate that a measured total of n pieces shows, n at least 2.
template <class N>
Ratio<N> learning_rate_shown(Time<N> first, Time<N> total, Ratio<N> pieces) {
  return exp(log(total / pieces / first) * log(number<N>(2)) / log(pieces));
}

}  // namespace seambook
