// Cross-section of welds that fill a round, a hole, a surface or a gouged groove.
// Source: plane geometry. A plug's section is its hole and its weld length the depth of the hole; a slot's section is
// width times depth and its weld length that of a rectangle of the same area, so that section times length is the
// volume in both cases.
#pragma once

#include "trade/section_grooves.hpp"

namespace seambook {

inline constexpr double circle_constant = 3.14159265358979323846;

/// Width between a flat and a round of this radius, at this height above the line where they touch: r - √(r² - h²).
template <class N>
Length<N> flare_width(Length<N> radius, Length<N> height) {
  return radius - sqrt(radius * radius - height * height);
}

/// Between flat and round up to this height, at most the radius: rh - (h√(r² - h²) + r² asin(h/r))/2.
template <class N>
Area<N> flare_section(Length<N> radius, Length<N> height) {
  return radius * height -
         (height * sqrt(radius * radius - height * height) + radius * radius * in_radians(asin(height / radius))) / 2;
}

/// The same filled flush, up to the radius: r²(1 - π/4).
template <class N>
Area<N> flush_flare_section(Length<N> radius) {
  return radius * radius * (1 - circle_constant / 4);
}

template <class N>
Area<N> circle_section(Length<N> diameter) {
  return diameter * diameter * (circle_constant / 4);
}

/// A slot with half-round ends as a rectangle of the same width and area: l - w(1 - π/4).
template <class N>
Length<N> slot_length(Length<N> length, Length<N> width) {
  return length - width * (1 - circle_constant / 4);
}

template <class N>
Area<N> slot_section(Length<N> width, Length<N> depth) {
  return width * depth;
}

/// Weld metal laid on a surface, of this width.
template <class N>
Area<N> overlay_section(Length<N> width, Ratio<N> layers, Length<N> layer_height) {
  return width * layers * layer_height;
}

/// Gouged deeper than half its width: a half circle below straight walls.
template <class N>
Area<N> deep_gouge_section(Length<N> depth, Length<N> width) {
  return (depth - width / 2) * width + width * width * (circle_constant / 8);
}

/// Gouged no deeper than half its width: a segment of the circle through both edges and the bottom, whose radius is
/// (w²/4 + d²)/(2d).
template <class N>
Area<N> shallow_gouge_section(Length<N> depth, Length<N> width) {
  const Length<N> radius = (width * width / 4 + depth * depth) / (2 * depth);
  return radius * radius * in_radians(asin(width / 2 / radius)) - (radius - depth) * width / 2;
}

}  // namespace seambook
