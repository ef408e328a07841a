// What a joint states of preheat, interpass temperature and heat input, or inherits from its weldment or job.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr Temperature<> hottest{600};  // above it steel tempers: a slip of the scale

template <class Optional>
auto nearest_stated(const DefaultLevels& levels, Optional HeatDefaults::*member)
    -> decltype(&*std::declval<const Optional&>()) {
  for (const JointDefaults* level : levels)
    if (const auto& written = level->heat.*member) return &*written;
  return nullptr;
}

Known<dim::temperature> take_temperature(JobDraft& draft, const Written<dim::temperature>& written,
                                         std::string_view what) {
  const Known<dim::temperature> out = stated(draft, Maybe<dim::temperature>(written));
  draft.job.sources.back().range = 0;  // decided, not in doubt
  if (written.value > hottest && draft.refused.insert(written.place).second)
    draft.diagnostics.error(written.place,
                            fmt::format("{} of {} is hotter than welding ever asks for", what,
                                        shown(written.value, shown_in(draft.book.terms, unit::celsius).unit)),
                            "it may be meant in another unit");
  set_limits(draft, out.si, {0, hottest.si, true, false});
  return out;
}

/// Fillets, bevels, Js and flare bevels stand on a plate that goes through; the others join two runs of plate.
bool stands_on_plate(WeldKind weld) {
  return weld == WeldKind::fillet || weld == WeldKind::flare_bevel || is_one_flank(weld);
}

/// What needs the rate book to say what heating takes.
void refuse_unpriced(JobDraft& draft, const PreheatText& written, const BaseMetal& metal) {
  if (draft.book.preheating && !is_steel(metal.group) && !given(metal.specific_heat))
    draft.diagnostics.error(written.place, fmt::format("the specific heat of {} is not stated", metal.name),
                            "add 'specific_heat' to this base metal; that of preheating is of steel");
  if (draft.book.preheating || draft.book.method.covered(WorkKind::preheat)) return;
  if (!draft.refused.insert(written.place).second) return;
  draft.diagnostics.error(written.place, "the rate book does not say what preheating takes",
                          "add 'preheating' to it with burner, burner_efficiency, fuel, soak_width, specific_heat and "
                          "room");
}

}  // namespace

void resolve_joint_heat(JobDraft& draft, const JointText& text, const DefaultLevels& levels, Joint& joint) {
  constexpr std::size_t tee = 1;  // of joint_types
  JointHeat& heat = joint.heat;
  heat.tee =
      text.joint_type ? text.joint_type->at == tee : stands_on_plate(joint.weld) && !(text.lap && text.lap->value);
  if (const PreheatText* preheat = nearest_stated(levels, &HeatDefaults::preheat)) {
    heat.preheat_stated = true;
    if (preheat->temperature) {
      heat.preheat = take_temperature(draft, *preheat->temperature, "a preheat");
      refuse_unpriced(draft, *preheat, draft.book.base_metals[joint.base_metal]);
    }
  }
  if (const auto* interpass = nearest_stated(levels, &HeatDefaults::interpass_max))
    heat.interpass_max = take_temperature(draft, *interpass, "an interpass temperature");
  if (const auto* limit = nearest_stated(levels, &HeatDefaults::heat_input_max))
    heat.heat_input_max = stated(draft, Maybe<dim::line_energy>(*limit));
}

}  // namespace seambook
