// What a job and its joints say to the planner.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

/// Fit-up and root by the words in which a shop names such points; else the joint is complete.
HoldAt place_in_words(std::string_view what) {
  std::string low(what);
  std::transform(low.begin(), low.end(), low.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  for (const std::string_view fit_up : {"fit-up", "fit_up", "fit up"})
    if (low.find(fit_up) != low.npos) return HoldAt::fit_up;
  return low.find("root") != low.npos ? HoldAt::root : HoldAt::complete;
}

Hold resolve_hold(const HoldText& text) {
  constexpr std::size_t witness = 1;  // of hold_kinds
  Hold hold;
  hold.what = text_of(text.what);
  hold.at = text.at ? static_cast<HoldAt>(text.at->at) : place_in_words(hold.what);
  hold.witness = text.kind && text.kind->at == witness;
  return hold;
}

Pin resolve_pin(JobDraft& draft, const PinText& text) {
  Pin pin;
  if (text.station)
    pin.station = find_name(draft.diagnostics, draft.book.stations, &Station::name, *text.station, "station");
  if (text.welder)
    pin.welder = find_name(draft.diagnostics, draft.book.welders, &Welder::stamp, *text.welder, "welder");
  if (text.start) pin.start = text.start->value;
  return pin;
}

}  // namespace

std::optional<Moment> ready_from(const ReadinessText& text) {
  if (!text.ready) return std::nullopt;
  return Moment{text.ready->date, text.ready->at.value_or(std::chrono::minutes(0))};
}

std::optional<std::string> words_of(const std::optional<Word>& word) {
  return word ? std::optional(word->text) : std::nullopt;
}

void resolve_joint_plan(JobDraft& draft, const JointText& text, const DefaultLevels& levels, Joint& joint) {
  const JointPlanText& written = text.plan;
  JointPlanning& plan = joint.plan;
  plan.holds.reserve(written.holds.size());
  for (const HoldText& hold : written.holds) plan.holds.push_back(resolve_hold(hold));
  if (written.pinned) plan.pinned = resolve_pin(draft, *written.pinned);
  plan.ready = ready_from(written.readiness);
  plan.blocked = words_of(written.readiness.blocked);
  for (const JointDefaults* level : levels) {
    if (!level->qualified) continue;
    plan.qualified = level->qualified->value;
    break;
  }
  if (!written.tube) return;
  plan.tube = written.tube->value;
  if (text.outside_diameter)
    draft.diagnostics.error(written.tube->place, "'outside_diameter' says already that it is a tube",
                            "'tube' is for joints that state a length");
}

void resolve_job_plan(JobDraft& draft, const JobText& text) {
  JobPlanning& plan = draft.job.plan;
  if (text.due) plan.due_at = text.due->at;
  if (text.plan.late_weight) plan.late_weight = text.plan.late_weight->value.si;
  NamesSeen seen;
  for (const Word& word : text.plan.after_jobs) {
    if (word.text == draft.job.name) draft.diagnostics.error(word.place, "a job cannot wait for itself");
    if (first_of_its_name(draft.diagnostics, seen, word, "job")) plan.after_jobs.push_back(word.text);
  }
  plan.ready = ready_from(text.plan.readiness);
  plan.blocked = words_of(text.plan.readiness.blocked);
}

}  // namespace seambook
