// A fillet's legs or throat, as ISO 2553 has them: z, a, and s for deep penetration. The metal follows from the legs;
// throats beside unequal legs and deep throats are printed and must be possible.
#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

void take_fillet_size(JobDraft& draft, const JointText& text, Joint& joint) {
  const MaybeSpan<dim::length>& legs = text.sizes.legs;
  if (text.leg && text.throat) draft.diagnostics.error(text.throat->place, "leg and throat are both given: choose one");
  if (text.leg && legs) draft.diagnostics.error(legs->low.place, "leg and legs are both given: choose one");
  if (!text.leg && !text.throat && !legs)
    refuse_lack(draft, text.place, "the fillet has no size", "add 'leg' or 'throat'");
  joint.leg = stated(draft, legs ? Maybe<dim::length>(legs->low) : text.leg);
  joint.throat = stated(draft, text.throat);
  if (!legs) return;
  const bool one_value = legs->one_value;
  joint.fillet.leg_second = one_value ? joint.leg : stated(draft, Maybe<dim::length>(legs->high));
}

/// The throat that the legs give, z₁z₂/√(z₁² + z₂²), or the one stated in their place.
double throat_of(const Joint& joint) {
  if (!given(joint.leg)) return joint.throat.si.value;
  const double z1 = joint.leg.si.value, z2 = given(joint.fillet.leg_second) ? joint.fillet.leg_second.si.value : z1;
  return z1 * z2 / std::hypot(z1, z2);
}

/// Sizes that bind each other are locked together.
void check_throats(JobDraft& draft, const JointText& text, const Joint& joint) {
  const bool throat_of_legs = text.sizes.legs && text.throat;
  if (!throat_of_legs && !text.sizes.deep_throat) return;
  const double throat = throat_of(joint);
  for (const Known<dim::length>& size : {joint.leg, joint.throat, joint.fillet.leg_second, joint.fillet.deep_throat})
    freeze(draft, size.si);
  if (throat_of_legs && joint.throat.si.value > throat * (1 + 1e-9))
    draft.diagnostics.error(
        text.throat->place,
        fmt::format("throat {} is larger than the legs of {} and {} allow", length_shown(draft, joint.throat.si.value),
                    length_shown(draft, joint.leg.si.value), length_shown(draft, joint.fillet.leg_second.si.value)),
        fmt::format("they give at most {}", length_shown(draft, throat)));
  if (text.sizes.deep_throat && joint.fillet.deep_throat.si.value < throat * (1 - 1e-9))
    draft.diagnostics.error(
        text.sizes.deep_throat->place,
        fmt::format("deep throat {} is less than the throat of {}",
                    length_shown(draft, joint.fillet.deep_throat.si.value), length_shown(draft, throat)),
        "deep penetration adds to the throat (ISO 2553: s beside a)");
}

}  // namespace

void resolve_fillet(JobDraft& draft, const JointText& text, Joint& joint) {
  take_fillet_size(draft, text, joint);
  joint.fillet.deep_throat = stated(draft, text.sizes.deep_throat);
  check_throats(draft, text, joint);
  joint.gap = stated(draft, text.gap);
  set_limits(draft, joint.gap.si, {0, 1, false, false});
  if (joint.gap.si.value > 0)
    assume(draft, "root gaps of fillets: both legs grow by the gap, so that the throat stands from the member's edge");
  joint.convexity = text.convexity ? stated(draft, text.convexity) : draft.book.allowances.convexity;
  set_limits(draft, joint.convexity.si, {0, 1, false, false});
  if (!text.convexity)
    assume(draft, fmt::format("convexity of fillets {} of the section, from the rate book",
                              shown(joint.convexity.si.value, unit::percent)));
}

}  // namespace seambook
