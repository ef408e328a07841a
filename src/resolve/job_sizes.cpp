// The sizes of a joint as the author states them: what each weld needs, what does not apply, what cannot be.
#include <fmt/format.h>

#include <numbers>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// The length along which is welded; a tube's from its diameter.
double line_length(const Joint& joint) {
  return given(joint.line) ? joint.line.si.value : std::numbers::pi * joint.outside_diameter.si.value;
}

template <Dim D>
void refuse_where_it_does_not_apply(JobDraft& draft, const Maybe<D>& written, std::string_view key, WeldKind weld,
                                    const std::string& hint = {}) {
  if (written)
    draft.diagnostics.error(written->place,
                            fmt::format("'{}' does not apply to a weld of kind {}", key, weld_word(weld)), hint);
}

void refuse_gap_not_built(JobDraft& draft, const JointText& text, WeldKind weld) {
  if (text.gap)
    draft.diagnostics.error(text.gap->place, fmt::format("gaps of {} welds are not built yet", weld_word(weld)),
                            "leave them out, or enlarge the welds by them");
}

void resolve_thickness(JobDraft& draft, const JointText& text, Joint& joint) {
  if (!text.thickness)
    return refuse_lack(draft, text.place, "the joint has no thickness", "for example 'thickness: 8 mm'");
  joint.thickness = stated(draft, Maybe<dim::length>(text.thickness->low));
  // One value for both members is one number, with one source.
  const bool one_value = text.thickness->low.place == text.thickness->high.place;
  joint.thickness_second = one_value ? joint.thickness : stated(draft, Maybe<dim::length>(text.thickness->high));
}

void resolve_line(JobDraft& draft, const JointText& text, Joint& joint) {
  if (text.length && text.outside_diameter) {
    draft.diagnostics.error(text.outside_diameter->place, "length and outside_diameter are both given: choose one",
                            "a tube's length follows from its diameter");
  } else if (!text.length && !text.outside_diameter) {
    refuse_lack(draft, text.place, "the joint has no length", "add 'length', or 'outside_diameter' for a tube");
  }
  joint.line = stated(draft, text.length);
  joint.outside_diameter = stated(draft, text.outside_diameter);
}

/// Line and pitch are bound to the element, so that one is locked; with gap_e the pitch is made of it besides.
void resolve_pitch(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.pitch = stated(draft, text.pitch);
  if (text.gap_e)
    joint.pitch = {Sourced{text.element->value.si + text.gap_e->value.si, add_job_source(draft, text.gap_e->place)}};
  const double element = joint.element.si.value;
  freeze(draft, joint.element.si);
  set_limits(draft, joint.pitch.si, {element, 1e6, true, false});
  set_limits(draft, joint.line.si, {element, 1e6, false, false});
  set_limits(draft, joint.outside_diameter.si, {element / std::numbers::pi, 1e6, true, false});
}

void resolve_elements(JobDraft& draft, const JointText& text, Joint& joint) {
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
  const double element = joint.element.si.value;
  if (joint.pitch.si.value <= element)
    draft.diagnostics.error(text.pitch ? text.pitch->place : text.gap_e->place,
                            fmt::format("pitch {} leaves no gap between weld elements of {}",
                                        shown(joint.pitch.si.value, unit::mm), shown(element, unit::mm)),
                            "pitch is centre to centre");
  if ((text.length || text.outside_diameter) && element > line_length(joint) * (1 + 1e-9))
    draft.diagnostics.error(text.element->place, fmt::format("the weld element is longer than the line of {}",
                                                             shown(line_length(joint), unit::mm)));
}

void resolve_fillet(JobDraft& draft, const JointText& text, Joint& joint) {
  if (text.leg && text.throat) draft.diagnostics.error(text.throat->place, "leg and throat are both given: choose one");
  if (!text.leg && !text.throat) refuse_lack(draft, text.place, "the fillet has no size", "add 'leg' or 'throat'");
  joint.leg = stated(draft, text.leg);
  joint.throat = stated(draft, text.throat);
  refuse_gap_not_built(draft, text, joint.weld);
  refuse_where_it_does_not_apply(draft, text.root_face, "root_face", joint.weld);
  refuse_where_it_does_not_apply(draft, text.groove_angle, "groove_angle", joint.weld);
  if (text.excess)
    draft.diagnostics.error(text.excess->place, "'excess' does not apply to a weld of kind fillet",
                            "state 'convexity' as a share of the section");
  joint.convexity = text.convexity ? stated(draft, text.convexity) : draft.book.allowances.convexity;
  set_limits(draft, joint.convexity.si, {0, 1, false, false});
  if (!text.convexity)
    assume(draft, fmt::format("convexity of fillets {} of the section, from the rate book",
                              shown(joint.convexity.si.value, unit::percent)));
}

void resolve_other_than_fillet(JobDraft& draft, const JointText& text, Joint& joint) {
  refuse_where_it_does_not_apply(draft, text.leg, "leg", joint.weld, "its size is the thickness");
  refuse_where_it_does_not_apply(draft, text.throat, "throat", joint.weld, "its size is the thickness");
  refuse_where_it_does_not_apply(draft, text.convexity, "convexity", joint.weld,
                                 "state 'excess' with width and height");
  const bool grooved = joint.weld == WeldKind::single_v || joint.weld == WeldKind::single_bevel;
  if (!grooved) {
    refuse_where_it_does_not_apply(draft, text.root_face, "root_face", joint.weld);
    refuse_where_it_does_not_apply(draft, text.groove_angle, "groove_angle", joint.weld);
  }
  if (joint.weld == WeldKind::edge) refuse_gap_not_built(draft, text, joint.weld);
}

}  // namespace

void resolve_sizes(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.count = count_or_one(draft, text.count, text.place);
  joint.sides = count_or_one(draft, text.sides, text.place);
  set_limits(draft, joint.sides.si, {1, 2, false, false});
  resolve_thickness(draft, text, joint);
  resolve_line(draft, text, joint);
  resolve_elements(draft, text, joint);
  joint.gap_max = stated(draft, text.gap_max);
  joint.access = stated(draft, text.access);
  if (joint.weld == WeldKind::fillet)
    resolve_fillet(draft, text, joint);
  else
    resolve_other_than_fillet(draft, text, joint);
}

}  // namespace seambook
