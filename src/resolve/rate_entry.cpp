#include "resolve/rate_entry.hpp"

#include <fmt/format.h>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Of the entry itself, else by what it rests on.
double range_of(const RateDraft& draft, const Evidence& evidence) {
  if (evidence.range) return evidence.range->value.si;
  if (!draft.book.ranges) return 0;
  return (*draft.book.ranges)[static_cast<std::size_t>(evidence.basis.value_or(Basis::assumption))];
}

}  // namespace

SourceId add_rate_source(RateEntry& entry, std::string_view field, const RateNumber& number, const Unit& unit) {
  RateSource source;
  source.entry = entry.name;
  source.field = field;
  source.value = number.value;
  source.unit = unit;
  source.place = number.place;
  source.basis = entry.evidence.basis.value_or(Basis::assumption);
  source.words = text_of(entry.evidence.source);
  source.frozen = number.frozen;
  source.limits.low_open = number.value > 0;
  source.range = range_of(entry.draft, entry.evidence);
  source.key = number.key;
  entry.draft.book.sources.push_back(std::move(source));
  return static_cast<SourceId>(entry.draft.book.sources.size() - 1);
}

void decided(RateDraft& draft, std::initializer_list<SourceId> numbers) {
  for (const SourceId number : numbers) draft.book.sources[number].decided = true;
}

void refuse_missing(RateEntry& entry, std::string_view field, std::string hint) {
  if (misread(entry.draft.faults, entry.place)) return;
  entry.draft.diagnostics.error(entry.place, fmt::format("{} has no {}", entry.name, field), std::move(hint));
}

void refuse_book_without(RateDraft& draft, const RateText& text, std::string_view what, std::string hint) {
  if (sections_lost(draft.faults)) return;
  draft.diagnostics.error(text.place, fmt::format("the rate book {}", what), std::move(hint));
}

void check_currency(RateEntry& entry, std::string_view currency, Place place) {
  const std::string& ours = entry.draft.book.currency;
  if (ours.empty() || currency == ours) return;
  entry.draft.diagnostics.error(place, fmt::format("the rate book's currency is {}, not {}", ours, currency));
}

void check_limits(RateEntry& entry, std::string_view field, double value, const Unit& unit, Place place,
                  const Limits& limits) {
  constexpr double highest_of_all = 1e9;  // no upper end
  const bool low_kept = limits.low_open ? value > limits.low : value >= limits.low;
  const bool high_kept = limits.high_open ? value < limits.high : value <= limits.high;
  if (low_kept && high_kept) return;
  std::string rule =
      fmt::format("it must be {} {}", limits.low_open ? "more than" : "at least", shown(limits.low, unit));
  if (limits.high < highest_of_all)
    rule += fmt::format(" and {} {}", limits.high_open ? "less than" : "at most", shown(limits.high, unit));
  entry.draft.diagnostics.error(place, fmt::format("{} is {}", field, shown(value, unit)), rule);
}

void set_limits(RateEntry& entry, SourceId source, const Limits& limits) {
  if (source != no_source) entry.draft.book.sources[source].limits = limits;
}

Known<dim::ratio> known_within(RateEntry& entry, const Maybe<dim::ratio>& written, std::string_view field,
                               const Limits& limits) {
  if (written) check_limits(entry, field, written->value.si, unit::percent, written->place, limits);
  const Known<dim::ratio> share = known(entry, written, field, unit::percent);
  set_limits(entry, share.si.source, limits);
  return share;
}

Known<dim::ratio> needed_within(RateEntry& entry, const Maybe<dim::ratio>& written, std::string_view field,
                                const Limits& limits) {
  if (!written) refuse_missing(entry, field);
  return known_within(entry, written, field, limits);
}

std::string take_name(RateDraft& draft, NamesSeen& seen, const std::optional<Word>& name, std::string_view kind) {
  if (!name) return {};  // reading has refused it
  first_of_its_name(draft.diagnostics, seen, *name, kind);
  return name->text;
}

bool says_none(const std::optional<Word>& word) { return !word || word->text == "none"; }

std::size_t find_grade(RateDraft& draft, const std::optional<Word>& grade) {
  if (!grade) return 0;
  return find_name(draft.diagnostics, draft.book.labour, &Labour::name, *grade, "labour grade").value_or(0);
}

}  // namespace seambook
