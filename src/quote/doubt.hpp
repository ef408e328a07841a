// How far the total of a quote may lie off, and what moves it most: plain values, made by find_doubt (quote/quote.hpp).
#pragma once

#include <string>
#include <vector>

#include "estimate/inputs.hpp"

namespace seambook {

/// One input at its low and at its high value, everything else as quoted.
struct DoubtDriver {
  SourceId source = no_source;
  std::string words, basis;              // `labour welder, rate`; what it rests on
  double low = 0, quoted = 0, high = 0;  // SI
  Unit unit;                             // to show it in, metric
  Money<> total_low, total_high;         // of the order
};

/// Values that 10, 50, 80 and 90 of 100 samples do not exceed, by nearest rank: the smallest sample that this share of
/// the samples does not exceed (Hyndman and Fan, "Sample Quantiles in Statistical Packages", The American Statistician
/// 50 (1996), definition 1).
struct Percentiles {
  double p10 = 0, p50 = 0, p80 = 0, p90 = 0;
};

/// Of the first quantity. Money is before rounding; cost is before contingency and margin.
struct Doubt {
  std::int64_t quantity = 1;
  bool ranges_stated = false;  // else inputs are moved by 10 % and nothing is sampled
  std::size_t inputs = 0;      // in doubt
  std::size_t samples = 0;     // drawn; 0 when nothing is in doubt
  Money<> total, cost;         // as quoted
  Percentiles totals, costs;
  Ratio<> contingency_p80, contingency_p90;  // by which these percentiles exceed the cost; 0 when they do not
  Money<> bars_from, bar_width;              // of the histogram of the totals
  std::vector<std::size_t> bars;             // samples in each; empty when all are alike
  std::vector<DoubtDriver> drivers;          // ten at most, widest swing first
};

}  // namespace seambook
