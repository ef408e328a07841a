// What may stand behind each key of a job or a rate book: the one description from which files are read and from which
// a schema and a key reference can be made. Holds: keys of one list differ; a section gives its own list.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "basics/units.hpp"

namespace seambook {

/// What the value of a key looks like.
enum class Shape : std::uint8_t {
  word,               // text
  words,              // a list of texts, or one
  amount,             // a number with its unit, of the dimension `dim`
  span,               // `[low, high]` amounts, or one for both
  count,              // a whole number
  counts,             // a list of whole numbers, or one
  count_or_list,      // a whole number, or a list of sections
  flag,               // true or false
  flag_or_section,    // true or false, or a map with the keys of `inside`
  date,               // 2026-05-18
  dates,              // a list of dates, or one
  clock,              // a time of day: 06:30
  moment,             // a date with a time: 2026-05-18 06:30
  day,                // a date, with or without a time
  amount_or_section,  // `amount`, or `section`
  section,            // a map with the keys of `inside`
  sections,           // a list of such maps
  word_or_sections,   // text, a section, or a list of texts and sections
  priced,             // money with its scaling: `38 EUR each`
  priced_sections,    // `priced`, or a section, or a list of them
  named_words         // a map of any keys to texts
};

struct FieldInfo {
  std::string_view key = {};
  std::string_view about = {};  // what it is, with an example
  Shape shape = Shape::word;
  Dim dim = dim::ratio;
  bool required = false;
  bool may_be_zero = false;                        // amounts and counts
  bool below_whole = false;                        // amounts: shares less than 100 %
  bool rising = false;                             // spans: the first is the smaller one
  std::int64_t most = 1'000'000;                   // counts
  std::string_view counted = {};                   // counts: the word behind the number, if one must stand: months
  std::span<const std::string_view> choices = {};  // words: empty when any will do
  std::span<const std::string_view> known = {};    // words: those that are understood later; others are refused then
  std::string_view instead = {};                   // a word that may stand in place of an amount: none
  std::span<const Dim> or_dims = {};               // amounts: further dimensions, told apart by the unit
  std::vector<FieldInfo> (*inside)() = nullptr;    // sections
};

std::vector<FieldInfo> job_fields();
std::vector<FieldInfo> rate_fields();
std::vector<FieldInfo> day_fields();

}  // namespace seambook
