// Lengths of lines, and how many weld elements they carry.
#include <doctest/doctest.h>

#include "trade/length.hpp"

using namespace seambook;

namespace {

Length<> mm(double x) { return {x * 1e-3}; }

}  // namespace

TEST_CASE("all round a rectangle") {
  CHECK(all_around(mm(60), mm(40), mm(0)).si == doctest::Approx(0.2).epsilon(1e-12));
  // 2 × 100 - 8 × 5 + 2π × 5
  CHECK(all_around(mm(60), mm(40), mm(5)).si * 1e3 == doctest::Approx(191.41593).epsilon(1e-7));
  // Rounded as far as they go, a square's corners are a circle.
  CHECK(all_around(mm(40), mm(40), mm(20)).si == doctest::Approx(circumference(mm(40)).si).epsilon(1e-12));
}

TEST_CASE("staggered elements fit their own line") {
  struct Row {
    double line, element, pitch, first, second;
  };
  constexpr Row rows[] = {
      {600, 40, 150, 4, 4},  // 40 at 0, 150, 300, 450; at 75, 225, 375, 525
      {560, 40, 150, 4, 3},  // 525 + 40 = 565 is too long
      {0.3, 0.05, 0.1, 3, 3},
      {115, 40, 150, 1, 1},  // 75 + 40 = 115 just fits
  };
  for (const Row& row : rows) {
    CAPTURE(row.line);
    CHECK(elements_on_line(mm(row.line), mm(row.element), mm(row.pitch)).si == row.first);
    CHECK(staggered_elements(mm(row.line), mm(row.element), mm(row.pitch)).si == row.second);
  }
}
