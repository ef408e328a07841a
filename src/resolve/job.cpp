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

std::string text_or_nothing(const std::optional<Word>& word) { return word ? word->text : ""; }

std::vector<std::string> plain_texts(const std::vector<Word>& words) {
  std::vector<std::string> texts;
  for (const Word& word : words) texts.push_back(word.text);
  return texts;
}

void take_heading(JobDraft& draft, const JobText& text) {
  Job& job = draft.job;
  if (!text.job) refuse_lack(draft, text.place, "the job has no name", "add for example 'job: bracket'");
  job.name = text_or_nothing(text.job);
  job.title = text_or_nothing(text.title);
  job.revision = text_or_nothing(text.revision);
  job.customer = text_or_nothing(text.customer);
  job.delivery = text_or_nothing(text.delivery);
  job.lead_time = text_or_nothing(text.lead_time);
  job.drawings = plain_texts(text.drawings);
  job.inclusions = plain_texts(text.inclusions);
  job.exclusions = plain_texts(text.exclusions);
  job.qualifications = plain_texts(text.qualifications);
  if (text.date) job.date = text.date->value;
  if (text.due) job.due = text.due->value;
}

void take_quantities(JobDraft& draft, const JobText& text) {
  NamesSeen seen;
  for (const Whole& quantity : text.quantities) {
    if (quantity.value < 1) {
      draft.diagnostics.error(quantity.place, "a quantity must be 1 or more");
    } else if (first_of_its_name(draft.diagnostics, seen, {std::to_string(quantity.value), quantity.place},
                                 "quantity")) {
      draft.job.quantities.push_back(quantity.value);
    }
  }
  if (text.quantities.empty()) draft.job.quantities = {1};
}

/// A weldment without a name takes the job's, with its position when there are several.
Word weldment_name(const JobText& job, std::size_t position) {
  const WeldmentText& text = job.weldments[position];
  if (text.name) return *text.name;
  const std::string name = text_or_nothing(job.job);
  return {job.weldments.size() == 1 ? name : fmt::format("{} {}", name, position + 1), text.place};
}

void take_weldments(JobDraft& draft, const JobText& text) {
  NamesSeen seen;
  for (std::size_t i = 0; i < text.weldments.size(); ++i) {
    const Word name = weldment_name(text, i);
    first_of_its_name(draft.diagnostics, seen, name, "weldment");
    Weldment weldment;
    weldment.name = name.text;
    resolve_weldment(draft, text, text.weldments[i], weldment);
    draft.job.weldments.push_back(std::move(weldment));
  }
  if (text.weldments.empty())
    refuse_lack(draft, text.place, "the job has no weldments", "add 'weldments' with at least one joint");
}

}  // namespace

std::optional<Job> resolve_job(const JobText& text, const RateBook& book, Diagnostics& diagnostics) {
  JobDraft draft{book, diagnostics, reading_faults(diagnostics, job_entry_places(text), {}), {}, {}};
  take_heading(draft, text);
  take_quantities(draft, text);
  draft.job.bought = resolve_bought(draft, text.bought);
  take_weldments(draft, text);
  check_welders(draft);
  if (errors_in_files(draft.faults, diagnostics)) return std::nullopt;
  return std::move(draft.job);
}

}  // namespace seambook
