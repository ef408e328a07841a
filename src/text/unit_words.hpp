// Scalars of the trade as the author writes them: `1/8 in`, `1-1/2 in`, `80 cm/min`, `35 cfh`, `13.80 EUR/kg`, `25 %`.
// The expected dimension chooses the table of unit words; a unit of another kind is named as such.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "basics/units.hpp"

namespace seambook {

struct UnitWord {
  std::string_view word;
  double si = 1;
};

/// Units that bare numbers take, for the dimensions the file states.
struct DefaultUnits {
  struct Entry {
    Dim dim;
    double si;
    std::string word;
  };
  std::vector<Entry> entries;
};

struct Amount {
  double si = 0;         // in SI; money in its major unit
  std::string currency;  // ISO 4217 code when the unit holds money, else empty
  std::string unit;      // as the author spelled it, empty for a bare number
};

struct AmountRead {
  std::optional<Amount> amount;
  std::string problem, hint;  // set when there is no amount
};

/// Reads one number with its unit. Numbers are plain decimals, fractions or mixed fractions: no exponent, leading zero,
/// hex, infinity, thousands separator or decimal comma. 0, or from 1e-15 to 1e15 in SI. Negative values are refused.
AmountRead read_amount(std::string_view text, Dim expected, const DefaultUnits& defaults);
/// The unit words a dimension knows, for messages and help; money words are listed after the currency's slash.
std::span<const UnitWord> unit_words(Dim);
/// `length`, `travel speed`, `price per mass` ...
std::string_view dimension_name(Dim);
/// A whole number without unit, 0 to 10^9, plain digits.
struct CountRead {
  std::optional<std::int64_t> count;
  std::string problem, hint;
};
CountRead read_count(std::string_view text);
/// A date as ISO 8601 `2026-05-18`; refused with a hint otherwise, and checked against the calendar.
struct Date {
  int year = 0, month = 0, day = 0;
  friend auto operator<=>(const Date&, const Date&) = default;
};
struct DateRead {
  std::optional<Date> date;
  std::string problem, hint;
};
DateRead read_date(std::string_view text);
std::string iso(const Date&);
Date plus_days(const Date&, int days);

}  // namespace seambook
