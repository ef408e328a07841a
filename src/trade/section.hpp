// Cross-section of the weld metal as drawn: fillets, gaps, bevels and caps. Sizes as in ISO 2553: leg z, throat a,
// thickness t, gap b, root face c. Grooves are in trade/section_grooves.hpp, what fills holes, rounds and surfaces in
// trade/section_fills.hpp.
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

/// Fillet with legs on either member, z₁z₂/2 (plane geometry: a right triangle), made fuller by the convexity.
template <class N>
Area<N> unequal_fillet_section(Length<N> leg, Length<N> leg_second, Ratio<N> convexity) {
  return leg * leg_second / 2 * (number<N>(1) + convexity);
}

/// Leg over a root gap. Both legs grow by the gap, so that the throat still stands from the edge of the upright member
/// (plane geometry; the rule of AWS D1.1 for gaps in fillet joints, from memory).
template <class N>
Length<N> leg_over_gap(Length<N> leg, Length<N> gap) {
  return leg + gap;
}

/// Largest throat in legs on two members at right angles: the height of the triangle, z₁z₂/√(z₁² + z₂²).
template <class N>
Length<N> throat_of_legs(Length<N> leg, Length<N> leg_second) {
  return leg * leg_second / sqrt(leg * leg + leg_second * leg_second);
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

}  // namespace seambook
