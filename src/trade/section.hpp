// Cross-section of the weld metal as drawn. Sizes as in ISO 2553: leg z, throat a, thickness t, gap b, root face c.
// Sources: plane geometry; parts A (gap), B (bevel triangle) and C (parabolic cap) as in "Welding Filler Metals Data
// Handbook", ESAB North America, section 8; "Job Knowledge 95: Calculating weld volume and weight", TWI.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// Leg of an equal-leg fillet from its throat: z = a √2.
template <class N>
Length<N> leg_of_throat(Length<N> throat) {
  return throat * 1.4142135623730951;
}

/// Equal-leg fillet z²/2, made fuller by the convexity (a share of the section, 0.1 for a crown of a tenth).
template <class N>
Area<N> fillet_section(Length<N> leg, Ratio<N> convexity) {
  return leg * leg / 2 * (number<N>(1) + convexity);
}

/// Gap between square edges: part A.
template <class N>
Area<N> gap_section(Length<N> thickness, Length<N> gap) {
  return thickness * gap;
}

/// Triangle of a bevel of this depth: part B.
template <class N>
Area<N> bevel_triangle(Length<N> depth, Angle<N> bevel) {
  return depth * depth * tan(bevel) / 2;
}

/// Parabolic excess metal (cap): part C, two thirds of width times height.
template <class N>
Area<N> cap_section(Length<N> width, Length<N> height) {
  return width * height * 2 / 3;
}

/// Single-V: gap over the whole thickness and a bevel triangle on each side above the root face.
template <class N>
Area<N> single_v_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return gap_section(thickness, gap) + 2 * bevel_triangle(thickness - root_face, groove_angle / 2);
}

/// Single-bevel: one bevelled member; the groove angle is the bevel angle.
template <class N>
Area<N> single_bevel_section(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return gap_section(thickness, gap) + bevel_triangle(thickness - root_face, groove_angle);
}

/// Width of a single-V at the face.
template <class N>
Length<N> single_v_face(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return gap + 2 * ((thickness - root_face) * tan(groove_angle / 2));
}

template <class N>
Length<N> single_bevel_face(Length<N> thickness, Length<N> gap, Length<N> root_face, Angle<N> groove_angle) {
  return gap + (thickness - root_face) * tan(groove_angle);
}

}  // namespace seambook
