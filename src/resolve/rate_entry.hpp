// An entry of the rate book while it is resolved: what its numbers are called, what they rest on, where it stands.
// Every number taken from it becomes a row of RateBook::sources. Reading has refused entries without the keys that all
// need and ranges that run backwards; a draft made of such entries only serves to find more faults.
#pragma once

#include <initializer_list>
#include <utility>

#include "resolve/faults.hpp"
#include "resolve/names.hpp"
#include "resolve/rate_book.hpp"

namespace seambook {

/// The book so far, and where its faults go.
struct RateDraft {
  RateBook book;
  Diagnostics& diagnostics;
  ReadingFaults faults;
};

struct RateEntry {
  RateDraft& draft;
  std::string name;  // `procedure CG-F5`
  Place place;
  const Evidence& evidence;
};

/// A number of the rate book where it was written.
struct RateNumber {
  double value = 0;  // SI
  Place place;
  std::string_view key;
  bool frozen = false;
};
SourceId add_rate_source(RateEntry&, std::string_view field, const RateNumber&, const Unit&);
/// The numbers are what the shop has decided: they are never in doubt.
void decided(RateDraft&, std::initializer_list<SourceId>);
/// `base metal S235 has no density`, at the entry; silent when the entry was misread.
void refuse_missing(RateEntry&, std::string_view field, std::string hint = {});
/// Something that every rate book must say; silent when whole sections were lost in reading.
void refuse_book_without(RateDraft&, const RateText&, std::string_view what, std::string hint);
/// Prices in another currency than the book's.
void check_currency(RateEntry&, std::string_view currency, Place);
/// `efficiency is 120 %; it must be more than 0 % and at most 100 %`.
void check_limits(RateEntry&, std::string_view field, double value, const Unit&, Place, const Limits&);

enum class Effect : std::uint8_t { live, frozen };

/// Absent: zero without a source.
template <Dim D>
Known<D> known(RateEntry& entry, const Maybe<D>& written, std::string_view field, const Unit& unit,
               Effect effect = Effect::live) {
  if (!written) return {};
  if constexpr (D.money != 0) check_currency(entry, written->currency, written->place);
  const SourceId source =
      add_rate_source(entry, field, {written->value.si, written->place, written->key, effect == Effect::frozen}, unit);
  return {Sourced{written->value.si, source}};
}

template <Dim D>
Known<D> needed(RateEntry& entry, const Maybe<D>& written, std::string_view field, const Unit& unit,
                Effect effect = Effect::live) {
  if (!written) refuse_missing(entry, field);
  return known(entry, written, field, unit, effect);
}

/// What the sheet admits for a number: the same as here.
void set_limits(RateEntry&, SourceId, const Limits&);

Known<dim::ratio> needed_within(RateEntry&, const Maybe<dim::ratio>&, std::string_view field, const Limits&);
Known<dim::ratio> known_within(RateEntry&, const Maybe<dim::ratio>&, std::string_view field, const Limits&);

inline constexpr Limits efficiency_limits{0, 1, true, false};

/// Takes the entry's name when it has one; refuses names that stood before in this section.
std::string take_name(RateDraft&, NamesSeen&, const std::optional<Word>&, std::string_view kind);
/// `none` is how an author says that a procedure takes no filler or gas.
bool says_none(const std::optional<Word>&);

/// The labour grade named, as an index into RateBook::labour.
std::size_t find_grade(RateDraft&, const std::optional<Word>&);

/// Shifts of the calendar by their names.
std::vector<std::size_t> find_shifts(RateDraft&, const std::vector<Word>&);

/// Composition and carbon equivalents of a base metal of this group.
Hardening hardening_of(RateEntry&, const BaseMetalText&, std::string_view group);

/// Minutes that stand in the book though the operating factor covers what they are for.
void refuse_twice_charged(RateEntry&, std::string_view what, Place);
/// A number that the labour method by elements needs; where the operating factor covers it, it must not stand.
template <Dim D>
Known<D> needed_unless_covered(RateEntry& entry, const Maybe<D>& written, std::string_view field, const Unit& unit,
                               WorkKind kind) {
  if (!entry.draft.book.method.covered(kind)) return needed(entry, written, field, unit);
  if (written && written->value.si > 0) refuse_twice_charged(entry, field, written->place);
  return {};
}
Known<dim::ratio> operating_factor_of(RateEntry&, const Maybe<dim::ratio>&);
Known<dim::ratio> personal_allowance_of(RateEntry&, const Maybe<dim::ratio>&);

// The sections of the book, each in a file by topic. Later ones refer to earlier ones, in the order of this list.
void resolve_currency(RateDraft&, const RateText&);
void resolve_ranges(RateDraft&, const RateText&);
void resolve_labour(RateDraft&, const RateText&);
void resolve_labour_method(RateDraft&, const RateText&);
void resolve_labour_elements(RateDraft&, const RateText&);
void resolve_job_elements(RateDraft&, const RateText&);
void resolve_overhead(RateDraft&, const RateText&);
void resolve_gases(RateDraft&, const RateText&);
void resolve_fluxes(RateDraft&, const RateText&);
void resolve_allowances(RateDraft&, const RateText&);
void resolve_handling(RateDraft&, const RateText&);
void resolve_processes(RateDraft&, const RateText&);
void resolve_base_metals(RateDraft&, const RateText&);
void resolve_fillers(RateDraft&, const RateText&);
void resolve_wear_parts(RateDraft&, const RateText&);
void resolve_pass_limits(RateDraft&, const RateText&);
void resolve_gouging(RateDraft&, const RateText&);
void resolve_preheating(RateDraft&, const RateText&);
void resolve_finishes(RateDraft&, const RateText&);
void resolve_prices(RateDraft&, const RateText&);
/// Risk classes, learning, freight.
void resolve_price_policy(RateDraft&, const RateText&);
void resolve_checks(RateDraft&, const RateText&);
void resolve_preparations(RateDraft&, const RateText&);
void resolve_procedures(RateDraft&, const RateText&);
/// Shifts, closed days, and how long a qualification lives without use.
void resolve_calendar(RateDraft&, const RateText&);
void resolve_stations(RateDraft&, const RateText&);
void resolve_change_tasks(RateDraft&, const RateText&);
void resolve_welders(RateDraft&, const RateText&);
void resolve_investment(RateDraft&, const RateText&);
/// After all else, so that its number moves no other.
void resolve_overtime(RateDraft&, const RateText&);

}  // namespace seambook
