// By which method floor time is found. An operating factor states what it covers; what it covers is charged by it
// alone, what it does not cover must be stated in minutes.
#include <fmt/format.h>

#include <algorithm>

#include "resolve/rate_entry.hpp"

namespace seambook {
namespace {

/// True when the word was found in one of the lists of what there is to cover.
bool cover(LabourMethod& method, const std::string& word) {
  const auto* work = std::find(std::begin(work_words), std::end(work_words), word);
  if (work != std::end(work_words)) {
    method.work.set(static_cast<std::size_t>(work - std::begin(work_words)));
    return true;
  }
  const auto* element = std::find(std::begin(element_words), std::end(element_words), word);
  if (element == std::end(element_words)) return false;
  method.elements.set(static_cast<std::size_t>(element - std::begin(element_words)));
  return true;
}

void resolve_factor(RateDraft& draft, const RateText& text) {
  LabourMethod& method = draft.book.method;
  std::vector<std::string> words;
  for (const Word& word : text.factor_covers) {
    if (!cover(method, word.text)) {
      std::vector<std::string_view> known(std::begin(work_words), std::end(work_words));
      known.insert(known.end(), std::begin(element_words), std::end(element_words));
      refuse_unknown(draft.diagnostics, word, "labour element", known);
      continue;
    }
    words.push_back(word.text);
    std::replace(words.back().begin(), words.back().end(), '_', ' ');
  }
  method.covers = joined_with_and(words);
  method.definition = text_of(text.factor_definition);
  const Place place = text.labour_method->place;
  if (!method.covered(WorkKind::arc))
    draft.diagnostics.error(text.factor_covers.empty() ? place : text.factor_covers.front().place,
                            "the operating factor does not say that it covers the arc",
                            "add for example 'factor_covers: [arc, starts, interpass_cleaning, tacking]'");
  if (!text.factor_definition)
    draft.diagnostics.error(place, "the operating factor is not defined",
                            "add 'factor_definition': of what time arc time is which share, in words");
  method.work.set(static_cast<std::size_t>(WorkKind::arc));
}

}  // namespace

void resolve_labour_method(RateDraft& draft, const RateText& text) {
  draft.book.method.by_factor = text.labour_method && text.labour_method->at == 1;
  if (draft.book.method.by_factor) return resolve_factor(draft, text);
  const std::string hint = "state 'labour_method: operating_factor', or leave it out";
  if (!text.factor_covers.empty())
    draft.diagnostics.error(text.factor_covers.front().place,
                            "labour is by elements, yet it is said what an operating factor covers", hint);
  if (text.factor_definition)
    draft.diagnostics.error(text.factor_definition->place, "labour is by elements, yet an operating factor is defined",
                            hint);
}

Known<dim::ratio> operating_factor_of(RateEntry& entry, const Maybe<dim::ratio>& written) {
  if (!entry.draft.book.method.by_factor) {
    if (written)
      entry.draft.diagnostics.error(written->place, entry.name + " has an operating factor, but labour is by elements",
                                    "state 'labour_method: operating_factor', or leave it out");
    return {};
  }
  if (!written)
    refuse_missing(entry, "operating factor", "the labour method needs it: arc time as a share of floor time, 35 %");
  return known_within(entry, written, "operating factor", efficiency_limits);
}

Known<dim::ratio> personal_allowance_of(RateEntry& entry, const Maybe<dim::ratio>& written) {
  if (!entry.draft.book.method.by_factor) return needed(entry, written, "personal", unit::percent);
  if (written && written->value.si > 0)
    entry.draft.diagnostics.error(
        written->place, "a personal allowance is stated, but the operating factor covers rest and delays",
        "it would be charged twice: leave 'personal' out, or state 'labour_method: elements'");
  return {};
}

}  // namespace seambook
