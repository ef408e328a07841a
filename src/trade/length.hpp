// How much weld a joint line carries. Source: plane geometry; intermittent welds as in ISO 2553 and AWS A2.4, where the
// pitch is centre to centre; elements that do not fit the line are left away, never cut.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

template <class N>
Length<N> circumference(Length<N> outside_diameter) {
  return outside_diameter * 3.14159265358979323846;
}

/// All round a rectangle whose corners are rounded by `corner_radius`; 0 for sharp ones.
template <class N>
Length<N> all_around(Length<N> side, Length<N> side_second, Length<N> corner_radius) {
  return 2 * (side + side_second) - (8 - 2 * 3.14159265358979323846) * corner_radius;
}

/// Whole weld elements on one line: the first starts at its beginning, the last ends on it.
template <class N>
Ratio<N> elements_on_line(Length<N> line, Length<N> element, Length<N> pitch) {
  return whole_down((line - element) / pitch + number<N>(1));
}

/// Staggered elements of the second side begin half a pitch later: on what is left of its line.
template <class N>
Ratio<N> staggered_elements(Length<N> line, Length<N> element, Length<N> pitch) {
  return elements_on_line(line - pitch / 2, element, pitch);
}

/// Tacks at each end of a line and between them, at most `pitch` apart.
template <class N>
Ratio<N> tacks_on_line(Length<N> line, Length<N> pitch) {
  return whole_up(line / pitch) + number<N>(1);
}

}  // namespace seambook
