// A weldment: its name, counts, turning and handling, what is bought for it, its joints.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

void take_turns(JobDraft& draft, const WeldmentText& text, Weldment& weldment) {
  if (text.turns) {
    weldment.turns = stated_count(draft, *text.turns);
    return;
  }
  bool two_sided = false;
  for (std::size_t i = 0; i < weldment.joint_count; ++i) {
    const Joint& joint = draft.job.joints[weldment.first_joint + i];
    two_sided = two_sided || joint.sides.si.value > 1 || is_double(joint.weld);
    freeze(draft, joint.sides.si);  // whether the weldment is turned hangs on it
  }
  if (!two_sided) return;
  weldment.turns = draft.book.allowances.turns_two_sided;
  assume(draft, fmt::format("{}: turns {}, because joints have two sides, from the rate book", weldment.name,
                            shown(weldment.turns.si.value, unit::none)));
}

/// The handling class by mass matters only where something is turned.
void take_handling(JobDraft& draft, const WeldmentText& text, Weldment& weldment) {
  const std::vector<Handling>& classes = draft.book.handling;
  if (!given(weldment.turns) || classes.empty()) return;
  if (!text.mass) {
    assume(draft, fmt::format("{}: mass is not stated: turned {}", weldment.name, classes.front().name));
    return;
  }
  const auto fits = std::find_if(classes.begin(), classes.end(), [&](const Handling& handling) {
    return !handling.up_to || text.mass->value.si <= handling.up_to->si * (1 + 1e-9);
  });
  if (fits == classes.end())
    return draft.diagnostics.error(text.mass->place,
                                   fmt::format("no handling takes {}", shown(text.mass->value, unit::kg)),
                                   fmt::format("the rate book's last, {}, ends at {}", classes.back().name,
                                               shown(*classes.back().up_to, unit::kg)));
  weldment.handling = static_cast<std::size_t>(fits - classes.begin());
  if (classes.size() > 1) freeze(draft, weldment.mass.si);
}

/// The weldment's own base metal, for pricing by mass: as stated, else the first joint's.
void take_weldment_metal(JobDraft& draft, const JointDefaults& of_job, const WeldmentText& text, Weldment& weldment) {
  const DefaultLevels levels{&text.defaults, &text.defaults, &of_job};
  if (const InheritedWord metal = inherited(levels, &JointDefaults::base_metal); metal.word != nullptr) {
    weldment.base_metal = draft.book.base_metals.size();  // refused already when it is not found
    if (!draft.refused.contains(metal.word->place))
      weldment.base_metal = find_base_metal(draft, *metal.word).value_or(weldment.base_metal);
  } else if (weldment.joint_count > 0) {
    weldment.base_metal = draft.job.joints[weldment.first_joint].base_metal;
  }
}

}  // namespace

void resolve_weldment(JobDraft& draft, const PartText& part, const WeldmentText& text, Weldment& weldment) {
  weldment.place = text.place;
  weldment.count = count_or_one(draft, text.count, text.place, "count");
  weldment.mass = stated(draft, text.mass);
  if (text.parts)
    weldment.parts = stated_count(draft, *text.parts);
  else
    assume(draft, fmt::format("{}: parts are not stated: fit-up per part is not charged", weldment.name));
  weldment.first_joint = draft.job.joints.size();
  resolve_joints(draft, text, part.job.defaults, draft.job.weldments.size());
  weldment.joint_count = draft.job.joints.size() - weldment.first_joint;
  if (text.joints.empty() && !text.joints_from)  // why a take-off gives none was told when it was read
    refuse_lack(draft, text.place, "the weldment has no joints",
                "add 'joints', or 'joints_from' with a take-off's name");
  resolve_precedence(draft, text, weldment);
  resolve_weldment_plan(draft, text, weldment);
  take_turns(draft, text, weldment);
  take_handling(draft, text, weldment);
  weldment.bought = resolve_bought(draft, text.bought);
  take_weldment_metal(draft, part.job.defaults, text, weldment);
  resolve_metal_price(draft, part, text, weldment);
  resolve_weldment_labour(draft, weldment);
}

}  // namespace seambook
