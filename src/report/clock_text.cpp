#include "report/clock_text.hpp"

#include <fmt/format.h>

#include <array>

namespace seambook {
namespace {

using std::chrono::floor;

constexpr std::array<const char*, 7> day_names = {"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
constexpr std::array<const char*, 12> month_names = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                     "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

Instant to_the_minute(Instant at) { return floor<std::chrono::minutes>(at + Seconds(30)); }

std::string calendar_day(Instant at) {
  const auto day = floor<std::chrono::days>(at);
  const std::chrono::year_month_day date(day);
  return fmt::format("{} {} {}", day_names[std::chrono::weekday(day).c_encoding()], static_cast<unsigned>(date.day()),
                     month_names[static_cast<unsigned>(date.month()) - 1]);
}

std::string clock_of_day(Instant at) {
  const std::chrono::hh_mm_ss time(at - floor<std::chrono::days>(at));
  return fmt::format("{:02}:{:02}", time.hours().count(), time.minutes().count());
}

}  // namespace

std::string day_text(Instant at) { return calendar_day(to_the_minute(at)); }
std::string hour_text(Instant at) { return clock_of_day(to_the_minute(at)); }
std::string clock_text(Instant at) { return day_text(at) + " " + hour_text(at); }

std::string iso_text(Instant at) {
  const auto day = floor<std::chrono::days>(at);
  const std::chrono::year_month_day date(day);
  const std::chrono::hh_mm_ss time(at - day);
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()), time.hours().count(),
                     time.minutes().count(), time.seconds().count());
}

std::string span_text(Seconds span) {
  constexpr std::int64_t hour = 60, day = 24 * hour;  // minutes
  const std::int64_t minutes = (std::abs(span.count()) + 30) / 60;
  const auto in_two = [](std::int64_t large, const char* word, std::int64_t small, const char* small_word) {
    return small == 0 ? fmt::format("{} {}", large, word) : fmt::format("{} {} {} {}", large, word, small, small_word);
  };
  if (minutes < hour) return fmt::format("{} min", minutes);
  if (minutes < 2 * day) return in_two(minutes / hour, "h", minutes % hour, "min");
  return in_two(minutes / day, "d", minutes % day / hour, "h");
}

}  // namespace seambook
