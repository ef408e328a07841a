// A price shared out by weights so that the printed parts foot: each part is the rounded running total less the one
// before.
#pragma once

#include <vector>

#include "trace/vocabulary.hpp"

namespace seambook {

/// Parallel to `weights`; with weights that add up to nothing all parts are 0.
inline std::vector<double> split_price(double price, const std::vector<double>& weights, int digits) {
  double all = 0;
  for (const double weight : weights) all += weight;
  std::vector<double> parts;
  double running = 0, before = 0;
  for (const double weight : weights) {
    running += weight;
    const double rounded = all > 0 ? round_decimal(price * running / all, digits) : 0;
    parts.push_back(rounded - before);
    before = rounded;
  }
  return parts;
}

}  // namespace seambook
