#include "text/clock_words.hpp"

#include <array>
#include <cstdio>

#include "text/number_words.hpp"

namespace seambook {
namespace {

constexpr int minutes_of_hour = 60, hours_of_day = 24, noon = 12;

bool is_clock_digit(char c) { return c >= '0' && c <= '9'; }

/// Takes one or two digits off the front.
std::optional<int> take_number(std::string_view& text) {
  std::size_t digits = 0;
  while (digits < 2 && digits < text.size() && is_clock_digit(text[digits])) ++digits;
  if (digits == 0) return std::nullopt;
  const int number = digits == 1 ? text[0] - '0' : (text[0] - '0') * 10 + (text[1] - '0');
  text.remove_prefix(digits);
  return number;
}

/// `AM` or `PM` at the end, taken off.
std::string_view take_half(std::string_view& text) {
  for (const std::string_view half : {"AM", "am", "PM", "pm"}) {
    if (!text.ends_with(half)) continue;
    text = without_blanks_around(text.substr(0, text.size() - half.size()));
    return half;
  }
  return {};
}

}  // namespace

ClockRead read_clock(std::string_view text) {
  const std::string_view whole = without_blanks_around(text);
  std::string_view rest = whole;
  const std::string_view half = take_half(rest);
  const ClockRead refused{{}, quoted(whole) + " is no time of day", "write it as 06:30 or \"6:30 AM\""};
  std::optional<int> hours = take_number(rest);
  if (!hours || rest.size() != 3 || rest[0] != ':') return refused;
  rest.remove_prefix(1);
  const std::optional<int> minutes = take_number(rest);
  if (!minutes || !rest.empty() || *minutes >= minutes_of_hour) return refused;
  if (*hours == hours_of_day) return {{}, "a day ends before 24:00", "write 00:00 for midnight"};
  if (half.empty() ? *hours > hours_of_day : *hours == 0 || *hours > noon) return refused;
  if (!half.empty()) hours = *hours % noon + (half[0] == 'P' || half[0] == 'p' ? noon : 0);
  return {std::chrono::minutes(*hours * minutes_of_hour + *minutes), {}, {}};
}

DayRead read_day(std::string_view text) {
  constexpr std::size_t date_length = 10;
  text = without_blanks_around(text);
  const bool with_time = text.size() > date_length && (text[date_length] == ' ' || text[date_length] == 'T');
  DateRead date = read_date(with_time ? text.substr(0, date_length) : text);
  if (!date.date || !with_time) return {date.date, {}, std::move(date.problem), std::move(date.hint)};
  ClockRead clock = read_clock(text.substr(date_length + 1));
  if (!clock.at) return {{}, {}, std::move(clock.problem), std::move(clock.hint)};
  return {date.date, clock.at, {}, {}};
}

int weekday(const Date& date) {
  const std::chrono::year_month_day day{std::chrono::year(date.year),
                                        std::chrono::month(static_cast<unsigned>(date.month)),
                                        std::chrono::day(static_cast<unsigned>(date.day))};
  return static_cast<int>(std::chrono::weekday(std::chrono::sys_days(day)).iso_encoding()) - 1;
}

std::string clock_text(std::chrono::minutes at) {
  const auto count = at.count();
  std::array<char, 64> text{};
  constexpr int day = hours_of_day * minutes_of_hour;
  std::snprintf(text.data(), text.size(), "%02d:%02d%s", static_cast<int>(count % day / minutes_of_hour),
                static_cast<int>(count % minutes_of_hour), count >= day ? " next day" : "");
  return text.data();
}

std::string iso(const Moment& moment) {
  constexpr std::chrono::minutes day = std::chrono::hours(hours_of_day);
  const int days = static_cast<int>(moment.at / day);
  return iso(plus_days(moment.date, days)) + "T" + clock_text(moment.at % day);
}

}  // namespace seambook
