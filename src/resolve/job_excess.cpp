// What stands above the plate: the cap by width and height or as a share of the groove, the cap on the root side, and
// the fillet over a bevel or J of a T-joint.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Flares are filled flush, holes level, and a reinforcing fillet is the cap of its groove.
bool capped_unasked(const Joint& joint) {
  return !is_flare(joint.weld) && !is_hole(joint.weld) && joint.weld != WeldKind::overlay &&
         !given(joint.groove.reinforce);
}

void take_cap(JobDraft& draft, const JointText& text, Joint& joint) {
  if (text.excess) {
    joint.excess_width = stated(draft, text.excess->width);
    joint.excess_height = stated(draft, text.excess->height);
    // What is stated as nothing may stay so; a cap may not be taken away, it may be all that the filler has to fill.
    set_limits(draft, joint.excess_width.si, {0, 1, joint.excess_width.si.value > 0, false});
    set_limits(draft, joint.excess_height.si, {0, 1, joint.excess_height.si.value > 0, false});
  }
  joint.groove.excess_share = stated(draft, text.sizes.excess_share);
  set_limits(draft, joint.groove.excess_share.si, {0, 1, false, false});
  if (given(joint.excess_height) || given(joint.groove.excess_share)) return;
  if (!capped_unasked(joint) && !text.excess) return;
  joint.excess_height = draft.book.allowances.excess_height;
  assume(draft, fmt::format("excess height of butt and edge welds {} from the rate book",
                            length_shown(draft, joint.excess_height.si.value)));
}

void take_reinforcement(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.groove.reinforce = stated(draft, text.sizes.reinforce);
  if (!given(joint.groove.reinforce)) return;
  set_limits(draft, joint.groove.reinforce.si, {0, 1, true, false});
  joint.convexity = text.convexity ? stated(draft, text.convexity) : draft.book.allowances.convexity;
  set_limits(draft, joint.convexity.si, {0, 1, false, false});
  if (!text.convexity)
    assume(draft, fmt::format("convexity of fillets {} of the section, from the rate book",
                              shown(joint.convexity.si.value, unit::percent)));
  const std::optional<Place> cap = text.excess               ? std::optional(text.excess->place)
                                   : text.sizes.excess_share ? std::optional(text.sizes.excess_share->place)
                                                             : std::nullopt;
  if (cap)
    draft.diagnostics.error(*cap, "reinforce and excess are both given: choose one",
                            "the fillet is the cap of its groove");
}

void take_back_cap(JobDraft& draft, const JointText& text, Joint& joint) {
  const std::optional<ExcessText>& back = text.sizes.back_excess;
  if (!back) return;
  if (joint.groove.backing != Backing::none)
    return draft.diagnostics.error(back->place, "a root on a backing has no cap of its own",
                                   "leave out 'back_excess' or 'backing'");
  if (joint.weld == WeldKind::square && joint.sides.si.value == 2)
    return draft.diagnostics.error(back->place, "welded from both sides, both have the cap stated as 'excess'");
  if (!back->width || !back->height)
    return refuse_lack(draft, back->place, "'back_excess' needs width and height",
                       "for example {width: 6 mm, height: 1 mm}");
  joint.groove.back_width = stated(draft, back->width);
  joint.groove.back_height = stated(draft, back->height);
  set_limits(draft, joint.groove.back_width.si, {0, 1, true, false});
  set_limits(draft, joint.groove.back_height.si, {0, 1, true, false});
}

}  // namespace

void resolve_excess(JobDraft& draft, const JointText& text, Joint& joint) {
  take_reinforcement(draft, text, joint);
  take_cap(draft, text, joint);
  take_back_cap(draft, text, joint);
}

}  // namespace seambook
