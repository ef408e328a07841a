// By which procedures a joint is welded: as listed, as named, or chosen from the rate book.
#include <fmt/format.h>

#include <algorithm>
#include <numbers>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Fillets are compared by leg; other welds by the thickness of the thinner member.
Length<> size_to_compare(const Joint& joint) {
  if (joint.weld != WeldKind::fillet) return thinner_member(joint);
  if (given(joint.leg)) return {joint.leg.si.value};
  return {joint.throat.si.value * std::numbers::sqrt2};
}

ChoiceRequest request_for(const JobDraft& draft, const Joint& joint) {
  return {
      joint.weld,           {}, draft.book.base_metals[joint.base_metal].group, joint.position, size_to_compare(joint),
      thinner_member(joint)};
}

/// The process asked for, as ISO 4063 number; empty when none is. Refused once when there is none of that name.
std::string process_asked_for(JobDraft& draft, const InheritedWord& process) {
  if (process.word == nullptr) return {};
  const Word number{process_number(process.word->text), process.word->place};
  if (!number.text.empty()) {
    find_in_book(draft, draft.book.processes, &Process::number, number, "process");
    return number.text;
  }
  find_in_book(draft, draft.book.processes, &Process::number, *process.word, "process");
  return {};
}

/// An estimator may know better than the table, so a procedure named against it is a warning.
void warn_of_misfit(JobDraft& draft, const Joint& joint, std::size_t procedure, Place place, std::string process) {
  ChoiceRequest request = request_for(draft, joint);
  request.process = std::move(process);
  for (std::string& reason : reasons_against(draft.book, draft.book.procedures[procedure], request))
    draft.diagnostics.warning(place, std::move(reason), "it is used all the same, because the job names it");
}

void take_named(JobDraft& draft, const JointText& text, const InheritedWord& named, std::string process, Joint& joint) {
  const auto procedure = find_in_book(draft, draft.book.procedures, &Procedure::name, *named.word, "procedure");
  if (!procedure) return;
  PassGroup group{*procedure, std::nullopt};
  if (text.pass_count) group.count = stated_count(draft, *text.pass_count);
  joint.passes.push_back(group);
  warn_of_misfit(draft, joint, *procedure, named.level == joint_level ? named.word->place : text.place,
                 std::move(process));
}

void take_listed(JobDraft& draft, const JointText& text, const std::string& process, Joint& joint) {
  if (text.defaults.procedure)
    draft.diagnostics.error(text.defaults.procedure->place,
                            "the joint names a procedure and lists its passes: choose one");
  for (const PassText& pass : text.passes) {
    if (pass.procedure.text.empty()) continue;  // reading has refused it
    const auto procedure = find_in_book(draft, draft.book.procedures, &Procedure::name, pass.procedure, "procedure");
    if (!procedure) continue;
    joint.passes.push_back({*procedure, count_or_one(draft, pass.count, pass.place)});
    warn_of_misfit(draft, joint, *procedure, pass.procedure.place, process);
  }
}

std::string asked_in_words(const ChoiceRequest& request) {
  std::string text = std::string(weld_word(request.weld));
  if (request.weld == WeldKind::fillet) text += " of leg " + shown(request.size, unit::mm);
  text += fmt::format(", thickness {}, position {}, base-metal group {}", shown(request.thinner, unit::mm),
                      request.position, request.group);
  if (!request.process.empty()) text += ", process " + request.process;
  return text;
}

void choose(JobDraft& draft, const JointText& text, std::string process, Joint& joint) {
  ChoiceRequest request = request_for(draft, joint);
  if (request.size.si <= 0 || misread(draft.faults, text.place)) return;
  request.process = std::move(process);
  const ChoiceResult result = choose_procedure(draft.book, request);
  if (!result.procedure)
    return draft.diagnostics.error(text.place, "no procedure fits " + asked_in_words(request), result.words);
  PassGroup group{*result.procedure, std::nullopt};
  if (text.pass_count) group.count = stated_count(draft, *text.pass_count);
  joint.passes.push_back(group);
  joint.choice = {true, result.words};
  for (const Known<dim::length>& size : {joint.leg, joint.throat, joint.thickness, joint.thickness_second})
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

}  // namespace

void resolve_passes(JobDraft& draft, const JointText& text, const DefaultLevels& levels, Joint& joint) {
  const InheritedWord named = inherited(levels, &JointDefaults::procedure);
  const InheritedWord asked = inherited(levels, &JointDefaults::process);
  const std::string process = process_asked_for(draft, asked);
  if (!text.passes.empty()) {
    take_listed(draft, text, asked.level == joint_level ? process : "", joint);
  } else if (named.word != nullptr) {
    // A procedure named nearer to the joint than the process overrides it in silence.
    take_named(draft, text, named, asked.level <= named.level ? process : "", joint);
  } else if (asked.word == nullptr || !draft.refused.contains(asked.word->place)) {
    choose(draft, text, process, joint);
  }
  freeze_for_tacks(draft, joint);
}

}  // namespace seambook
