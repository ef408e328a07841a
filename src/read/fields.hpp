// Reading a map by a table of its fields: which keys there are, which member each fills, which must stand.
// Holds afterwards: every key of the map was known and its value taken or complained of; every required key stood.
// To read a struct S, declare and define the specialisation fields<S>().
#pragma once

#include <array>
#include <type_traits>
#include <utility>

#include "read/job_text.hpp"
#include "read/rate_text.hpp"
#include "read/values.hpp"

namespace seambook {

template <class S>
struct Field {
  FieldInfo info;
  void (*read)(Reading&, Value, const FieldInfo&, S&) = nullptr;
};

/// The table of S.
template <class S>
std::span<const Field<S>> fields();

template <class S>
std::vector<FieldInfo> infos_of() {
  std::vector<FieldInfo> infos;
  for (const Field<S>& field : fields<S>()) infos.push_back(field.info);
  return infos;
}

inline constexpr std::string_view bought_kinds[] = {"base_metal", "cutting", "outside", "other"};  // as BoughtKind
inline constexpr std::string_view pass_roles[] = {"root", "fill", "cap", "back"};                  // as PassRole
inline constexpr std::string_view basis_words[] = {"published", "common practice", "assumption"};  // as Basis

void read_into(Reading&, Value, const FieldInfo&, Word&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<Word>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<Whole>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<Flag>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<WrittenDate>&);
void read_into(Reading&, Value, const FieldInfo&, std::vector<WrittenDate>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<WrittenClock>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<WrittenMoment>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<WrittenDay>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<Chosen>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<Basis>&);
void read_into(Reading&, Value, const FieldInfo&, std::optional<PassRole>&);
void read_into(Reading&, Value, const FieldInfo&, BoughtKind&);
void read_into(Reading&, Value, const FieldInfo&, std::vector<Word>&);
void read_into(Reading&, Value, const FieldInfo&, std::vector<Whole>&);
void read_into(Reading&, Value, const FieldInfo&, std::vector<BoughtText>&);
void read_into(Reading&, Value, const FieldInfo&, std::vector<StationText::Mounted>&);
void read_into(Reading&, Value, const FieldInfo&, std::vector<HoldText>&);

template <Dim D>
void read_into(Reading& reading, Value value, const FieldInfo& info, Maybe<D>& into) {
  if (expect_kind(reading, value, info, Kind::scalar)) into = written_of<D>(reading, value.text(), value.place(), info);
}

template <Dim D>
void read_into(Reading& reading, Value value, const FieldInfo& info, MaybeSpan<D>& into) {
  Maybe<D> low, high;
  const bool one_value = value.kind() == Kind::scalar;
  if (one_value) {
    read_into(reading, value, info, low);
    high = low;
  } else if (expect_kind(reading, value, info, Kind::list)) {
    const Value first = value.first(), second = first.next();
    if (!second || second.next())
      return refuse_value(reading, value.place(), info, "a list of two was expected", std::string(info.about));
    read_into(reading, first, one_of(info, Shape::amount), low);
    read_into(reading, second, one_of(info, Shape::amount), high);
  }
  if (!low || !high) return;
  if (info.rising && low->value > high->value)
    return refuse_value(reading, value.place(), info, "it runs from larger to smaller", "write the smaller one first");
  into = Span<D>{std::move(*low), std::move(*high), one_value};
}

/// Keys matched to fields; each that stood is marked, so that a faulty value is not missed a second time.
template <class S>
void read_fields(Reading& reading, Value map, S& into) {
  const std::span<const Field<S>> table = fields<S>();
  std::vector<bool> stood(table.size(), false);
  into.place = map.place();
  for (Value key = map.first(); key && !reading.diagnostics.full();) {
    const Value value = key.next();
    std::size_t at = 0;
    while (at < table.size() && table[at].info.key != key.text()) ++at;
    if (at == table.size()) {
      std::vector<std::string_view> known;
      for (const Field<S>& field : table) known.push_back(field.info.key);
      refuse_unknown_key(reading, key, known);
    } else {
      stood[at] = true;
      if (value.kind() == Kind::nothing)
        refuse_nothing(reading, key.place(), key.text());
      else
        table[at].read(reading, value, table[at].info, into);
    }
    key = value.next();
  }
  for (std::size_t at = 0; at < table.size(); ++at)
    if (table[at].info.required && !stood[at]) refuse_missing_key(reading, map.place(), table[at].info);
}

/// A section. The files of one rate book share their sections, so it may stand in an earlier file already.
template <class S>
void read_into(Reading& reading, Value value, const FieldInfo& info, std::optional<S>& into) {
  if (into) return refuse_second(reading, value.place(), info, into->place);
  if (!expect_kind(reading, value, info, Kind::map)) return;
  read_fields(reading, value, into.emplace());
}

/// A list of sections, added to what earlier files gave.
template <class S>
void read_into(Reading& reading, Value value, const FieldInfo& info, std::vector<S>& into) {
  const FieldInfo entry = one_of(info, Shape::section);
  const std::vector<Value> entries = entries_of(reading, value, info);
  into.reserve(into.size() + entries.size());
  for (const Value item : entries) {
    if (reading.diagnostics.full()) return;
    if (expect_kind(reading, item, entry, Kind::map)) read_fields(reading, item, into.emplace_back());
  }
}

}  // namespace seambook
