#include "read/takeoff_damage.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include "text/number_words.hpp"

namespace seambook {
namespace {

constexpr std::string_view free_words[] = {"mark", "note", "blocked", "hold"};
constexpr std::string_view intermittent_keys[] = {"length", "element", "pitch", "gap_e"};

/// First letters of months as spreadsheet programs write them in English, German and French.
struct MonthStart {
  std::string_view letters;
  int month;
};
constexpr MonthStart month_starts[] = {{"jan", 1},  {"feb", 2},  {"fév", 2},  {"mar", 3},  {"mär", 3}, {"mrz", 3},
                                       {"apr", 4},  {"avr", 4},  {"may", 5},  {"mai", 5},  {"jun", 6}, {"juin", 6},
                                       {"jul", 7},  {"juil", 7}, {"aug", 8},  {"aoû", 8},  {"sep", 9}, {"oct", 10},
                                       {"okt", 10}, {"nov", 11}, {"dec", 12}, {"dez", 12}, {"déc", 12}};

bool is_among(std::string_view word, std::span<const std::string_view> words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

bool digits_only(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

int number_of(std::string_view digits) {
  int number = 0;
  std::from_chars(digits.data(), digits.data() + std::min<std::size_t>(digits.size(), 8), number);
  return number;
}

/// The parts of `10-May`, `02. Mai`, `2026-05-10`, `10/05/2026`.
std::vector<std::string_view> date_parts(std::string_view text) {
  std::vector<std::string_view> parts;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find_first_of("-./ "), text.size());
    if (end > 0) parts.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return parts;
}

int month_of(std::string_view word) {
  std::string lower(word);
  for (char& c : lower) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  for (const MonthStart& start : month_starts)
    if (lower.starts_with(start.letters) && lower.find_first_of("0123456789") == lower.npos) return start.month;
  return 0;
}

/// What may have been typed before a program made a date of it: the two numbers it kept. Empty when `text` is no date.
std::vector<int> kept_numbers(std::string_view text, bool with_month_word_only) {
  const std::vector<std::string_view> parts = date_parts(text);
  if (parts.size() < 2 || parts.size() > 3) return {};
  std::vector<int> numbers;
  bool month_word = false;
  for (const std::string_view part : parts) {
    const int month = digits_only(part) ? 0 : month_of(part);
    if (!digits_only(part) && (month == 0 || month_word)) return {};
    month_word = month_word || month > 0;
    numbers.push_back(month > 0 ? month : number_of(part));
  }
  if (month_word) {
    if (numbers.size() == 3) numbers.pop_back();  // the year was added
    return numbers;
  }
  const bool year_first = parts.front().size() == 4, year_last = parts.back().size() == 4;
  if (with_month_word_only || parts.size() != 3 || year_first == year_last) return {};
  if (year_first) return {numbers[2], numbers[1]};
  return {numbers[0], numbers[1]};
}

bool may_be_date(Shape shape) {
  return shape == Shape::date || shape == Shape::dates || shape == Shape::day || shape == Shape::moment;
}

bool is_date_by_mistake(Reading& reading, const InputField& field, const FieldInfo& info) {
  if (may_be_date(info.shape)) return false;
  const bool sure = field.kind == FieldKind::date;
  if (!sure && (is_among(info.key, free_words) || info.shape == Shape::flag)) return false;
  const bool names = info.shape == Shape::word || info.shape == Shape::words;
  const std::string_view day =
      std::string_view(field.text).substr(0, field.text.find(' ', sure ? 10 : field.text.npos));
  const std::vector<int> kept = kept_numbers(day, names && !sure);
  if (kept.empty() && !sure) return false;
  std::string hint = "a spreadsheet program makes a date of ";
  if (kept.empty()) {
    hint += "much that is typed";
  } else {
    const std::string a = std::to_string(kept[0]), b = std::to_string(kept[1]);
    hint += a + "-" + b + ", " + b + "/" + a + " or " + a + "." + b;
    // A first of a month may be a month and a year: 1-50.
    if (sure && kept[0] == 1) hint += ", or of " + b + "-" + std::string(day.substr(2, 2));
  }
  hint += ": format the column as text, then type it again";
  if (is_among(info.key, intermittent_keys))
    hint += "; the length of an element and its pitch have columns of their own, 'element' and 'pitch'";
  refuse_value(reading, field.place, info, quoted(field.text) + " is a date", std::move(hint));
  return true;
}

/// `#REF!`, `#NAME?`, `#N/A`, and the `####` of a column too narrow for its numbers.
bool is_error_word(std::string_view text) {
  if (text.size() < 3 || text[0] != '#') return false;
  return text.ends_with('!') || text.ends_with('?') || text == "#N/A" || text == "#NV" ||
         text.find_first_not_of('#') == text.npos;
}

/// `4.71E+11`
bool is_shortened(std::string_view text) {
  const std::size_t e = text.find("E+");
  if (e == text.npos || !digits_only(text.substr(e + 2))) return false;
  const std::string_view number = text.substr(0, e);
  return digits_only(number.substr(0, 1)) && (number.size() == 1 || digits_only(number.substr(2)));
}

/// A name that is a number of more digits than are kept.
bool is_cut_number(const InputField& field) {
  constexpr std::size_t digits_kept = 15;
  return field.kind == FieldKind::number && digits_only(field.text) && field.text.size() > digits_kept;
}

/// `50-100` where one of both belongs.
bool is_length_with_pitch(std::string_view text) {
  const std::size_t dash = text.find('-');
  if (dash == text.npos) return false;
  const std::string_view first = without_blanks_around(text.substr(0, dash));
  const std::string_view second = without_blanks_around(text.substr(dash + 1));
  const NumberRead a = read_number(first), b = read_number(second);
  return a.value && a.length == first.size() && b.value && second.find('/') == second.npos;
}

}  // namespace

bool is_damaged(Reading& reading, const InputField& field, const FieldInfo& info) {
  const std::string_view text = field.text;
  if (is_error_word(text)) {
    refuse_value(reading, field.place, info, "the spreadsheet shows " + quoted(text),
                 text.find_first_not_of('#') == text.npos ? "widen the column, then save it again"
                                                          : "mend the cell's formula, or type the value");
    return true;
  }
  if (is_date_by_mistake(reading, field, info)) return true;
  const bool name = info.shape == Shape::word || info.shape == Shape::words;
  if (name && (is_shortened(text) || is_cut_number(field))) {
    refuse_value(reading, field.place, info, quoted(text) + " is not what was typed",
                 "a spreadsheet program keeps 15 digits of a number and shows fewer: format the column as text, then "
                 "type it again");
    return true;
  }
  if (is_among(info.key, intermittent_keys) && is_length_with_pitch(text)) {
    refuse_value(reading, field.place, info, "two numbers where one belongs",
                 "write the length of an element under 'element', the pitch under 'pitch'");
    return true;
  }
  return false;
}

}  // namespace seambook
