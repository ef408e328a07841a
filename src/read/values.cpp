#include "read/values.hpp"

#include <algorithm>

#include "text/number_words.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

std::string in_quotes(std::string_view key) { return '\'' + std::string(key) + '\''; }

std::string kind_wanted(const FieldInfo& info) {
  switch (info.shape) {
    case Shape::word:
      return "a word or words";
    case Shape::words:
      return "a word or a list of words";
    case Shape::amount:
      return a_dimension(info.dim);
    case Shape::span:
      return a_dimension(info.dim) + " or a list of two";
    case Shape::count:
      return "a whole number";
    case Shape::counts:
      return "a whole number or a list of them";
    case Shape::count_or_list:
      return "a whole number or a list of maps";
    case Shape::flag:
      return "true or false";
    case Shape::flag_or_section:
      return "true, false or a map of keys";
    case Shape::date:
      return "a date";
    case Shape::dates:
      return "a date or a list of dates";
    case Shape::clock:
      return "a time of day";
    case Shape::moment:
      return "a date with a time";
    case Shape::day:
      return "a date, with or without a time";
    case Shape::amount_or_section:
      return a_dimension(info.dim) + " or a map of keys";
    case Shape::section:
      return "a map of keys";
    case Shape::sections:
      return "a list of maps";
    case Shape::word_or_sections:
      return "a word or words, a map of keys, or a list of them";
    case Shape::priced:
      return "an amount of money with 'each', 'per lot' or 'once'";
    case Shape::priced_sections:
      return "an amount of money, a map of keys, or a list of them";
    case Shape::named_words:
      return "a map of keys to words";
  }
  return "something else";
}

std::string_view kind_found(Kind kind) {
  switch (kind) {
    case Kind::nothing:
      return "nothing";
    case Kind::scalar:
      return "a single value";
    case Kind::list:
      return "a list";
    case Kind::map:
      return "a map";
  }
  return "nothing";
}

std::string listed(std::span<const std::string_view> words) {
  std::string list;
  for (const std::string_view word : words) {
    if (!list.empty()) list += ", ";
    list += word;
  }
  return list;
}

/// What stands before the word, or its singular; empty when it does not stand there.
std::string_view before_word(std::string_view text, std::string_view word) {
  text = without_blanks_around(text);
  for (const std::string_view ending : {word, word.substr(0, word.size() - 1)})
    if (text.ends_with(ending)) return without_blanks_around(text.substr(0, text.size() - ending.size()));
  return {};
}

std::string near_or_all(std::string_view word, std::span<const std::string_view> known, std::string_view all_are) {
  const std::string_view near = nearest(word, known);
  if (!near.empty()) return "did you mean " + in_quotes(near) + "?";
  return std::string(all_are) + listed(known);
}

}  // namespace

void refuse_value(Reading& reading, Place place, const FieldInfo& info, const std::string& problem, std::string hint) {
  reading.diagnostics.error(place, in_quotes(info.key) + ": " + problem, std::move(hint));
}

void refuse_kind(Reading& reading, Value value, const FieldInfo& info) {
  if (value.kind() == Kind::nothing) return refuse_nothing(reading, value.place(), info.key);
  reading.diagnostics.error(
      value.place(),
      in_quotes(info.key) + " must be " + kind_wanted(info) + ", not " + std::string(kind_found(value.kind())),
      std::string(info.about));
}

bool expect_kind(Reading& reading, Value value, const FieldInfo& info, Kind kind) {
  if (value.kind() != kind) {
    refuse_kind(reading, value, info);
    return false;
  }
  if (kind == Kind::scalar || value.first()) return true;
  reading.diagnostics.error(value.place(), in_quotes(info.key) + " holds nothing", "fill it in or leave the key out");
  return false;
}

void refuse_unknown_key(Reading& reading, Value key, std::span<const std::string_view> known) {
  reading.diagnostics.error(key.place(), "unknown key " + quoted(key.text()),
                            near_or_all(key.text(), known, "keys known here: "));
}

void refuse_unknown_heading(Reading& reading, Place place, std::string_view word,
                            std::span<const std::string_view> known) {
  reading.diagnostics.error(place, "unknown heading " + quoted(word),
                            near_or_all(word, known, "headings known here: "));
}

void refuse_missing_key(Reading& reading, Place section, const FieldInfo& info) {
  if (info.key == reading.told_missing) return;
  reading.diagnostics.error(section, "the key " + in_quotes(info.key) + " is missing", std::string(info.about));
}

void refuse_second(Reading& reading, Place place, const FieldInfo& info, Place first) {
  reading.diagnostics.error(place, in_quotes(info.key) + " is given twice",
                            "first at " + where(reading.diagnostics, first));
}

void refuse_nothing(Reading& reading, Place place, std::string_view key) {
  reading.diagnostics.error(place, quoted(key) + " has no value", "fill it in or leave the key out");
}

