// Cross-section of grooves with prepared edges: V, bevel, U and J, from one side and from both. A groove is the gap and
// one or two flanks; a flank is a bevel (V, bevel) or an arc that runs into one (U, J). Sizes as in ISO 2553 and ISO
// 9692-1: thickness t, gap b, root face c, groove angle (of the whole V or U, of the one flank of a bevel or J), root
// radius R, depth h of a preparation.
// Sources: plane geometry; parts A and B as in "Welding Filler Metals Data Handbook", ESAB North America, section 8;
// "Job Knowledge 95: Calculating weld volume and weight", TWI. With radius 0 a U is a V and a J a bevel.
#pragma once

#include "trade/section.hpp"

namespace seambook {

template <class N>
Ratio<N> in_radians(Angle<N> angle) {
  return angle / constant<N>(Angle<>{1});
}

/// How deep the arc of a U or J reaches: it starts flat at the root face and ends tangent to the flank, R(1 - sin β).
template <class N>
Length<N> arc_depth(Length<N> radius, Angle<N> bevel) {
  return radius * (number<N>(1) - sin(bevel));
}

/// The sides of a groove that are cut: how many members, at which angle to the plate's normal, with which root radius.
template <class N>
struct Flanks {
  bool both = true;     // V and U; else bevel and J
  bool curved = false;  // U and J
  Angle<N> bevel;
  Length<N> radius, arc;  // root radius, and how deep its arc reaches
};

template <class N>
Flanks<N> v_flanks(Angle<N> groove_angle) {
  return {true, false, groove_angle / 2, {}, {}};
}
template <class N>
Flanks<N> bevel_flanks(Angle<N> groove_angle) {
  return {false, false, groove_angle, {}, {}};
}
template <class N>
Flanks<N> u_flanks(Angle<N> groove_angle, Length<N> radius) {
  return {true, true, groove_angle / 2, radius, arc_depth(radius, groove_angle / 2)};
}
template <class N>
Flanks<N> j_flanks(Angle<N> groove_angle, Length<N> radius) {
  return {false, true, groove_angle, radius, arc_depth(radius, groove_angle)};
}

/// One flank of a U or J of this depth: sector less triangle below, trapezium above (plane geometry).
template <class N>
Area<N> curved_flank(const Flanks<N>& flanks, Length<N> depth) {
  const Ratio<N> quarter = number<N>(3.14159265358979323846 / 2) - in_radians(flanks.bevel);
  const Area<N> below = flanks.radius * flanks.radius * (quarter - sin(flanks.bevel) * cos(flanks.bevel)) / 2;
  const Length<N> straight = depth - flanks.arc;
  return below + straight * flanks.radius * cos(flanks.bevel) + bevel_triangle(straight, flanks.bevel);
}

/// Width by which one flank opens the groove at this depth.
template <class N>
Length<N> flank_width(const Flanks<N>& flanks, Length<N> depth) {
  if (!flanks.curved) return depth * tan(flanks.bevel);
  return flanks.radius * cos(flanks.bevel) + (depth - flanks.arc) * tan(flanks.bevel);
}

/// What the flanks of a preparation of this depth open beside the gap.
template <class N>
Area<N> flank_section(const Flanks<N>& flanks, Length<N> depth) {
  const Area<N> one = flanks.curved ? curved_flank(flanks, depth) : bevel_triangle(depth, flanks.bevel);
  return flanks.both ? 2 * one : one;
}

/// Width of the groove at the face of a preparation of this depth.
template <class N>
Length<N> groove_face(const Flanks<N>& flanks, Length<N> depth, Length<N> gap) {
  const Length<N> one = flank_width(flanks, depth);
  return flanks.both ? gap + 2 * one : gap + one;
}

/// Groove from one side, welded through: the gap over the whole thickness, the flanks above the root face.
template <class N>
Area<N> single_groove_section(const Flanks<N>& flanks, Length<N> thickness, Length<N> gap, Length<N> root_face) {
  return gap_section(thickness, gap) + flank_section(flanks, thickness - root_face);
}

/// Groove from both sides, with its own depth on each: together with the root face that is fused they are what is
/// welded of the thickness.
template <class N>
Area<N> double_groove_section(const Flanks<N>& flanks, Length<N> depth, Length<N> depth_second, Length<N> gap,
                              Length<N> root_face) {
  return gap_section(depth + depth_second + root_face, gap) + flank_section(flanks, depth) +
         flank_section(flanks, depth_second);
}

/// Depth of each side of a double preparation that is the same on both.
template <class N>
Length<N> half_of_groove(Length<N> thickness, Length<N> root_face) {
  return (thickness - root_face) / 2;
}

/// The same depth on both sides, welded through.
template <class N>
Area<N> even_double_section(const Flanks<N>& flanks, Length<N> thickness, Length<N> gap, Length<N> root_face) {
  const Length<N> depth = half_of_groove(thickness, root_face);
  return gap_section(thickness, gap) + 2 * flank_section(flanks, depth);
}

// The grooves by name.
template <class N>
Area<N> single_v_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return single_groove_section(v_flanks(groove_angle), thickness, gap, root_face);
}
template <class N>
Area<N> double_v_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return even_double_section(v_flanks(groove_angle), thickness, gap, root_face);
}
template <class N>
Area<N> single_bevel_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return single_groove_section(bevel_flanks(groove_angle), thickness, gap, root_face);
}
template <class N>
Length<N> single_v_face(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return groove_face(v_flanks(groove_angle), thickness - root_face, gap);
}
template <class N>
Length<N> single_bevel_face(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return groove_face(bevel_flanks(groove_angle), thickness - root_face, gap);
}
template <class N>
Area<N> double_bevel_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return even_double_section(bevel_flanks(groove_angle), thickness, gap, root_face);
}
template <class N>
Area<N> single_u_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle,
                         Length<N> radius) {
  return single_groove_section(u_flanks(groove_angle, radius), thickness, gap, root_face);
}
template <class N>
Area<N> double_u_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle,
                         Length<N> radius) {
  return even_double_section(u_flanks(groove_angle, radius), thickness, gap, root_face);
}
template <class N>
Area<N> single_j_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle,
                         Length<N> radius) {
  return single_groove_section(j_flanks(groove_angle, radius), thickness, gap, root_face);
}
template <class N>
Area<N> double_j_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle,
                         Length<N> radius) {
  return even_double_section(j_flanks(groove_angle, radius), thickness, gap, root_face);
}

}  // namespace seambook
