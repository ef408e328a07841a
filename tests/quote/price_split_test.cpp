// Prices shared out by weights foot, whatever the weights.
#include "quote/price_split.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace seambook;

TEST_CASE("parts of a price foot to the cent for 10000 random weights") {
  std::mt19937 random(7);
  const auto between = [&](double low, double high) {
    return low + (high - low) * (static_cast<double>(random()) / 4294967296.0);
  };
  for (int trial = 0; trial < 10000; ++trial) {
    CAPTURE(trial);
    const int digits = trial % 4 == 0 ? 0 : 2;
    const double price = round_decimal(between(-500, 90000), digits);
    std::vector<double> weights(1 + random() % 12);
    for (double& weight : weights) weight = random() % 5 == 0 ? 0 : between(0, 700);
    weights[random() % weights.size()] = between(1, 700);
    const double unit = std::pow(10, -digits);
    long long cents = 0;
    for (const double part : split_price(price, weights, digits)) {
      CHECK(std::fabs(part / unit - std::round(part / unit)) < 1e-4);
      cents += std::llround(part / unit);
    }
    CHECK(cents == std::llround(price / unit));
  }
}

TEST_CASE("a third each of 10.00 is 3.33, 3.34 and 3.33") {
  const std::vector<double> parts = split_price(10, {1, 1, 1}, 2);
  CHECK(parts[0] == doctest::Approx(3.33));
  CHECK(parts[1] == doctest::Approx(3.34));
  CHECK(parts[2] == doctest::Approx(3.33));
  CHECK(split_price(10, {0, 0}, 2) == std::vector<double>{0, 0});
}