std::vector<Value> entries_of(Reading& reading, Value list, const FieldInfo& info) {
  std::vector<Value> entries;
  if (!expect_kind(reading, list, info, Kind::list)) return entries;
  std::size_t number = 0;
  for (Value entry = list.first(); entry && !reading.diagnostics.full(); entry = entry.next()) {
    ++number;
    if (entry.kind() != Kind::nothing)
      entries.push_back(entry);
    else  // at the list: where nothing stands has no place of its own
      reading.diagnostics.error(list.place(),
                                "entry " + std::to_string(number) + " of " + in_quotes(info.key) + " has no value",
                                "fill it in or leave it out");
  }
  return entries;
}

FieldInfo one_of(const FieldInfo& list, Shape entry) {
  FieldInfo info = list;
  info.shape = entry;
  return info;
}

std::optional<Word> word_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  const std::string_view text = without_blanks_around(value.text());
  if (text.empty()) {
    refuse_nothing(reading, value.place(), info.key);
    return std::nullopt;
  }
  if (!info.choices.empty() && !choice_at(reading, value, info)) return std::nullopt;
  return Word{std::string(text), value.place()};
}

std::optional<Whole> whole_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  CountRead read = read_count(info.counted.empty() ? value.text() : before_word(value.text(), info.counted));
  if (!read.count && !info.counted.empty())
    read = {{}, quoted(value.text()) + " is no number of " + std::string(info.counted), std::string(info.about)};
  const std::int64_t least = info.may_be_zero ? 0 : 1;
  if (read.count && *read.count >= least && *read.count <= info.most)
    return Whole{*read.count, value.place(), info.key};
  if (!read.count)
    refuse_value(reading, value.place(), info, read.problem, std::move(read.hint));
  else
    reading.diagnostics.error(
        value.place(), in_quotes(info.key) + (*read.count < least ? " must be at least " + std::to_string(least)
                                                                  : " must be at most " + std::to_string(info.most)));
  return std::nullopt;
}

std::optional<Flag> flag_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  const std::string_view text = value.text();
  if (text == "true" || text == "false") return Flag{text == "true", value.place()};
  refuse_value(reading, value.place(), info, quoted(text) + " says neither yes nor no", "write true or false");
  return std::nullopt;
}

std::optional<WrittenDate> date_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  DateRead read = read_date(value.text());
  if (read.date) return WrittenDate{*read.date, value.place()};
  refuse_value(reading, value.place(), info, read.problem, std::move(read.hint));
  return std::nullopt;
}

std::optional<WrittenClock> clock_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  ClockRead read = read_clock(value.text());
  if (read.at) return WrittenClock{*read.at, value.place()};
  refuse_value(reading, value.place(), info, read.problem, std::move(read.hint));
  return std::nullopt;
}

std::optional<WrittenDay> day_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  DayRead read = read_day(value.text());
  if (read.date) return WrittenDay{*read.date, read.at, value.place()};
  refuse_value(reading, value.place(), info, read.problem, std::move(read.hint));
  return std::nullopt;
}

std::optional<WrittenMoment> moment_at(Reading& reading, Value value, const FieldInfo& info) {
  const std::optional<WrittenDay> day = day_at(reading, value, info);
  if (!day) return std::nullopt;
  if (day->at) return WrittenMoment{{day->date, *day->at}, day->place};
  refuse_value(reading, value.place(), info, quoted(value.text()) + " has no time",
               "write date and time as 2026-05-18 06:30");
  return std::nullopt;
}

std::optional<std::size_t> choice_at(Reading& reading, Value value, const FieldInfo& info) {
  if (!expect_kind(reading, value, info, Kind::scalar)) return std::nullopt;
  const std::string_view text = without_blanks_around(value.text());
  const auto found = std::find(info.choices.begin(), info.choices.end(), text);
  if (found != info.choices.end()) return static_cast<std::size_t>(found - info.choices.begin());
  refuse_value(reading, value.place(), info, "unknown word " + quoted(text),
               near_or_all(text, info.choices, "it may be: "));
  return std::nullopt;
}

std::optional<Amount> amount_of(Reading& reading, std::string_view text, Place place, const FieldInfo& info) {
  AmountRead read = read_amount(text, info.dim, reading.units);
  const bool large_enough = read.amount && (read.amount->si > 0 || info.may_be_zero);
  if (large_enough && !(info.below_whole && read.amount->si >= 1)) return std::move(read.amount);
  if (large_enough)
    reading.diagnostics.error(place, in_quotes(info.key) + " must be less than 100 %");
  else if (read.amount)
    reading.diagnostics.error(place, in_quotes(info.key) + " must be more than 0");
  else
    refuse_value(reading, place, info, read.problem, std::move(read.hint));
  return std::nullopt;
}

}  // namespace seambook
