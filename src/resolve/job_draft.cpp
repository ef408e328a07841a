#include "resolve/job_draft.hpp"

#include <algorithm>

#include "resolve/shown.hpp"

namespace seambook {

InheritedWord inherited(const DefaultLevels& levels, std::optional<Word> JointDefaults::*member) {
  for (std::size_t level = 0; level < levels.size(); ++level)
    if (const std::optional<Word>& word = levels[level]->*member) return {&*word, level};
  return {};
}

void take_range(JobDraft& draft, const DefaultLevels& levels) {
  draft.range = 0;
  for (const JointDefaults* level : levels) {
    if (!level->range) continue;
    draft.range = level->range->value.si;
    return;
  }
}

Sourced add_job_source(JobDraft& draft, double value, Place place, std::string_view key) {
  JobSource source;
  source.place = place;
  source.key = key;
  source.value = value;
  draft.job.sources.push_back(source);
  return {value, first_job_source + static_cast<SourceId>(draft.job.sources.size() - 1)};
}

void freeze(JobDraft& draft, const Sourced& number) {
  if (number.source >= first_job_source) draft.job.sources[number.source - first_job_source].frozen = true;
}

void set_limits(JobDraft& draft, const Sourced& number, const Limits& limits) {
  if (number.source >= first_job_source) draft.job.sources[number.source - first_job_source].limits = limits;
}

Place place_of(const JobDraft& draft, const Sourced& number) {
  if (number.source >= first_job_source) return draft.job.sources[number.source - first_job_source].place;
  return draft.book.sources[number.source].place;
}

std::string length_shown(const JobDraft& draft, double si) { return shown(si, unit::mm, draft.book.terms); }

void assume(JobDraft& draft, std::string words) {
  std::vector<std::string>& assumptions = draft.job.assumptions;
  if (std::find(assumptions.begin(), assumptions.end(), words) == assumptions.end())
    assumptions.push_back(std::move(words));
}

void refuse_lack(JobDraft& draft, Place entry, std::string message, std::string hint) {
  if (!misread(draft.faults, entry)) draft.diagnostics.error(entry, std::move(message), std::move(hint));
}

Known<dim::ratio> stated_count(JobDraft& draft, const Whole& whole) {
  return {add_job_source(draft, static_cast<double>(whole.value), whole.place, whole.key)};
}

Known<dim::ratio> count_or_one(JobDraft& draft, const std::optional<Whole>& whole, Place place, std::string_view key) {
  return stated_count(draft, whole.value_or(Whole{1, place, key}));
}

std::optional<std::size_t> find_base_metal(JobDraft& draft, const Word& word) {
  const std::vector<BaseMetal>& metals = draft.book.base_metals;
  for (std::size_t i = 0; i < metals.size(); ++i)
    if (std::find(metals[i].also.begin(), metals[i].also.end(), word.text) != metals[i].also.end()) return i;
  return find_in_book(draft, metals, &BaseMetal::name, word, "base metal");
}

Place place_to_blame(const JobDraft& draft, const Joint& joint, const Sourced& number) {
  return number.source >= first_job_source ? place_of(draft, number) : joint.place;
}

Length<> thinner_member(const Joint& joint) {
  return {std::min(joint.thickness.si.value, joint.thickness_second.si.value)};
}

}  // namespace seambook
