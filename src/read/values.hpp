// One value of a tree as the kind its field asks for. A value that does not fit gives nothing; the complaint, with the
// field's key and the value's place, is in the diagnostics then. Take-offs are read by the same functions.
#pragma once

#include "read/field_info.hpp"
#include "read/written.hpp"
#include "text/tree.hpp"

namespace seambook {

/// A file while it is read: where its faults go, and the units that it states for bare numbers.
struct Reading {
  Diagnostics& diagnostics;
  DefaultUnits units;
  std::string_view told_missing = {};  // the key whose lack was told of once for all rows of a table
};

/// `'leg': unknown unit 'mn'; did you mean 'mm'?`
void refuse_value(Reading&, Place, const FieldInfo&, const std::string& problem, std::string hint);
/// `'leg' must be a length, not a list`; the hint says what the field is.
void refuse_kind(Reading&, Value, const FieldInfo&);
/// Complains of a kind other than `kind`, and of a list or map with nothing in it.
bool expect_kind(Reading&, Value, const FieldInfo&, Kind kind);
void refuse_unknown_key(Reading&, Value key, std::span<const std::string_view> known);
/// The same for the heading of a column.
void refuse_unknown_heading(Reading&, Place, std::string_view word, std::span<const std::string_view> known);
void refuse_missing_key(Reading&, Place section, const FieldInfo&);
void refuse_second(Reading&, Place, const FieldInfo&, Place first);
void refuse_nothing(Reading&, Place, std::string_view key);
/// The entries of a list that has some; complains of those with nothing in them, and leaves them out.
std::vector<Value> entries_of(Reading&, Value list, const FieldInfo&);
/// The field's description for one entry of its list.
FieldInfo one_of(const FieldInfo& list, Shape entry);

std::optional<Word> word_at(Reading&, Value, const FieldInfo&);
std::optional<Whole> whole_at(Reading&, Value, const FieldInfo&);
std::optional<Flag> flag_at(Reading&, Value, const FieldInfo&);
std::optional<WrittenDate> date_at(Reading&, Value, const FieldInfo&);
std::optional<WrittenClock> clock_at(Reading&, Value, const FieldInfo&);
/// A date, with or without a time of it; `moment_at` refuses one without.
std::optional<WrittenDay> day_at(Reading&, Value, const FieldInfo&);
std::optional<WrittenMoment> moment_at(Reading&, Value, const FieldInfo&);
/// The position of the word among the field's choices.
std::optional<std::size_t> choice_at(Reading&, Value, const FieldInfo&);
/// An amount of the field's dimension. `text` is the value's text or what is left of it.
std::optional<Amount> amount_of(Reading&, std::string_view text, Place, const FieldInfo&);

template <Dim D>
Maybe<D> written_of(Reading& reading, std::string_view text, Place place, const FieldInfo& info) {
  std::optional<Amount> amount = amount_of(reading, text, place, info);
  if (!amount) return std::nullopt;
  return Written<D>{{amount->si}, place, std::move(amount->unit), std::move(amount->currency), info.key};
}

}  // namespace seambook
