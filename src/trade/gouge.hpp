// Back-gouging: the groove cut into the root from the back, which the passes of the back fill again.
// Source: plane geometry; the groove of a round carbon is taken as half an ellipse, its width across and its depth
// down.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

template <class N>
Area<N> gouged_section(Length<N> depth, Length<N> width) {
  return width * depth * (3.14159265358979323846 / 4);
}

}  // namespace seambook
