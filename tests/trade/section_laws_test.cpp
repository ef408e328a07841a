// Laws that sections of weld metal keep, whatever their sizes; figures by hand beside them.
#include <doctest/doctest.h>

#include <numbers>

#include "trade/section_fills.hpp"

using namespace seambook;

namespace {

Length<> mm(double x) { return {x * 1e-3}; }
Angle<> degrees(double x) { return {x * unit::degree.si}; }
double mm2(Area<> a) { return a.si * 1e6; }

struct Size {
  double thickness, gap, root_face, angle, radius;
};
// Any sizes that can be cut: the radius fits half the depth.
constexpr Size sizes[] = {
    {12, 0, 0, 60, 0}, {20, 2, 2, 60, 3}, {30, 2, 3, 20, 6}, {45.5, 3.2, 1.6, 16, 8}, {8, 1, 0.5, 89, 1.5}};

doctest::Approx near(double x) { return doctest::Approx(x).epsilon(1e-12); }

}  // namespace

TEST_CASE("a double preparation is two single ones of half the depth") {
  for (const Size& s : sizes) {
    CAPTURE(s.thickness);
    const Length<> t = mm(s.thickness), b = mm(s.gap), c = mm(s.root_face), r = mm(s.radius);
    const Angle<> a = degrees(s.angle);
    CHECK(double_v_section(t, b, c, a).si == near(2 * single_v_section(t / 2, b, c / 2, a).si));
    CHECK(double_bevel_section(t, b, c, a).si == near(2 * single_bevel_section(t / 2, b, c / 2, a).si));
    CHECK(double_u_section(t, b, c, a, r).si == near(2 * single_u_section(t / 2, b, c / 2, a, r).si));
    CHECK(double_j_section(t, b, c, a, r).si == near(2 * single_j_section(t / 2, b, c / 2, a, r).si));
    // Its two sides may be exchanged, and stated one by one.
    const Length<> first = (t - c) * 0.6, second = (t - c) * 0.4;
    const auto v = v_flanks(a);
    CHECK(double_groove_section(v, first, second, b, c).si == near(double_groove_section(v, second, first, b, c).si));
    const Length<> half = half_of_groove(t, c);
    CHECK(double_groove_section(v, half, half, b, c).si == near(double_v_section(t, b, c, a).si));
  }
}

TEST_CASE("without a radius a U is a V and a J a bevel") {
  for (const Size& s : sizes) {
    const Length<> t = mm(s.thickness), b = mm(s.gap), c = mm(s.root_face), none = mm(0);
    const Angle<> a = degrees(s.angle);
    CHECK(single_u_section(t, b, c, a, none).si == near(single_v_section(t, b, c, a).si));
    CHECK(double_u_section(t, b, c, a, none).si == near(double_v_section(t, b, c, a).si));
    CHECK(single_j_section(t, b, c, a, none).si == near(single_bevel_section(t, b, c, a).si));
    CHECK(double_j_section(t, b, c, a, none).si == near(double_bevel_section(t, b, c, a).si));
    CHECK(groove_face(u_flanks(a, none), t - c, b).si == near(groove_face(v_flanks(a), t - c, b).si));
  }
}

TEST_CASE("a V is two bevels back to back, a U two Js") {
  for (const Size& s : sizes) {
    const Length<> t = mm(s.thickness), c = mm(s.root_face), r = mm(s.radius), none = mm(0);
    const Angle<> a = degrees(s.angle);
    CHECK(single_v_section(t, none, c, a).si == near(2 * single_bevel_section(t, none, c, a / 2).si));
    CHECK(single_u_section(t, none, c, a, r).si == near(2 * single_j_section(t, none, c, a / 2, r).si));
  }
}

TEST_CASE("a thicker plate adds what lies between the faces of a groove") {
  for (const Size& s : sizes) {
    const Length<> t = mm(s.thickness), more = mm(1), b = mm(s.gap), c = mm(s.root_face);
    const Angle<> a = degrees(s.angle);
    const auto between = [&](auto face) { return (face(t, b, c, a) + face(t + more, b, c, a)) / 2 * more; };
    const Area<> v = single_v_section(t + more, b, c, a) - single_v_section(t, b, c, a);
    const Area<> bevel = single_bevel_section(t + more, b, c, a) - single_bevel_section(t, b, c, a);
    CHECK(v.si == doctest::Approx(between(single_v_face<double>).si));
    CHECK(bevel.si == doctest::Approx(between(single_bevel_face<double>).si));
  }
}

