// Times of day and moments as a shop writes them: `06:30`, `6:00 AM`, `2026-05-12 06:30`. All are local time of the
// shop; nothing here knows of time zones or of clocks put forward.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

#include "text/unit_words.hpp"

namespace seambook {

/// A time of the shop; `at` counts from midnight of `date` and may pass 24 h where a night shift does.
struct Moment {
  Date date;
  std::chrono::minutes at{0};
  friend auto operator<=>(const Moment&, const Moment&) = default;
};

struct ClockRead {
  std::optional<std::chrono::minutes> at;  // since midnight, less than 24 h
  std::string problem, hint;               // set when there is none
};
/// `06:30`, `6:30` or `6:30 AM`; 24:00 and what is no time of day are refused.
ClockRead read_clock(std::string_view text);

/// A day, and a time of it where one is stated.
struct DayRead {
  std::optional<Date> date;
  std::optional<std::chrono::minutes> at;
  std::string problem, hint;  // set when there is no date
};
/// `2026-05-12`, `2026-05-12 06:30` or `2026-05-12T06:30`.
DayRead read_day(std::string_view text);

/// 0 for Monday to 6 for Sunday.
int weekday(const Date&);
/// `06:30`; `06:30 next day` past 24 h.
std::string clock_text(std::chrono::minutes at);
/// `2026-05-12T06:30`, as in ISO 8601.
std::string iso(const Moment&);

}  // namespace seambook
