#include "text/number_words.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <utility>

#include "basics/utf8.hpp"
#include "text/unit_words.hpp"

namespace seambook {
namespace {

constexpr std::array<std::string_view, 5> blank_words{" ", "\t", "\u00A0", "\u2009", "\u202F"};

struct VulgarFraction {
  std::string_view word;
  double numerator, denominator;
};
constexpr std::array vulgar_fractions{VulgarFraction{"½", 1, 2}, VulgarFraction{"¼", 1, 4}, VulgarFraction{"¾", 3, 4},
                                      VulgarFraction{"⅛", 1, 8}, VulgarFraction{"⅜", 3, 8}, VulgarFraction{"⅝", 5, 8},
                                      VulgarFraction{"⅞", 7, 8}, VulgarFraction{"⅓", 1, 3}, VulgarFraction{"⅔", 2, 3}};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::size_t digits_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_digit(text[end])) ++end;
  return end - at;
}

NumberRead refused_number(std::string problem, std::string hint) {
  NumberRead read;
  read.problem = std::move(problem);
  read.hint = std::move(hint);
  return read;
}

/// from_chars knows no locale. Gives nothing when the number does not fit a double or is lost in rounding to 0.
std::optional<double> decimal_value(std::string_view digits) {
  double value = 0;
  const auto [end, fault] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (fault != std::errc{} || end != digits.data() + digits.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

/// A fraction at the head of `text`: `1/2` or `½`. No length: there is none; no value: it is none to reckon with.
struct FractionHead {
  std::size_t length = 0;
  std::optional<double> value;
  bool proper = false;
};

FractionHead fraction_head(std::string_view text) {
  for (const VulgarFraction& f : vulgar_fractions)
    if (text.starts_with(f.word)) return {f.word.size(), f.numerator / f.denominator, true};
  const std::size_t above = digits_at(text, 0);
  if (above == 0 || above >= text.size() || text[above] != '/') return {};
  const std::size_t below = digits_at(text, above + 1);
  if (below == 0) return {};
  FractionHead head{above + 1 + below, std::nullopt, false};
  const std::string_view over = text.substr(0, above), under = text.substr(above + 1, below);
  if (over.size() > 6 || under.size() > 6 || over[0] == '0' || under[0] == '0') return head;
  const double numerator = *decimal_value(over), denominator = *decimal_value(under);
  head.value = numerator / denominator;
  head.proper = numerator < denominator;
  return head;
}

/// What stands where a number cannot begin.
NumberRead no_number(std::string_view text) {
  const std::string example = "write a plain number such as 8 or 3.2";
  if (text.empty()) return refused_number("nothing stands here where a number belongs", example);
  if (text.starts_with("-") || text.starts_with("−")) return refused_number("a negative value", "it must be 0 or more");
  if (text.starts_with("+")) return refused_number("a sign before the number", "leave out the '+'");
  if (text.starts_with("$"))
    return refused_number("'$' is no currency code", "write the ISO code after the number: 54 USD/h");
  if (text.starts_with("€"))
    return refused_number("'€' is no currency code", "write the ISO code after the number: 54 EUR/h");
  if (text.starts_with("£"))
    return refused_number("'£' is no currency code", "write the ISO code after the number: 54 GBP/h");
  if (text.starts_with(",")) return refused_number("a comma in a number", "write a point before the decimals: 0.5");
  return refused_number("a number was expected, not " + quoted(text), example);
}

/// What may not follow the digits of a number; no problem when `text` goes on acceptably at `at`.
NumberRead bad_continuation(std::string_view text, std::size_t at) {
  const std::string_view rest = text.substr(at);
  const auto then_digit = [&](std::size_t i) { return i < rest.size() && is_digit(rest[i]); };
  if (rest.empty()) return {};
  if (rest[0] == ',' && then_digit(1)) {
    std::string plain(text.substr(0, at));
    std::erase(plain, '.');  // `1.200,5`: between thousands
    plain.append(".").append(rest.substr(1, digits_at(rest, 1)));
    return refused_number("a comma in a number",
                          "write a point before decimals (" + plain + ") and nothing between thousands");
  }
  if (rest[0] == '.') {
    if (then_digit(1)) return refused_number("two points in a number", "write nothing between thousands: 1500");
    return refused_number("a point without decimals", "leave out the point");
  }
  if ((rest[0] == '_' && then_digit(1)) || (rest[0] == '\'' && digits_at(rest, 1) == 3))
    return refused_number("a mark between thousands", "write nothing between thousands: 1500");
  const bool sign = rest.size() > 1 && (rest[1] == '-' || rest[1] == '+');
  if ((rest[0] == 'e' || rest[0] == 'E') && then_digit(sign ? 2 : 1))
    return refused_number("an exponent in a number", "write the number out: 1500 or 0.0015");
  if (rest[0] == ':' && then_digit(1))
    return refused_number("a colon in a number", "write one number with one unit: 90 min");
  if (text.substr(0, at) == "0" && (rest[0] == 'x' || rest[0] == 'X' || rest[0] == 'o') && rest.size() > 1)
    return refused_number("a number that is not decimal", "write a plain decimal number");
  if (rest[0] == '/' && (rest.size() == 1 || is_digit(rest[1]) || blank_length(rest.substr(1)) > 0))
    return refused_number("an unfinished fraction", "write it as 3/16");
  return {};
}

/// The fraction after a whole number, `-1/2` or ` 1/2`; `lead` bytes of joint stand before it.
struct MixedTail {
  std::size_t lead = 0;
  FractionHead fraction;
};

MixedTail mixed_tail(std::string_view rest) {
  const std::size_t lead = rest.starts_with('-') ? 1 : blank_length(rest);
  const FractionHead fraction = fraction_head(rest.substr(lead));
  // `12/3` is one fraction, never 12 and something: a digit fraction needs a joint.
  if (lead == 0 && fraction.length > 0 && is_digit(rest[0])) return {};
  return {lead, fraction};
}

NumberRead bad_fraction(std::string_view text) {
  return refused_number(quoted(text) + " is no fraction to reckon with",
                        "write it as 3/16 or 1-1/2, with no zero in front");
}

}  // namespace

std::size_t blank_length(std::string_view text) {
  std::size_t length = 0;
  for (bool more = true; more;) {
    more = false;
    for (const std::string_view blank : blank_words)
      if (text.substr(length).starts_with(blank)) length += blank.size(), more = true;
  }
  return length;
}

std::string_view without_blanks_around(std::string_view text) {
  text.remove_prefix(blank_length(text));
  for (bool more = true; more;) {
    more = false;
    for (const std::string_view blank : blank_words)
      if (text.ends_with(blank)) text.remove_suffix(blank.size()), more = true;
  }
  return text;
}

std::string quoted(std::string_view text) {
  constexpr std::size_t longest = 40;
  if (text.size() <= longest) return '\'' + std::string(text) + '\'';
  std::size_t cut = 0;
  while (cut < longest) cut += character_at(text, cut).bytes;
  return '\'' + std::string(text.substr(0, cut)) + "...'";
}

NumberRead read_number(std::string_view text) {
  if (const FractionHead head = fraction_head(text); head.length > 0) {
    if (!head.value) return bad_fraction(text.substr(0, head.length));
    return {head.value, head.length, false, {}, {}};
  }
  const std::size_t whole = digits_at(text, 0);
  const bool point = whole < text.size() && text[whole] == '.';
  const std::size_t decimals = point ? digits_at(text, whole + 1) : 0;
  if (whole == 0 && decimals == 0) return no_number(text);
  const std::size_t length = whole + (decimals > 0 ? 1 + decimals : 0);
  if (NumberRead bad = bad_continuation(text, length); !bad.problem.empty()) return bad;
  if (whole > 1 && text[0] == '0')
    return refused_number("a number with a leading zero", "leave out the zeros in front");
  std::string digits = (whole == 0 ? "0" : "") + std::string(text.substr(0, length));
  const std::optional<double> value = decimal_value(digits);
  if (!value) return refused_number("a number too large or too small to reckon with", "check its digits");
  NumberRead read{value, length, decimals == 0, {}, {}};
  if (decimals > 0) return read;
  const MixedTail tail = mixed_tail(text.substr(length));
  if (tail.fraction.length == 0) return read;
  const std::size_t all = length + tail.lead + tail.fraction.length;
  if (!tail.fraction.value || !tail.fraction.proper) return bad_fraction(text.substr(0, all));
  return {*value + *tail.fraction.value, all, false, {}, {}};
}

CountRead read_count(std::string_view text) {
  constexpr double most = 1e9;
  const std::string hint = "write a whole number such as 4";
  text = without_blanks_around(text);
  NumberRead number = read_number(text);
  if (!number.value) return {std::nullopt, std::move(number.problem), std::move(number.hint)};
  if (number.length != text.size()) {
    const std::string rest(without_blanks_around(text.substr(number.length)));
    return {std::nullopt, quoted(rest) + " after a count", "a count has no unit; " + hint};
  }
  if (!number.whole) return {std::nullopt, quoted(text) + " is no whole number", hint};
  if (*number.value > most) return {std::nullopt, "a count above 1000000000", "check its digits"};
  return {static_cast<std::int64_t>(*number.value), {}, {}};
}

}  // namespace seambook
