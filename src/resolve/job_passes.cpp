// By which procedures a joint is welded: as listed, as named, or chosen from the rate book.
#include <fmt/format.h>

#include <algorithm>
#include <numbers>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"
#include "resolve/trade_names.hpp"

namespace seambook {
namespace {

/// The process asked for, as ISO 4063 number; empty when none is, or when there is none of that name.
std::string process_asked_for(JobDraft& draft, const InheritedWord& process) {
  if (process.word == nullptr || draft.refused.contains(process.word->place)) return {};
  const auto found = find_process(draft.diagnostics, draft.book.processes, *process.word);
  if (!found) draft.refused.insert(process.word->place);
  return found ? draft.book.processes[*found].number : "";
}

/// An estimator may know better than the table, so a procedure named against it is a warning.
void warn_of_misfit(JobDraft& draft, const Joint& joint, std::size_t procedure, Place place,
                    const std::string& process) {
  ChoiceRequest request = request_for(draft.book, joint);
  request.process = process;
  for (std::string& reason : reasons_against(draft.book, draft.book.procedures[procedure], request))
    draft.diagnostics.warning(place, std::move(reason), "it is used all the same, because the job names it");
}

void take_named(JobDraft& draft, const JointText& text, const Word& name, Joint& joint) {
  const auto procedure = find_in_book(draft, draft.book.procedures, &Procedure::name, name, "procedure");
  if (!procedure) return;
  PassGroup group{*procedure, std::nullopt};
  if (text.pass_count) group.count = stated_count(draft, *text.pass_count);
  joint.passes.push_back(group);
}

/// One pass where none are counted, but for a fill, and for a back that fills what was gouged.
PassGroup listed_group(JobDraft& draft, const PassText& text, std::size_t procedure, const Joint& joint) {
  PassGroup group{procedure, std::nullopt, text.role.value_or(PassRole::fill)};
  const bool computed = group.role == PassRole::fill || (group.role == PassRole::back && given(joint.gouge_depth));
  const bool lays = draft.book.procedures[procedure].filler.has_value();
  if (text.count || !computed || !lays) group.count = count_or_one(draft, text.count, text.place, "count");
  return group;
}

void refuse_second_to_compute(JobDraft& draft, const PassText& text, const PassGroup& group, const Joint& joint) {
  if (group.count) return;
  for (const PassGroup& earlier : joint.passes) {
    if (earlier.count || earlier.role != group.role) continue;
    return draft.diagnostics.error(
        text.place, fmt::format("the passes of two {} groups are left to be computed", role_word(group.role)),
        fmt::format("state 'count' for every {} group but one", role_word(group.role)));
  }
}

void take_listed(JobDraft& draft, const JointText& text, Joint& joint) {
  if (text.defaults.procedure)
    draft.diagnostics.error(text.defaults.procedure->place,
                            "the joint names a procedure and lists its passes: choose one");
  for (const PassText& pass : text.passes) {
    if (pass.procedure.text.empty()) continue;  // reading has refused it
    const auto procedure = find_in_book(draft, draft.book.procedures, &Procedure::name, pass.procedure, "procedure");
    if (!procedure) continue;
    const PassGroup group = listed_group(draft, pass, *procedure, joint);
    refuse_second_to_compute(draft, pass, group, joint);
    joint.passes.push_back(group);
  }
}

std::string asked_in_words(const ChoiceRequest& request, Terms terms) {
  std::string text = std::string(weld_word(request.weld));
  if (request.weld == WeldKind::fillet) text += " of leg " + shown(request.size, unit::mm, terms);
  text += fmt::format(", thickness {}, position {}, base-metal group {}", shown(request.thinner, unit::mm, terms),
                      request.position, request.group);
  if (!request.process.empty()) text += ", process " + request.process;
  return text;
}

void choose(JobDraft& draft, const JointText& text, const std::string& process, Joint& joint) {
  ChoiceRequest request = request_for(draft.book, joint);
  if (misread(draft.faults, text.place)) return;
  request.process = process;
  const ChoiceResult result = choose_procedure(draft.book, request);
  if (!result.procedure)
    return draft.diagnostics.error(text.place, "no procedure fits " + asked_in_words(request, draft.book.terms),
                                   result.words);
  PassGroup group{*result.procedure, std::nullopt};
  if (text.pass_count) group.count = stated_count(draft, *text.pass_count);
  joint.passes.push_back(group);
  joint.choice = {true, result.words};
  for (const Known<dim::length>& size :
       {joint.leg, joint.fillet.leg_second, joint.throat, joint.thickness, joint.thickness_second})
    freeze(draft, size.si);
}

/// Where thin members get their tacks closer together, another thickness may ask for another pitch.
void freeze_for_tacks(JobDraft& draft, const Joint& joint) {
  for (const PassGroup& pass : joint.passes) {
    const Process& process = draft.book.processes[draft.book.procedures[pass.procedure].process];
    if (process.tack_pitch.si.source == process.tack_pitch_thin.si.source) continue;
    freeze(draft, joint.thickness.si);
    freeze(draft, joint.thickness_second.si);
  }
}

/// A filler needs a place to go: a square seam or an edge with neither gap nor cap takes no weld metal. Where the gap
/// alone takes it, the sheet admits no gap of nothing either.
void refuse_nothing_to_lay(JobDraft& draft, const JointText& text, const Joint& joint) {
  const bool flat = joint.weld == WeldKind::square || joint.weld == WeldKind::edge;
  const bool cap = joint.excess_height.si.value > 0 && (!given(joint.excess_width) || joint.excess_width.si.value > 0);
  const bool back_cap = given(joint.groove.back_height);
  if (!flat || cap || back_cap || given(joint.gouge_depth)) return;
  const auto lays = [&](const PassGroup& pass) { return draft.book.procedures[pass.procedure].filler.has_value(); };
  if (std::any_of(joint.passes.begin(), joint.passes.end(), lays)) set_limits(draft, joint.gap.si, {0, 1, true, false});
  if (joint.gap.si.value > 0) return;
  for (const PassGroup& pass : joint.passes) {
    const Procedure& procedure = draft.book.procedures[pass.procedure];
    if (!procedure.filler) continue;
    draft.diagnostics.error(text.place,
                            fmt::format("no weld metal fits this joint, but procedure {} has a filler", procedure.name),
                            "state a gap or an excess, or a procedure without filler");
    return;
  }
}

/// The procedures that the job wants to see beside the joint's own.
void take_alternatives(JobDraft& draft, const JointText& text, Joint& joint) {
  for (const Word& word : text.alternatives) {
    const auto found = find_in_book(draft, draft.book.procedures, &Procedure::name, word, "procedure");
    if (found) joint.alternatives.push_back(*found);
  }
}

}  // namespace

/// Fillets are compared by their larger leg; other welds by the depth that is welded, which is the thickness of the
/// thinner member unless less is stated.
Length<> size_to_compare(const Joint& joint) {
  if (given(joint.groove.depth)) return {joint.groove.depth.si.value + joint.groove.depth_second.si.value};
  if (joint.weld != WeldKind::fillet) return thinner_member(joint);
  if (given(joint.leg)) return {std::max(joint.leg.si.value, joint.fillet.leg_second.si.value)};
  return {joint.throat.si.value * std::numbers::sqrt2};
}

ChoiceRequest request_for(const RateBook& book, const Joint& joint) {
  return {joint.weld,           {}, book.base_metals[joint.base_metal].group, joint.position, size_to_compare(joint),
          thinner_member(joint)};
}

void resolve_passes(JobDraft& draft, const JointText& text, const DefaultLevels& levels, Joint& joint, bool complete) {
  const InheritedWord named = inherited(levels, &JointDefaults::procedure);
  const InheritedWord asked = inherited(levels, &JointDefaults::process);
  const std::string process = process_asked_for(draft, asked);
  const bool process_refused = asked.word != nullptr && process.empty();
  if (!text.passes.empty()) {
    take_listed(draft, text, joint);
  } else if (named.word != nullptr) {
    take_named(draft, text, *named.word, joint);
  } else if (complete && !process_refused) {
    choose(draft, text, process, joint);
  }
  take_alternatives(draft, text, joint);
  freeze_for_tacks(draft, joint);
  if (complete) refuse_nothing_to_lay(draft, text, joint);
  if (!complete || joint.choice.made_by_program) return;
  // A procedure named nearer to the joint than the process overrides it in silence.
  const std::size_t level = text.passes.empty() ? named.level : joint_level;
  for (const PassGroup& pass : joint.passes)
    warn_of_misfit(draft, joint, pass.procedure, text.place, asked.level <= level ? process : "");
}

}  // namespace seambook
