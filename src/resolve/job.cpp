#include "resolve/job.hpp"

#include <fmt/format.h>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

std::vector<Place> job_entry_places(const JobText& text) {
  std::vector<Place> places{text.place};
  for (const WeldmentText& weldment : text.weldments) {
    places.push_back(weldment.place);
    for (const JointText& joint : weldment.joints) places.push_back(joint.place);
  }
  return places;
}

void take_heading(JobDraft& draft, const JobText& text) {
  Job& job = draft.job;
  job.name = text_of(text.job);
  job.title = text_of(text.title);
  job.revision = text_of(text.revision);
  job.customer = text_of(text.customer);
  job.delivery = text_of(text.delivery);
  job.lead_time = text_of(text.lead_time);
  job.drawings = texts_of(text.drawings);
  job.inclusions = texts_of(text.inclusions);
  job.exclusions = texts_of(text.exclusions);
  job.qualifications = texts_of(text.qualifications);
  if (text.date) job.date = text.date->value;
  if (text.due) job.due = text.due->value;
}

void take_quantities(JobDraft& draft, const JobText& text) {
  NamesSeen seen;
  for (const Whole& quantity : text.quantities)
    if (first_of_its_name(draft.diagnostics, seen, {std::to_string(quantity.value), quantity.place}, "quantity"))
      draft.job.quantities.push_back(quantity.value);
  if (text.quantities.empty()) draft.job.quantities = {1};
  if (text.per_year) draft.job.per_year = stated_count(draft, *text.per_year);
}

/// A weldment without a name takes the job's, with its position when there are several.
Word weldment_name(const JobText& job, std::size_t position) {
  const WeldmentText& text = job.weldments[position];
  if (text.name) return *text.name;
  const std::string name = text_of(job.job);
  return {job.weldments.size() == 1 ? name : fmt::format("{} {}", name, position + 1), text.place};
}

void take_weldments(JobDraft& draft, const JobText& text) {
  NamesSeen seen;
  for (std::size_t i = 0; i < text.weldments.size(); ++i) {
    const Word name = weldment_name(text, i);
    first_of_its_name(draft.diagnostics, seen, name, "weldment");
    Weldment weldment;
    weldment.name = name.text;
    take_range(draft, {&text.weldments[i].defaults, &text.weldments[i].defaults, &text.defaults});
    resolve_weldment(draft, text, text.weldments[i], weldment);
    draft.job.weldments.push_back(std::move(weldment));
  }
}

}  // namespace

std::optional<Job> resolve_job(const JobText& text, const RateBook& book, Diagnostics& diagnostics) {
  JobDraft draft{book, diagnostics, reading_faults(diagnostics, job_entry_places(text), {}), {}, {}};
  take_heading(draft, text);
  take_quantities(draft, text);
  take_range(draft, {&text.defaults, &text.defaults, &text.defaults});
  draft.job.bought = resolve_bought(draft, text.bought);
  take_weldments(draft, text);
  take_range(draft, {&text.defaults, &text.defaults, &text.defaults});
  resolve_job_work(draft, text);
  if (errors_in_files(draft.faults, diagnostics)) return std::nullopt;
  check_welders(draft);
  return std::move(draft.job);
}

}  // namespace seambook
