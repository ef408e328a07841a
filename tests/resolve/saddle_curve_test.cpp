// The saddle curve against its closed limits and against a sum of chords.
#include "resolve/saddle_curve.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <numbers>

using namespace seambook;

namespace {

constexpr double pi = std::numbers::pi;

/// Perimeter of an ellipse as a sum of chords.
double ellipse(double a, double b) {
  constexpr int chords = 200000;
  double sum = 0;
  for (int i = 0; i < chords; ++i) {
    const double from = 2 * pi * i / chords, to = 2 * pi * (i + 1) / chords;
    sum += std::hypot(a * (std::cos(to) - std::cos(from)), b * (std::sin(to) - std::sin(from)));
  }
  return sum;
}

/// The curve as a polygon: each corner is where a line of the branch's wall, from far above, meets the header's.
double polygon(double branch, double header, double angle) {
  constexpr int corners = 200000;
  const auto corner = [&](int i, double(&p)[3]) {
    const double turn = 2 * pi * i / corners;
    const double across = branch * std::cos(turn), y = branch * std::sin(turn);
    // Line: across × e1 + s × axis, with axis (cos, 0, sin), e1 (-sin, 0, cos); on the header's wall y² + z² = R².
    const double z = std::sqrt(std::fmax(header * header - y * y, 0));
    const double s = (z - across * std::cos(angle)) / std::sin(angle);
    p[0] = s * std::cos(angle) - across * std::sin(angle), p[1] = y, p[2] = z;
  };
  double sum = 0, last[3], next[3];
  corner(0, last);
  for (int i = 1; i <= corners; ++i) {
    corner(i, next);
    sum += std::sqrt(std::pow(next[0] - last[0], 2) + std::pow(next[1] - last[1], 2) + std::pow(next[2] - last[2], 2));
    std::copy(next, next + 3, last);
  }
  return sum;
}

double curve(double branch_diameter, double header_diameter, double degrees) {
  return saddle_curve({branch_diameter}, {header_diameter}, {degrees * unit::degree.si}).si;
}

}  // namespace

TEST_CASE("on a plane the saddle is a circle or an ellipse") {
  constexpr double flat = 1e6;  // times the branch: as good as a plane
  CHECK(curve(0.1, 0.1 * flat, 90) == doctest::Approx(pi * 0.1).epsilon(1e-9));
  for (const double degrees : {75.0, 60.0, 45.0, 30.0}) {
    CAPTURE(degrees);
    CHECK(curve(0.1, 0.1 * flat, degrees) ==
          doctest::Approx(ellipse(0.05, 0.05 / std::sin(degrees * pi / 180))).epsilon(1e-8));
  }
}

TEST_CASE("equal tubes at right angles meet in two half ellipses") {
  // Planes at 45 degrees: half axes r and r√2.
  CHECK(curve(0.1143, 0.1143, 90) == doctest::Approx(ellipse(0.05715, 0.05715 * std::numbers::sqrt2)).epsilon(1e-8));
}

TEST_CASE("the saddle is the sum of short chords") {
  struct Row {
    double branch, header, degrees;
  };
  constexpr Row rows[] = {{0.0603, 0.1143, 90}, {0.0603, 0.1143, 45}, {0.1143, 0.1143, 60},
                          {0.1142, 0.1143, 90}, {0.114, 0.1143, 50},  {0.0424, 0.2191, 70}};
  for (const Row& row : rows) {
    CAPTURE(row.branch);
    CAPTURE(row.degrees);
    const double sum = polygon(row.branch / 2, row.header / 2, row.degrees * pi / 180);
    CHECK(curve(row.branch, row.header, row.degrees) == doctest::Approx(sum).epsilon(1e-7));
    CHECK(curve(row.branch, row.header, 180 - row.degrees) ==
          doctest::Approx(curve(row.branch, row.header, row.degrees)).epsilon(1e-12));
    CHECK(curve(2 * row.branch, 2 * row.header, row.degrees) ==
          doctest::Approx(2 * curve(row.branch, row.header, row.degrees)).epsilon(1e-12));
    CHECK(curve(row.branch, row.header, row.degrees) > pi * row.branch);
  }
}
