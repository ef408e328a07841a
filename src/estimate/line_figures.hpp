// How much weld a joint has: the line by its form, and what intermittent weld elements cover of it. Written once for
// plain and for traced numbers; the formulas are in trade/length.hpp.
#pragma once

#include "estimate/inputs.hpp"
#include "trade/length.hpp"
#include "trade/section_fills.hpp"

namespace seambook {

template <class N>
struct LineFigures {
  Length<N> line, weld_length, unwelded;
  Ratio<N> elements_on_line, elements_second, joints_made, weld_elements;
};

/// A plug's line is the depth of its hole; a branch's is computed and stands as a locked number.
template <class N>
Length<N> line_of(const JointShape& shape, const JointInputs<N>& in) {
  const WeldInputs<N>& weld = in.weld;
  if (shape.weld == WeldKind::plug) return name(shape.sizes.depth_given ? weld.depth : in.thickness, fig::line);
  if (shape.weld == WeldKind::slot) return name(slot_length(weld.slot, weld.width), fig::line);
  if (shape.sizes.rectangle) return name(all_around(weld.side, weld.side_second, weld.corner_radius), fig::line);
  return shape.tube && !shape.sizes.branch ? name(circumference(in.outside_diameter), fig::line) : in.line;
}

template <class N>
LineFigures<N> line_figures(const JointShape& shape, const JointInputs<N>& in) {
  LineFigures<N> out;
  out.line = line_of(shape, in);
  out.elements_on_line = number<N>(1);
  Length<N> welded = out.line;
  const Length<N> pitch = shape.sizes.gap_e ? name(in.element + in.weld.gap_e, fig::pitch) : in.pitch;
  if (shape.intermittent) {
    out.elements_on_line = name(elements_on_line(out.line, in.element, pitch), fig::elements_on_line);
    welded = out.elements_on_line * in.element;
  }
  out.joints_made = name(in.weldments * in.count, fig::joints_made);
  if (shape.sizes.staggered) {
    out.elements_second = name(staggered_elements(out.line, in.element, pitch), fig::elements_second);
    const Ratio<N> both = out.elements_on_line + out.elements_second;
    out.weld_elements = name(both * out.joints_made, fig::weld_elements);
    out.weld_length = name(out.weld_elements * in.element, fig::weld_length);
  } else {
    out.weld_elements = name(out.elements_on_line * out.joints_made * in.sides, fig::weld_elements);
    out.weld_length = name(welded * out.joints_made * in.sides, fig::weld_length);
  }
  if (shape.intermittent) out.unwelded = name(out.line * out.joints_made * in.sides - out.weld_length, fig::unwelded);
  return out;
}

}  // namespace seambook
