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
  for (const OptionText& option : text.options) places.push_back(option.place);
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
  job.stated_assumptions = texts_of(text.assumptions);
  if (text.date) job.date = text.date->value;
  if (text.due) job.due = text.due->date;
}

void take_quantities(JobDraft& draft, const JobText& text) {
  NamesSeen seen;
  for (const Whole& quantity : text.quantities)
    if (first_of_its_name(draft.diagnostics, seen, {std::to_string(quantity.value), quantity.place}, "quantity"))
      draft.job.quantities.push_back(quantity.value);
  if (text.quantities.empty()) draft.job.quantities = {1};
  if (text.per_year) draft.job.per_year = stated_count(draft, *text.per_year);
}

/// A weldment without a name takes the job's or the option's, with its position when there are several.
Word weldment_name(const Job& part, const PartText& text, std::size_t position) {
  const WeldmentText& weldment = *text.weldments[position];
  if (weldment.name) return *weldment.name;
  const std::string& name = part.of_option.empty() ? part.name : part.of_option;
  return {text.weldments.size() == 1 ? name : fmt::format("{} {}", name, position + 1), weldment.place};
}

/// Weldments, bought lines and work; `seen` holds the names of weldments so far.
void take_contents(JobDraft& draft, const PartText& text, NamesSeen& seen) {
  take_range(draft, {&text.job.defaults, &text.job.defaults, &text.job.defaults});
  draft.job.bought = resolve_bought(draft, text.bought);
  std::size_t joints = 0;
  for (const WeldmentText* weldment : text.weldments) joints += weldment->joints.size();
  draft.job.joints.reserve(joints);
  for (std::size_t i = 0; i < text.weldments.size(); ++i) {
    const Word name = weldment_name(draft.job, text, i);
    first_of_its_name(draft.diagnostics, seen, name, "weldment");
    Weldment weldment;
    weldment.name = name.text;
    take_range(draft, {&text.weldments[i]->defaults, &text.weldments[i]->defaults, &text.job.defaults});
    resolve_weldment(draft, text, *text.weldments[i], weldment);
    draft.job.weldments.push_back(std::move(weldment));
  }
  resolve_weldment_order(draft, text);
  take_range(draft, {&text.job.defaults, &text.job.defaults, &text.job.defaults});
  resolve_job_work(draft, text.one_offs);
}

/// An option's part takes the job's place in the draft while it is resolved.
void take_option(JobDraft& draft, const OptionText& text, const PartText& contents, NamesSeen& seen) {
  Job own = std::move(draft.job);
  draft.job = {};
  draft.job.name = own.name;
  draft.job.of_option = text_of(text.name);
  draft.job.title = "option " + draft.job.of_option;
  draft.job.quantities = own.quantities;
  draft.job.order = own.order;
  draft.job.order.freight.reset();
  draft.job.sources = std::move(own.sources);
  take_contents(draft, contents, seen);
  JobOption option{text_of(text.name), text_of(text.text), std::move(draft.job), resolve_left_out(draft, text, own)};
  own.sources = std::move(option.part.sources);
  own.options.push_back(std::move(option));
  draft.job = std::move(own);
}

/// Options know all numbers of the job.
void share_sources(Job& job) {
  for (JobOption& option : job.options) option.part.sources = job.sources;
}

void check_all_welders(JobDraft& draft) {
  check_welders(draft);
  std::vector<JobOption> options = std::move(draft.job.options);
  for (JobOption& option : options) {
    std::swap(draft.job, option.part);
    check_welders(draft);
    std::swap(draft.job, option.part);
  }
  draft.job.options = std::move(options);
}

}  // namespace

std::optional<Job> resolve_job(const JobText& text, const RateBook& book, Diagnostics& diagnostics) {
  JobDraft draft{book, diagnostics, reading_faults(diagnostics, job_entry_places(text), text.takeoffs), {}, {}};
  take_heading(draft, text);
  take_quantities(draft, text);
  resolve_job_plan(draft, text);
  const JobParts parts = parts_of(draft, text);
  NamesSeen seen;
  take_contents(draft, parts.own, seen);
  resolve_order_policy(draft, parts.own);
  for (std::size_t i = 0; i < text.options.size(); ++i) take_option(draft, text.options[i], parts.options[i], seen);
  if (errors_in_files(draft.faults, diagnostics)) return std::nullopt;
  share_sources(draft.job);
  check_all_welders(draft);
  return std::move(draft.job);
}

}  // namespace seambook
