// The line of a joint: a length, round a tube, along the saddle of a branch, all round a rectangle; and the weld
// elements that an intermittent weld lays on it.
#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "resolve/job_draft.hpp"
#include "resolve/saddle_curve.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

void resolve_branch(JobDraft& draft, const JointText& text, Joint& joint) {
  if (!text.sizes.branch_on) {
    if (text.sizes.branch_angle)
      draft.diagnostics.error(text.sizes.branch_angle->place, "'branch_angle' needs 'branch_on'",
                              "state the outside diameter of the tube on which this one is set");
    return;
  }
  const Written<dim::length>& header = *text.sizes.branch_on;
  joint.path.branch_on = stated(draft, text.sizes.branch_on);
  joint.path.branch_angle = stated(draft, text.sizes.branch_angle);
  for (const Known<dim::length>& size : {joint.outside_diameter, joint.path.branch_on}) freeze(draft, size.si);
  freeze(draft, joint.path.branch_angle.si);
  if (!text.outside_diameter)
    return refuse_lack(draft, header.place, "'branch_on' needs the branch's own 'outside_diameter'");
  const Angle<> angle = text.sizes.branch_angle ? text.sizes.branch_angle->value : Angle<>{std::numbers::pi / 2};
  if (angle.si >= std::numbers::pi)
    return draft.diagnostics.error(text.sizes.branch_angle->place,
                                   fmt::format("branch angle {} is impossible", shown(angle, unit::degree)),
                                   "it is more than 0° and less than 180°");
  const Length<> branch = text.outside_diameter->value;
  if (branch.si > header.value.si * (1 + 1e-9))
    return draft.diagnostics.error(header.place,
                                   fmt::format("a tube of {} cannot be set on one of {}", length_shown(draft, branch),
                                               length_shown(draft, header.value)),
                                   "the branch is the smaller tube or as large");
  const Length<> curve = saddle_curve(branch, {std::fmax(header.value.si, branch.si)}, angle);
  joint.line = {add_job_source(draft, curve.si, header.place, "length")};
  freeze(draft, joint.line.si);
  assume(draft, fmt::format("saddle of {} on {} at {}: {} by numerical integration", length_shown(draft, branch),
                            length_shown(draft, header.value), shown(angle, unit::degree), length_shown(draft, curve)));
}

void resolve_rectangle(JobDraft& draft, const JointText& text, Joint& joint) {
  const Maybe<dim::length>& radius = text.sizes.corner_radius;
  if (!text.sizes.around) {
    if (radius)
      draft.diagnostics.error(radius->place, "'corner_radius' needs 'around'",
                              "state the sides of the rectangle: [60 mm, 40 mm]");
    return;
  }
  const Span<dim::length>& sides = *text.sizes.around;
  const bool square = sides.one_value;
  joint.path.side = stated(draft, Maybe<dim::length>(sides.low));
  joint.path.side_second = square ? joint.path.side : stated(draft, Maybe<dim::length>(sides.high));
  joint.path.corner_radius = stated(draft, radius);
  freeze(draft, joint.path.corner_radius.si);
  if (!radius) return;
  for (const Known<dim::length>& side : {joint.path.side, joint.path.side_second})
    set_limits(draft, side.si, {2 * radius->value.si, 1e6, false, false});
  const double shorter = std::fmin(sides.low.value.si, sides.high.value.si);
  if (2 * radius->value.si > shorter * (1 + 1e-9))
    draft.diagnostics.error(radius->place,
                            fmt::format("corner radius {} does not fit a side of {}",
                                        length_shown(draft, radius->value), length_shown(draft, shorter)),
                            "it is at most half the shorter side");
}

/// A plug's line is the depth of its hole, a slot's its own length.
void resolve_hole_line(JobDraft& draft, const JointText& text, Joint& joint) {
  if (joint.weld == WeldKind::plug) return;
  if (text.length && text.element)
    draft.diagnostics.error(text.element->place, "length and element are both given: choose one",
                            "a slot is one weld element");
  if (!text.length && !text.element) return refuse_lack(draft, text.place, "the slot has no length", "add 'length'");
  joint.fill.slot = stated(draft, text.length ? text.length : text.element);
}

/// Line and pitch are bound to the element, so that one is locked; with gap_e the pitch is made of it besides. The
/// second side of a staggered weld begins half a pitch later, so its pitch is locked too.
void resolve_pitch(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.pitch = stated(draft, text.pitch);
  joint.path.gap_e = stated(draft, text.gap_e);
  if (text.gap_e)
    joint.pitch = {add_job_source(draft, text.element->value.si + text.gap_e->value.si, text.gap_e->place,
                                  "in place of gap_e: pitch")};
  const double element = joint.element.si.value;
  const double least_line = element + (joint.path.staggered ? joint.pitch.si.value / 2 : 0);
  freeze(draft, joint.element.si);
  if (joint.path.staggered) {
    freeze(draft, joint.pitch.si);
    freeze(draft, joint.path.gap_e.si);
  }
  set_limits(draft, joint.path.gap_e.si, {0, 1e6, true, false});
  set_limits(draft, joint.pitch.si, {element, 1e6, true, false});
  set_limits(draft, joint.line.si, {least_line, 1e6, false, false});
  set_limits(draft, joint.outside_diameter.si, {least_line / std::numbers::pi, 1e6, true, false});
  for (const Known<dim::length>& side : {joint.path.side, joint.path.side_second}) freeze(draft, side.si);
}

