#include "read/takeoff_columns.hpp"

#include <algorithm>

#include "text/number_words.hpp"
#include "text/unit_tables.hpp"
#include "text/unit_words.hpp"

namespace seambook {
namespace {

struct HeadingWords {
  std::string_view key, unit;
};

/// `leg (mm)` taken apart.
HeadingWords heading_words(std::string_view text) {
  for (const std::string_view brackets : {"()", "[]"}) {
    const std::size_t open = text.find(brackets[0]);
    if (open == text.npos || !text.ends_with(brackets[1])) continue;
    const std::string_view unit = text.substr(open + 1, text.size() - open - 2);
    return {without_blanks_around(text.substr(0, open)), without_blanks_around(unit)};
  }
  return {text, {}};
}

bool holds_amount(const FieldInfo& info) {
  return info.shape == Shape::amount || info.shape == Shape::span || info.shape == Shape::amount_or_section;
}

bool fits_a_column(const FieldInfo& info) { return info.shape != Shape::section && info.shape != Shape::sections; }

/// The unit that a heading gives. In place of one that is none, some unit of the key, so that its fault is told once
/// and not again in each row.
std::string unit_in_heading(Reading& reading, const InputField& heading, std::string_view unit, const FieldInfo& info) {
  if (unit.empty()) return {};
  if (!holds_amount(info)) {
    refuse_value(reading, heading.place, info, "its values have no unit", "head the column " + quoted(info.key));
  } else if (!find_unit(info.dim, unit)) {
    refuse_value(reading, heading.place, info, "unknown unit " + quoted(unit) + " in a heading",
                 "it may be: " + list_of_units(info.dim));
    return std::string(unit_words(info.dim).front().word);
  } else {
    return std::string(unit);
  }
  return {};
}

/// The keys that a heading names: the one that it is called by, or else the one that it may mean, and a complaint.
struct HeadingKeys {
  const FieldInfo *named = nullptr, *meant = nullptr;
};

HeadingKeys keys_of_heading(Reading& reading, const InputField& heading, const std::vector<FieldInfo>& keys) {
  const std::string_view word = heading_words(heading.text).key;
  const auto called = [&](std::string_view name) -> const FieldInfo* {
    const auto found = std::find_if(keys.begin(), keys.end(), [&](const FieldInfo& info) { return info.key == name; });
    return found == keys.end() ? nullptr : &*found;
  };
  if (const FieldInfo* info = called(word)) {
    if (fits_a_column(*info)) return {info, nullptr};
    refuse_value(reading, heading.place, *info, "a column cannot hold it", "write such joints in the job file");
    return {};
  }
  std::vector<std::string_view> known;
  for (const FieldInfo& info : keys)
    if (fits_a_column(info)) known.push_back(info.key);
  refuse_unknown_heading(reading, heading.place, word, known);
  return {nullptr, called(nearest(word, known))};
}

bool has_column(const std::vector<TakeoffColumn>& columns, const FieldInfo& info) {
  return std::any_of(columns.begin(), columns.end(), [&](const TakeoffColumn& c) { return c.info == &info; });
}

TakeoffColumn column_of(Reading& reading, const InputField& heading, const FieldInfo& info) {
  return {&info, unit_in_heading(reading, heading, heading_words(heading.text).unit, info)};
}

/// Told once, and not again in each row.
void refuse_missing_columns(Reading& reading, Place first, const std::vector<TakeoffColumn>& columns,
                            const std::vector<FieldInfo>& keys) {
  for (const FieldInfo& info : keys) {
    if (!info.required || has_column(columns, info)) continue;
    reading.told_missing = info.key;
    reading.diagnostics.error(first, "no column is called '" + std::string(info.key) + "'",
                              "the first row holds the headings");
  }
}

}  // namespace

std::vector<TakeoffColumn> match_columns(Reading& reading, const InputRow& headings,
                                         const std::vector<FieldInfo>& keys) {
  std::vector<TakeoffColumn> columns(headings.size());
  std::vector<const FieldInfo*> meant(headings.size());
  for (std::size_t i = 0; i < headings.size(); ++i) {
    if (headings[i].text.empty()) continue;
    const HeadingKeys found = keys_of_heading(reading, headings[i], keys);
    meant[i] = found.meant;
    if (!found.named) continue;
    if (has_column(columns, *found.named))
      reading.diagnostics.error(headings[i].place, "'" + std::string(found.named->key) + "' has two columns",
                                "take one of them out");
    else
      columns[i] = column_of(reading, headings[i], *found.named);
  }
  // A misspelt heading is read as what it may mean, so that its fault is told once and not again in each row.
  for (std::size_t i = 0; i < headings.size(); ++i)
    if (meant[i] && !has_column(columns, *meant[i])) columns[i] = column_of(reading, headings[i], *meant[i]);
  refuse_missing_columns(reading, headings.front().place, columns, keys);
  return columns;
}

}  // namespace seambook
