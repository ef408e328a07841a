// The joints of a weldment: ids, weld, base metal, position, finish.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

std::string take_id(JobDraft& draft, const JointText& text, std::size_t position, NamesSeen& seen) {
  const Word id = text.id.value_or(Word{std::to_string(position), text.place});
  first_of_its_name(draft.diagnostics, seen, id, "joint");
  return id.text;
}

/// True when there is one. Lacking at all levels is said once a weldment.
bool take_base_metal(JobDraft& draft, const JointText& text, const DefaultLevels& levels, Joint& joint,
                     bool& lack_told) {
  const InheritedWord metal = inherited(levels, &JointDefaults::base_metal);
  if (metal.word == nullptr) {
    if (!lack_told)
      refuse_lack(draft, text.place, "the joint has no base metal",
                  "state 'base_metal' for the joint, its weldment or the job");
    lack_told = true;
    return false;
  }
  const auto found = find_base_metal(draft, *metal.word);
  joint.base_metal = found.value_or(0);
  return found.has_value();
}

bool take_position(JobDraft& draft, const DefaultLevels& levels, Joint& joint) {
  const InheritedWord position = inherited(levels, &JointDefaults::position);
  if (position.word == nullptr) {
    joint.position = joint.weld == WeldKind::fillet ? "PB" : "PA";
    assume(draft, joint.weld == WeldKind::fillet ? "position PB where a fillet states none"
                                                 : "position PA where a butt or edge weld states none");
    return true;
  }
  joint.position = position_code(position.word->text, joint.weld);
  if (joint.position.empty() && draft.refused.insert(position.word->place).second)
    draft.diagnostics.error(
        position.word->place,
        fmt::format("unknown position '{}' of a weld of kind {}", position.word->text, weld_word(joint.weld)),
        "write it as in ISO 6947 (PA, PB ...) or AWS (2F for fillets, 3G for grooves ...)");
  return !joint.position.empty();
}

void take_finish(JobDraft& draft, const JointText& text, const DefaultLevels& levels, Joint& joint) {
  if (const InheritedWord finish = inherited(levels, &JointDefaults::finish); finish.word != nullptr) {
    joint.finish = find_in_book(draft, draft.book.finishes, &Finish::name, *finish.word, "finish").value_or(0);
  } else if (draft.book.prices.finish) {
    joint.finish = *draft.book.prices.finish;
    assume(draft, fmt::format("finish {} where a joint states none, from the rate book",
                              draft.book.finishes[joint.finish].name));
  } else {
    refuse_lack(draft, text.place, "the joint has no finish",
                "state 'finish' here, or in the rate book's prices for all joints");
  }
}

void take_purge(JobDraft& draft, const JointText& text, Joint& joint) {
  joint.purge = text.purge && text.purge->value;
  const Allowances& allowances = draft.book.allowances;
  if (joint.purge && !(given(allowances.purge_per_joint) && given(allowances.purge_flow) && allowances.purge_gas))
    draft.diagnostics.error(text.purge->place, "the rate book does not say what purging takes",
                            "add purge_per_joint, purge_flow and purge_gas to its allowances");
}

}  // namespace

void resolve_joints(JobDraft& draft, const WeldmentText& weldment_text, const JointDefaults& of_job,
                    std::size_t weldment) {
  NamesSeen seen;
  bool lack_of_metal_told = false;
  std::size_t position = 0;
  for (const JointText& text : weldment_text.joints) {
    const DefaultLevels levels{&text.defaults, &weldment_text.defaults, &of_job};
    take_range(draft, levels);
    Joint joint;
    joint.id = take_id(draft, text, ++position, seen);
    joint.mark = text_of(text.mark);
    joint.place = text.place;
    joint.weldment = weldment;
    const bool metal_found = take_base_metal(draft, text, levels, joint, lack_of_metal_told);
    take_finish(draft, text, levels, joint);
    take_purge(draft, text, joint);
    joint.lap = text.lap && text.lap->value;
    bool complete = false;
    if (const auto weld = text.weld ? find_weld_kind(draft.diagnostics, *text.weld) : std::nullopt) {
      joint.weld = *weld;
      resolve_sizes(draft, text, joint);
      resolve_preparation(draft, text, joint);
      resolve_backgouge(draft, text, joint);
      resolve_joint_heat(draft, text, levels, joint);
      const bool position_found = take_position(draft, levels, joint);
      const bool sized =
          given(joint.thickness) && (weld != WeldKind::fillet || given(joint.leg) || given(joint.throat));
      complete = metal_found && position_found && sized;
      resolve_passes(draft, text, levels, joint, complete);
    }
    resolve_joint_labour(draft, text, levels, complete, joint);
    resolve_joint_plan(draft, text, levels, joint);
    draft.job.joints.push_back(std::move(joint));
  }
  take_range(draft, {&weldment_text.defaults, &weldment_text.defaults, &of_job});
}

}  // namespace seambook
