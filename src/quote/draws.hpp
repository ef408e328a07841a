// Numbers drawn for sampling: the same on every machine. The engine is fully specified by the C++ standard, the
// distributions of the standard library are not, so the shape is made here.
#pragma once

#include <cmath>
#include <random>

namespace seambook {

using DrawEngine = std::mt19937_64;

/// From 0 up to, but without, 1: the upper 53 bits of a draw.
inline double uniform_draw(DrawEngine& engine) { return static_cast<double>(engine() >> 11) * 0x1p-53; }

/// The value that a share `u` of a triangular distribution lies below: most likely at `mode`, never beyond `low` and
/// `high`. Source: inverse of the distribution function (x - low)² / ((high - low) (mode - low)) below the mode, as in
/// Forbes, Evans, Hastings and Peacock, "Statistical Distributions", chapter "Triangular" (from memory).
inline double triangular(double low, double mode, double high, double u) {
  if (low >= high) return mode;
  const double share_below = (mode - low) / (high - low);
  if (u < share_below) return low + std::sqrt(u * (high - low) * (mode - low));
  return high - std::sqrt((1 - u) * (high - low) * (high - mode));
}

}  // namespace seambook
