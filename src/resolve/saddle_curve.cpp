#include "resolve/saddle_curve.hpp"

#include <cmath>
#include <numbers>

namespace seambook {
namespace {

/// Both tubes by their radii, the header's axis along x, the branch's in the x-z plane.
struct CrossedTubes {
  double branch = 0, header = 0, sine = 1, cosine = 0;
};

/// Length of the curve for a turn of one radian round the branch, at the angle `turn` from its crown point.
/// A point of the curve: y = r sin, z = √(R² - y²); along the branch's axis s = (z - r cos·cosθ)/sinθ;
/// along the header's x = s·cosθ - r cos·sinθ.
double length_per_turn(const CrossedTubes& t, double turn) {
  const double sine = std::sin(turn), cosine = std::cos(turn);
  const double z = std::sqrt(std::fmax(t.header * t.header - t.branch * t.branch * sine * sine, 0));
  // At the widest point of equal tubes both fraction's parts vanish; from the near side it tends to -r.
  const double dz = z > 0 ? -t.branch * t.branch * sine * cosine / z : -t.branch;
  const double dy = t.branch * cosine;
  const double ds = (dz + t.branch * sine * t.cosine) / t.sine;
  const double dx = ds * t.cosine + t.branch * sine * t.sine;
  return std::sqrt(dx * dx + dy * dy + dz * dz);
}

/// From the crown to the widest point by Simpson's rule, the steps ever finer towards the widest point, where the curve
/// of nearly equal tubes bends sharply.
double quarter(const CrossedTubes& tubes) {
  constexpr int steps = 4000;
  const auto at = [&](int i) {
    const double rest = 1 - static_cast<double>(i) / steps;
    const double turn = std::numbers::pi / 2 * (1 - rest * rest * rest);
    return length_per_turn(tubes, turn) * std::numbers::pi / 2 * 3 * rest * rest;
  };
  double sum = at(0) + at(steps);
  for (int i = 1; i < steps; ++i) sum += at(i) * (i % 2 == 1 ? 4 : 2);
  return sum / (3.0 * steps);
}

}  // namespace

Length<> saddle_curve(Length<> branch_diameter, Length<> header_diameter, Angle<> branch_angle) {
  CrossedTubes tubes{branch_diameter.si / 2, header_diameter.si / 2, std::sin(branch_angle.si),
                     std::cos(branch_angle.si)};
  const double heel_side = quarter(tubes);
  tubes.cosine = -tubes.cosine;  // the other side of the widest point is the crown side of the opposite angle
  return {2 * (heel_side + quarter(tubes))};
}

}  // namespace seambook