TEST_CASE("a U as the sum of thin strips") {
  for (const Size& s : sizes) {
    CAPTURE(s.thickness);
    const double h = s.thickness - s.root_face, bevel = s.angle / 2 * unit::degree.si, r = s.radius;
    constexpr int strips = 200000;
    double area = s.gap * s.thickness;
    for (int i = 0; i < strips; ++i) {
      const double y = (i + 0.5) * h / strips, arc = r * (1 - std::sin(bevel));
      const double half =
          y < arc ? std::sqrt(r * r - (r - y) * (r - y)) : r * std::cos(bevel) + (y - arc) * std::tan(bevel);
      area += 2 * half * h / strips;
    }
    CHECK(mm2(single_u_section(mm(s.thickness), mm(s.gap), mm(s.root_face), degrees(s.angle), mm(r))) ==
          doctest::Approx(area).epsilon(1e-6));
    // At the face the strip is as wide as the groove.
    const auto flanks = u_flanks(degrees(s.angle), mm(r));
    CHECK(groove_face(flanks, mm(h), mm(s.gap)).si ==
          near(1e-3 * (s.gap + 2 * (r * std::cos(bevel) + (h - r * (1 - std::sin(bevel))) * std::tan(bevel)))));
  }
}

TEST_CASE("sizes k times as large lay k² times as much") {
  constexpr double k = 2.5;
  for (const Size& s : sizes) {
    const Length<> t = mm(s.thickness), b = mm(s.gap), c = mm(s.root_face), r = mm(s.radius);
    const Angle<> a = degrees(s.angle);
    CHECK(double_u_section(t * k, b * k, c * k, a, r * k).si == near(k * k * double_u_section(t, b, c, a, r).si));
    CHECK(single_bevel_section(t * k, b * k, c * k, a).si == near(k * k * single_bevel_section(t, b, c, a).si));
    CHECK(flare_section(t * k, t / 2 * k).si == near(k * k * flare_section(t, t / 2).si));
    CHECK(shallow_gouge_section(t * k, t * 3 * k).si == near(k * k * shallow_gouge_section(t, t * 3).si));
    CHECK(deep_gouge_section(t * k, t * k).si == near(k * k * deep_gouge_section(t, t).si));
    CHECK(circle_section(t * k).si == near(k * k * circle_section(t).si));
  }
}

TEST_CASE("fillets") {
  const Ratio<> flat{0}, crowned{0.1};
  CHECK(unequal_fillet_section(mm(6), mm(6), crowned).si == near(fillet_section(mm(6), crowned).si));
  CHECK(mm2(unequal_fillet_section(mm(6), mm(8), flat)) == near(24));
  CHECK(throat_of_legs(mm(6), mm(8)).si == near(mm(4.8).si));  // 6 × 8 / 10
  CHECK(leg_of_throat(throat_of_legs(mm(7), mm(7))).si == near(mm(7).si));
  // Over a gap the throat from the upright's edge (gap above the base plate) to the face is what it was: the face runs
  // at 45 degrees through both toes, leg + gap away from where the surfaces meet.
  const double leg = 6, gap = 2, grown = leg_over_gap(mm(leg), mm(gap)).si * 1e3;
  CHECK((grown - gap) / std::numbers::sqrt2 == near(leg / std::numbers::sqrt2));
}

TEST_CASE("rounds, holes, surfaces and gouges by hand") {
  CHECK(mm2(flush_flare_section(mm(10))) == doctest::Approx(21.4602).epsilon(1e-5));  // 100 × (1 - 0.785398)
  CHECK(flare_section(mm(10), mm(10)).si == near(flush_flare_section(mm(10)).si));
  // 60° round the bar: 8.660 × 10 - (8.660 × 5 + 100 × 1.047198)/2 = 86.603 - 74.011 = 12.592
  CHECK(mm2(flare_section(mm(10), mm(10 * std::numbers::sqrt3 / 2))) == doctest::Approx(12.5921).epsilon(1e-5));
  CHECK(flare_width(mm(10), mm(6)).si == near(mm(2).si));  // 10 - 8
  CHECK(mm2(circle_section(mm(20))) == doctest::Approx(314.1593).epsilon(1e-6));
  // 40 × 12 with round ends: 28 × 12 + 113.097 = 449.097 = 12 × 37.4248
  CHECK(slot_length(mm(40), mm(12)).si * 1e3 == doctest::Approx(37.42478).epsilon(1e-6));
  CHECK(mm2(slot_section(mm(12), mm(8))) == near(96));
  CHECK(slot_length(mm(12), mm(12)).si * 12e-3 == near(circle_section(mm(12)).si));  // as long as wide: a plug
  CHECK(mm2(overlay_section(mm(50), Ratio<>{2}, mm(3))) == near(300));
  CHECK(mm2(deep_gouge_section(mm(10), mm(12))) == doctest::Approx(104.5487).epsilon(1e-6));  // 4 × 12 + 144 × π/8
  // 5 deep, 20 wide: radius (100 + 25)/10 = 12.5; 156.25 × asin(0.8) - 7.5 × 10 = 144.890 - 75 = 69.890
  CHECK(mm2(shallow_gouge_section(mm(5), mm(20))) == doctest::Approx(69.88966).epsilon(1e-5));
  CHECK(shallow_gouge_section(mm(6), mm(12)).si == near(deep_gouge_section(mm(6), mm(12)).si));  // a half circle
}
