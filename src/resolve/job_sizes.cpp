// The sizes of a joint as the author states them: what each weld needs, and what cannot be. Fillets, lines, and what
// fills holes and surfaces are in files of their own.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

void resolve_thickness(JobDraft& draft, const JointText& text, Joint& joint) {
  if (!text.thickness)
    return refuse_lack(draft, text.place, "the joint has no thickness", "for example 'thickness: 8 mm'");
  joint.thickness = stated(draft, Maybe<dim::length>(text.thickness->low));
  // One value for both members is one number, with one source.
  const bool one_value = text.thickness->one_value;
  joint.thickness_second = one_value ? joint.thickness : stated(draft, Maybe<dim::length>(text.thickness->high));
}

/// Sides multiply the weld's length. A square seam from both sides is two runs that share the gap; a groove from both
/// sides has a name of its own.
void resolve_sides(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.sides = count_or_one(draft, text.sides, text.place, "sides");
  set_limits(draft, joint.sides.si, {1, 2, false, false});
  const bool two = text.sides && text.sides->value == 2;
  if (is_groove(joint.weld) || is_hole(joint.weld)) {
    freeze(draft, joint.sides.si);
    if (two && is_hole(joint.weld))
      draft.diagnostics.error(text.sides->place, fmt::format("a {} weld has one side", weld_word(joint.weld)));
    if (two && is_groove(joint.weld))
      draft.diagnostics.error(
          text.sides->place, fmt::format("'sides' does not apply to a {}", weld_word(joint.weld)),
          is_double(joint.weld) ? "it is welded from both sides as it is" : "a groove from both sides is a double one");
  }
  if (joint.weld != WeldKind::square) return;
  freeze(draft, joint.sides.si);
  if (two)
    assume(draft, "square seams from both sides: each side lays half of what the gap takes, and a cap of its own");
}

/// Depth of what is welded partly through, one a side.
void resolve_depth(JobDraft& draft, const JointText& text, Joint& joint) {
  if (!text.sizes.depth) return;
  const Span<dim::length>& depth = *text.sizes.depth;
  const bool one_value = depth.one_value;
  joint.groove.depth = stated(draft, Maybe<dim::length>(depth.low));
  freeze(draft, joint.groove.depth.si);
  if (!is_double(joint.weld)) {
    if (!one_value)
      draft.diagnostics.error(depth.high.place, fmt::format("a {} has one depth", weld_word(joint.weld)),
                              "two depths are for grooves from both sides");
    return;
  }
  joint.groove.depth_second = one_value ? joint.groove.depth : stated(draft, Maybe<dim::length>(depth.high));
  freeze(draft, joint.groove.depth_second.si);
}

}  // namespace

void resolve_sizes(JobDraft& draft, const JointText& text, Joint& joint) {
  refuse_inapplicable(draft, text, joint.weld);
  joint.count = count_or_one(draft, text.count, text.place, "count");
  resolve_thickness(draft, text, joint);
  resolve_sides(draft, text, joint);
  resolve_depth(draft, text, joint);
  resolve_line(draft, text, joint);
  resolve_elements(draft, text, joint);
  joint.gap_max = stated(draft, text.gap_max);
  joint.access = stated(draft, text.access);
  if (joint.weld == WeldKind::fillet) resolve_fillet(draft, text, joint);
  resolve_fills(draft, text, joint);
}

}  // namespace seambook