void resolve_layout(JobDraft& draft, const JointText& text, Joint& joint) {
  if (!text.sizes.layout || text.sizes.layout->text != "staggered") return;
  joint.path.staggered = true;
  freeze(draft, joint.sides.si);
  if (!text.element)
    draft.diagnostics.error(text.sizes.layout->place, "a staggered weld needs weld elements",
                            "add 'element' and 'pitch'");
  if (joint.sides.si.value != 2)
    draft.diagnostics.error(text.sizes.layout->place, "a staggered weld has two sides", "add 'sides: 2'");
}

void check_elements(JobDraft& draft, const JointText& text, const Joint& joint) {
  const double element = joint.element.si.value, pitch = joint.pitch.si.value, line = line_length(joint);
  if (pitch <= element)
    draft.diagnostics.error(text.pitch ? text.pitch->place : text.gap_e->place,
                            fmt::format("pitch {} leaves no gap between weld elements of {}",
                                        length_shown(draft, pitch), length_shown(draft, element)),
                            "pitch is centre to centre");
  if (line <= 0) return;
  if (element > line * (1 + 1e-9))
    draft.diagnostics.error(text.element->place,
                            fmt::format("the weld element is longer than the line of {}", length_shown(draft, line)));
  else if (joint.path.staggered && element + pitch / 2 > line * (1 + 1e-9))
    draft.diagnostics.error(text.sizes.layout->place,
                            fmt::format("no weld element fits the second side of {}", length_shown(draft, line)),
                            fmt::format("staggered by half a pitch it begins at {}", length_shown(draft, pitch / 2)));
}

}  // namespace

double line_length(const Joint& joint) {
  if (given(joint.line)) return joint.line.si.value;
  if (given(joint.path.side))
    return 2 * (joint.path.side.si.value + joint.path.side_second.si.value) -
           (8 - 2 * std::numbers::pi) * joint.path.corner_radius.si.value;
  return std::numbers::pi * joint.outside_diameter.si.value;
}

void resolve_line(JobDraft& draft, const JointText& text, Joint& joint) {
  if (is_hole(joint.weld)) return resolve_hole_line(draft, text, joint);
  if (text.length && text.outside_diameter) {
    draft.diagnostics.error(text.outside_diameter->place, "length and outside_diameter are both given: choose one",
                            "a tube's length follows from its diameter");
  } else if (text.sizes.around && (text.length || text.outside_diameter)) {
    draft.diagnostics.error(
        text.sizes.around->low.place,
        fmt::format("{} and around are both given: choose one", text.length ? "length" : "outside_diameter"),
        "a rectangle's length follows from its sides");
  } else if (!text.length && !text.outside_diameter && !text.sizes.around && !text.sizes.branch_on) {
    refuse_lack(draft, text.place, "the joint has no length", "add 'length', or 'outside_diameter' for a tube");
  }
  joint.line = stated(draft, text.length);
  joint.outside_diameter = stated(draft, text.outside_diameter);
  if (!text.length) resolve_branch(draft, text, joint);
  if (text.length && text.sizes.branch_on)
    draft.diagnostics.error(text.sizes.branch_on->place, "length and branch_on are both given: choose one",
                            "a branch's length follows from both diameters");
  resolve_rectangle(draft, text, joint);
}

void resolve_elements(JobDraft& draft, const JointText& text, Joint& joint) {
  if (is_hole(joint.weld)) return;
  resolve_layout(draft, text, joint);
  if (!text.element) {
    if (text.pitch)
      draft.diagnostics.error(text.pitch->place, "a pitch needs a weld element", "add for example 'element: 40 mm'");
    if (text.gap_e)
      draft.diagnostics.error(text.gap_e->place, "gap_e needs a weld element", "add for example 'element: 40 mm'");
    return;
  }
  if (text.pitch && text.gap_e)
    return draft.diagnostics.error(text.gap_e->place, "pitch and gap_e are both given: choose one",
                                   "pitch is centre to centre, gap_e from the end of one to the start of the next");
  if (!text.pitch && !text.gap_e)
    return refuse_lack(draft, text.place, "an intermittent weld needs a pitch",
                       "add 'pitch' (centre to centre) or 'gap_e' (end to start)");
  joint.element = stated(draft, text.element);
  resolve_pitch(draft, text, joint);
  check_elements(draft, text, joint);
}

}  // namespace seambook
