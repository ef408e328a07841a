#include <chrono>
#include <cstdio>

#include "text/number_words.hpp"
#include "text/unit_words.hpp"

namespace seambook {
namespace {

constexpr int first_year = 1900, last_year = 2199;

bool digits_between(std::string_view text, std::size_t from, std::size_t to) {
  for (std::size_t at = from; at < to; ++at)
    if (text[at] < '0' || text[at] > '9') return false;
  return true;
}

int digits_value(std::string_view digits) {
  int value = 0;
  for (const char c : digits) value = value * 10 + (c - '0');
  return value;
}

std::chrono::year_month_day calendar_day(const Date& date) {
  return {std::chrono::year(date.year), std::chrono::month(static_cast<unsigned>(date.month)),
          std::chrono::day(static_cast<unsigned>(date.day))};
}

}  // namespace

DateRead read_date(std::string_view text) {
  text = without_blanks_around(text);
  const std::string hint = "write year, month and day as 2026-05-18";
  const bool shape = text.size() == 10 && digits_between(text, 0, 4) && text[4] == '-' && digits_between(text, 5, 7) &&
                     text[7] == '-' && digits_between(text, 8, 10);
  if (!shape) return {std::nullopt, quoted(text) + " is no date", hint};
  const Date date{digits_value(text.substr(0, 4)), digits_value(text.substr(5, 2)), digits_value(text.substr(8, 2))};
  if (!calendar_day(date).ok()) return {std::nullopt, "the calendar has no " + std::string(text), hint};
  if (date.year < first_year || date.year > last_year)
    return {std::nullopt, "the year " + std::to_string(date.year) + " is out of range", "it must be 1900 to 2199"};
  return {date, {}, {}};
}

std::string iso(const Date& date) {
  char text[48];
  std::snprintf(text, sizeof text, "%04d-%02d-%02d", date.year, date.month, date.day);
  return text;
}

Date plus_days(const Date& date, int days) {
  const std::chrono::year_month_day day(std::chrono::sys_days(calendar_day(date)) + std::chrono::days(days));
  return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
          static_cast<int>(static_cast<unsigned>(day.day()))};
}

}  // namespace seambook
