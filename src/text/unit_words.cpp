#include "text/unit_words.hpp"

#include <algorithm>
#include <utility>

#include "basics/diagnostics.hpp"
#include "text/number_words.hpp"
#include "text/unit_tables.hpp"

namespace seambook {
namespace {

AmountRead refused_amount(std::string problem, std::string hint) {
  return {std::nullopt, std::move(problem), std::move(hint)};
}

/// The unit without blanks around its slash: `EUR / h` is `EUR/h`.
std::string tidy_unit(std::string_view text) {
  std::string unit;
  while (!text.empty()) {
    const std::size_t slash = std::min(text.find('/'), text.size());
    unit += without_blanks_around(text.substr(0, slash));
    if (slash < text.size()) unit += '/';
    text.remove_prefix(std::min(slash + 1, text.size()));
  }
  return unit;
}

std::string units_hint(Dim expected) {
  return "units of " + std::string(dimension_name(expected)) + ": " + list_of_units(expected);
}

/// `54 $/h`: shops write signs; several currencies share them.
std::string_view sign_of_currency(std::string_view unit) {
  for (const std::string_view sign : {"US$", "$", "€", "£", "¥"})
    if (unit.starts_with(sign)) return sign;
  return {};
}

bool starts_like_number(std::string_view text) {
  if (text.empty()) return false;
  return (text[0] >= '0' && text[0] <= '9') || (text[0] == '.' && text.size() > 1 && text[1] >= '0' && text[1] <= '9');
}

/// `3 mm 4`, `1 h 30 min`, `3x4 mm`, `3 - 5 mm`: a second number where one belongs.
bool second_number(std::string_view unit) {
  for (const std::string_view joint : {"-", "–", "x", "×", "*", ".."})
    if (unit.starts_with(joint) && starts_like_number(without_blanks_around(unit.substr(joint.size())))) return true;
  for (std::size_t at = 0; at < unit.size(); ++at) {
    const std::size_t blank = blank_length(unit.substr(at));
    if ((at == 0 || blank > 0) && starts_like_number(unit.substr(at + blank))) return true;
  }
  return false;
}

/// The unit that the author may have meant: the same letters in other case, or a slip of the fingers.
std::string_view near_unit(std::string_view unit, Dim expected) {
  if (holds_money(expected)) return {};
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  std::vector<std::string_view> words;
  for (const UnitWord& known : unit_words(expected)) {
    if (std::equal(unit.begin(), unit.end(), known.word.begin(), known.word.end(),
                   [&](char a, char b) { return lower(a) == lower(b); }))
      return known.word;
    words.push_back(known.word);
  }
  return nearest(unit, words);
}

AmountRead unknown_unit(const std::string& unit, Dim expected) {
  if (second_number(unit)) return refused_amount("two numbers where one belongs", "write one number with one unit");
  if (!sign_of_currency(unit).empty())
    return refused_amount(quoted(sign_of_currency(unit)) + " is no currency code",
                          "write the ISO code, such as EUR or USD");
  if (const std::optional<Dim> other = dimension_knowing(unit))
    return refused_amount(quoted(unit) +
                              (holds_money(*other) ? " is " + a_dimension(*other)
                                                   : " is a unit of " + std::string(dimension_name(*other))) +
                              ", but " + a_dimension(expected) + " is expected",
                          units_hint(expected));
  const std::string_view near = near_unit(unit, expected);
  const std::string hint = near.empty() ? units_hint(expected) : "did you mean " + quoted(near) + "?";
  return refused_amount("unknown unit " + quoted(unit), hint);
}

/// No shop means anything beyond these, in SI; inside them, no product of figures leaves what a double holds.
constexpr double largest_amount = 1e15, smallest_amount = 1e-15;

/// The number times the unit.
AmountRead scaled(double number, double si, std::string currency, std::string unit) {
  const double value = number * si;
  if (!(value <= largest_amount)) return refused_amount("a value too large to reckon with", "check its digits");
  if (number != 0 && value < smallest_amount)
    return refused_amount("a value too small to reckon with", "check its digits");
  return {Amount{value, std::move(currency), std::move(unit)}, {}, {}};
}

AmountRead money_amount(double number, const std::string& unit, Dim expected) {
  const std::size_t slash = unit.find('/');
  const std::string code = unit.substr(0, slash);
  if (!is_currency_code(code)) return unknown_unit(unit, expected);
  if (expected == dim::money && slash == unit.npos) return scaled(number, 1, code, unit);
  if (expected == dim::money || slash == unit.npos) return unknown_unit(unit, expected);
  const std::optional<UnitWord> per = find_unit(expected, std::string_view(unit).substr(slash + 1));
  return per ? scaled(number, per->si, code, unit) : unknown_unit(unit, expected);
}

/// Kelvins above 0 °C: the one quantity whose scales begin at different zeros.
AmountRead temperature_amount(double number, const UnitWord& scale, const std::string& unit) {
  const bool fahrenheit = unit == "°F" || unit == "degF";
  const double zero = fahrenheit ? 32 : unit == "K" ? 273.15 : 0;
  if (number < zero) return refused_amount("a temperature below 0 °C", "0 °C (32 °F, 273.15 K) or more");
  return scaled(number - zero, scale.si, {}, unit);
}

AmountRead bare_amount(double number, Dim expected, const DefaultUnits& defaults) {
  for (const DefaultUnits::Entry& entry : defaults.entries)
    if (entry.dim == expected) return scaled(number, entry.si, {}, {});
  if (expected == dim::ratio) return scaled(number, 1, {}, {});
  return refused_amount(a_dimension(expected) + " needs a unit", units_hint(expected));
}

/// `4'-6 1/2"`, `4 ft 6 in`: the inches after whole feet. Nothing when `rest` is not of that form.
std::optional<AmountRead> feet_and_inches(const NumberRead& feet, std::string_view rest) {
  std::size_t mark = 0;
  for (const std::string_view word : {"'", "′", "feet", "ft"})
    if (mark == 0 && rest.starts_with(word)) mark = word.size();
  if (mark == 0) return std::nullopt;
  std::string_view after = rest.substr(mark);
  after.remove_prefix(blank_length(after));
  if (after.starts_with('-')) after.remove_prefix(1);
  after.remove_prefix(blank_length(after));
  if (after.empty()) return std::nullopt;
  const NumberRead inches = read_number(after);
  if (!inches.value) return std::nullopt;
  const std::string hint = "write feet and inches as 4'-6 1/2\"";
  const std::string_view word = without_blanks_around(after.substr(inches.length));
  const std::optional<UnitWord> unit = find_unit(dim::length, word);
  const double inch = find_unit(dim::length, "in")->si, foot = find_unit(dim::length, "ft")->si;
  if (!unit || unit->si != inch) return refused_amount("no inch mark after feet and a number", hint);
  if (!feet.whole) return refused_amount("feet are not whole where inches follow", hint);
  if (*inches.value >= 12) return refused_amount("twelve inches or more after feet", hint);
  return scaled(*feet.value * foot + *inches.value * inch, 1, {},
                std::string(rest.substr(0, mark)) + std::string(word));
}

}  // namespace

AmountRead read_amount(std::string_view text, Dim expected, const DefaultUnits& defaults) {
  text = without_blanks_around(text);
  NumberRead number = read_number(text);
  if (!number.value) return refused_amount(std::move(number.problem), std::move(number.hint));
  const std::string_view rest = without_blanks_around(text.substr(number.length));
  if (rest.empty()) return bare_amount(*number.value, expected, defaults);
  if (expected == dim::length)
    if (std::optional<AmountRead> feet = feet_and_inches(number, rest)) return *feet;
  const std::string unit = tidy_unit(rest);
  if (holds_money(expected)) return money_amount(*number.value, unit, expected);
  const std::optional<UnitWord> known = find_unit(expected, unit);
  if (!known) return unknown_unit(unit, expected);
  if (expected == dim::temperature) return temperature_amount(*number.value, *known, unit);
  return scaled(*number.value, known->si, {}, unit);
}

}  // namespace seambook
