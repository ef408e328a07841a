// Rounding as spreadsheets do it: half away from zero on the decimal of fifteen significant digits.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <random>
#include <string>

#include "trace/vocabulary.hpp"

using namespace seambook;

namespace {

bool same_bits(double a, double b) { return std::memcmp(&a, &b, sizeof a) == 0; }

/// `units` with the decimal point before its last `places` digits.
double decimal(std::int64_t units, int places) {
  std::string text = std::to_string(units < 0 ? -units : units);
  while (static_cast<int>(text.size()) <= places) text.insert(0, "0");
  text.insert(text.size() - static_cast<std::size_t>(places), ".");
  return std::strtod(((units < 0 ? "-" : "") + text).c_str(), nullptr);
}

/// units / 10^dropped, half away from zero, in whole numbers.
std::int64_t rounded_units(std::int64_t units, int dropped) {
  std::int64_t step = 1;
  for (int i = 0; i < dropped; ++i) step *= 10;
  const std::int64_t size = units < 0 ? -units : units;
  const std::int64_t rounded = (size + step / 2) / step;
  return units < 0 ? -rounded : rounded;
}

}  // namespace

TEST_CASE("half cents go away from zero as a person would round them") {
  struct Row {
    double x;
    int digits;
    double expected;
  };
  const Row rows[] = {
      {1.005, 2, 1.01},  // stored as 1.00499999999999989...
      {-1.005, 2, -1.01},
      {2.675, 2, 2.68},  // stored as 2.67499999999999982...
      {1.015, 2, 1.02},
      {8.345, 2, 8.35},
      {0.125, 2, 0.13},  // stored exactly
      {0.135, 2, 0.14},
      {-0.125, 2, -0.13},
      {99.995, 2, 100},
      {999999.995, 2, 1000000},
      {1234567.885, 2, 1234567.89},
      {0.005, 2, 0.01},
      {0.0049999, 2, 0},
      {0.004999999999999999, 2, 0.01},  // fifteen digits: 0.00500000000000000
      {0.00499999999999999, 2, 0},      // fifteen digits: 0.00499999999999999
      {0.0051, 2, 0.01},
      {1e-9, 2, 0},
      {1e-300, 2, 0},
      {0.5, 0, 1},
      {1.5, 0, 2},
      {2.5, 0, 3},
      {-2.5, 0, -3},
      {0.49999999999999994, 0, 1},  // fifteen digits: 0.500000000000000
      {1234.5678, 3, 1234.568},
      {1234.56785, 4, 1234.5679},
      {0.00005, 4, 0.0001},
      {123456789012.345, 2, 123456789012.35},
      {99999999999999.5, 0, 100000000000000},
      {1e15, 2, 1e15},
      {1e300, 2, 1e300},
      {1.1 + 2.2, 2, 3.3},
      {0.1 + 0.7, 1, 0.8},
      {1.45 * 3, 2, 4.35},
      {0, 2, 0},
  };
  for (const Row& row : rows) {
    CAPTURE(row.x);
    CAPTURE(row.digits);
    CHECK(round_decimal(row.x, row.digits) == row.expected);
  }
  MESSAGE(std::size(rows) << " rows");
}

TEST_CASE("what rounds to nothing is a plain zero") {
  for (const double x : {-0.004, -0.0001, -1e-9, -1e-300}) {
    CAPTURE(x);
    CHECK(!std::signbit(round_decimal(x, 2)));  // else it would print as -0.00
  }
}

TEST_CASE("decimals of up to fourteen digits round as whole numbers do") {
  std::mt19937_64 random(1);
  for (int trial = 0; trial < 200000; ++trial) {
    const int size = 1 + static_cast<int>(random() % 14);
    std::int64_t limit = 1;
    for (int i = 0; i < size; ++i) limit *= 10;
    std::int64_t units = static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(limit));
    if (trial % 3 == 0) units = units / 10 * 10 + 5;  // halves
    if (trial % 2 == 0) units = -units;
    const int digits = static_cast<int>(random() % 5), dropped = static_cast<int>(random() % 4);
    const std::int64_t expected = rounded_units(units, dropped);
    if (expected == 0) continue;
    CAPTURE(units);
    CAPTURE(digits);
    CAPTURE(dropped);
    CHECK(same_bits(round_decimal(decimal(units, digits + dropped), digits), decimal(expected, digits)));
  }
}

TEST_CASE("each half cent up to a thousand rounds up") {
  for (std::int64_t cents = 0; cents < 100000; ++cents) {
    CAPTURE(cents);
    CHECK(same_bits(round_decimal(decimal(cents * 10 + 5, 3), 2), decimal(cents + 1, 2)));
    CHECK(same_bits(round_decimal(decimal(cents * 10 + 4, 3), 2), decimal(cents, 2)));
  }
}

TEST_CASE("a rounded amount rounds to itself") {
  std::mt19937_64 random(2);
  for (int trial = 0; trial < 50000; ++trial) {
    const double x = static_cast<double>(random()) / 1.8e19 * std::pow(10, static_cast<int>(random() % 9));
    const double once = round_decimal(x, 2);
    CAPTURE(x);
    CHECK(same_bits(round_decimal(once, 2), once));
    CHECK(std::fabs(once - x) <= 0.005 + 1e-14 * x);
  }
}
