// What fills rounds, holes, surfaces and gouged grooves: flares, plugs, slots, overlays, repairs.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

Known<dim::length> needed_size(JobDraft& draft, const JointText& text, WeldKind weld, std::string_view key,
                               const Maybe<dim::length>& written) {
  if (!written)
    refuse_lack(draft, text.place, fmt::format("the {} has no {}", weld_word(weld), key), fmt::format("add '{}'", key));
  const Known<dim::length> size = stated(draft, written);
  set_limits(draft, size.si, {0, 1, true, false});
  return size;
}

/// Filled up to the round's radius unless a depth is stated; radius and depth bind each other.
void resolve_flare(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.groove.radius = needed_size(draft, text, joint.weld, "radius", text.sizes.radius);
  joint.gap = stated(draft, text.gap);
  set_limits(draft, joint.gap.si, {0, 1, false, false});
  if (!given(joint.groove.depth)) return;
  freeze(draft, joint.groove.radius.si);
  if (given(joint.groove.radius) && joint.groove.depth.si.value > joint.groove.radius.si.value * (1 + 1e-9))
    draft.diagnostics.error(
        place_of(draft, joint.groove.depth.si),
        fmt::format("depth {} is more than the radius of {}", length_shown(draft, joint.groove.depth.si.value),
                    length_shown(draft, joint.groove.radius.si.value)),
        "flush is the radius; what stands above it is 'excess'");
}

void resolve_hole(JobDraft& draft, const JointText& text, Joint& joint) {
  if (given(joint.groove.depth) && given(joint.thickness) &&
      joint.groove.depth.si.value > joint.thickness.si.value * (1 + 1e-9))
    draft.diagnostics.error(
        place_of(draft, joint.groove.depth.si),
        fmt::format("depth {} is more than the first member's {}", length_shown(draft, joint.groove.depth.si.value),
                    length_shown(draft, joint.thickness.si.value)));
  if (given(joint.groove.depth)) set_limits(draft, joint.thickness.si, {joint.groove.depth.si.value, 1, false, false});
  if (joint.weld == WeldKind::plug) {
    joint.fill.diameter = needed_size(draft, text, joint.weld, "diameter", text.sizes.diameter);
    return assume(draft, "plug welds: the section is that of the hole, the weld length its depth");
  }
  joint.fill.width = needed_size(draft, text, joint.weld, "width", text.sizes.width);
  freeze(draft, joint.fill.width.si);
  set_limits(draft, joint.fill.slot.si, {joint.fill.width.si.value, 1e3, true, false});
  if (given(joint.fill.width) && given(joint.fill.slot) && joint.fill.width.si.value >= joint.fill.slot.si.value)
    draft.diagnostics.error(
        text.sizes.width->place,
        fmt::format("the slot is no longer than its width of {}", length_shown(draft, joint.fill.width.si.value)),
        "a round hole is a plug weld with a diameter");
  assume(draft,
         "slot welds: the ends are half round; the section is width times depth, the weld length that of a "
         "rectangle of the same area");
}

void resolve_overlay(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.fill.width = needed_size(draft, text, joint.weld, "width", text.sizes.width);
  joint.fill.layer_height = needed_size(draft, text, joint.weld, "layer_height", text.sizes.layer_height);
  joint.fill.layers = count_or_one(draft, text.sizes.layers, text.place, "layers");
}

/// Deeper than half its width a gouged groove has straight walls: depth and width choose the formula.
void resolve_gouge(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.fill.width = needed_size(draft, text, joint.weld, "width", text.sizes.width);
  freeze(draft, joint.fill.width.si);
  if (!given(joint.groove.depth))
    return refuse_lack(draft, text.place, "the gouged groove has no depth", "add 'depth'");
  if (!given(joint.thickness)) return;
  const double depth = joint.groove.depth.si.value, thinner = thinner_member(joint).si;
  for (const Known<dim::length>& member : {joint.thickness, joint.thickness_second})
    set_limits(draft, member.si, {depth, 1, false, false});
  if (depth > thinner * (1 + 1e-9))
    draft.diagnostics.error(place_of(draft, joint.groove.depth.si),
                            fmt::format("depth {} is more than the thickness of {}", length_shown(draft, depth),
                                        length_shown(draft, thinner)));
}

}  // namespace

void resolve_fills(JobDraft& draft, const JointText& text, Joint& joint) {
  if (is_flare(joint.weld)) return resolve_flare(draft, text, joint);
  if (is_hole(joint.weld)) return resolve_hole(draft, text, joint);
  if (joint.weld == WeldKind::overlay) return resolve_overlay(draft, text, joint);
  if (joint.weld == WeldKind::gouged) return resolve_gouge(draft, text, joint);
}

}  // namespace seambook
