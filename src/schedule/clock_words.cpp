#include "schedule/clock_words.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

namespace c = std::chrono;

constexpr const char* weekday_words[] = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
constexpr const char* month_words[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                       "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

c::hh_mm_ss<Seconds> time_of_day(Instant t) { return c::hh_mm_ss<Seconds>(t - c::floor<c::days>(t)); }

}  // namespace

Instant midnight(const Date& date) {
  const auto month = static_cast<unsigned>(date.month), day = static_cast<unsigned>(date.day);
  return c::local_days(c::year_month_day(c::year(date.year), c::month(month), c::day(day)));
}

Date date_of(Instant t) {
  const c::year_month_day day(c::floor<c::days>(t));
  return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
          static_cast<int>(static_cast<unsigned>(day.day()))};
}

std::size_t weekday_of(const Date& date) { return c::weekday(c::floor<c::days>(midnight(date))).iso_encoding() - 1; }

std::string hour_word(Instant t) {
  const auto time = time_of_day(t);
  return fmt::format("{:02}:{:02}", time.hours().count(), time.minutes().count());
}

std::string day_word(Instant t) {
  const Date date = date_of(t);
  return fmt::format("{} {} {}", weekday_words[weekday_of(date)], date.day, month_words[date.month - 1]);
}

std::string clock_word(Instant t) { return day_word(t) + " " + hour_word(t); }

std::string iso_word(Instant t) {
  return fmt::format("{}T{}:{:02}", iso(date_of(t)), hour_word(t), time_of_day(t).seconds().count());
}

std::optional<Instant> read_instant(std::string_view text) {
  if (text.size() < 16 || (text[10] != 'T' && text[10] != ' ')) return std::nullopt;
  const DateRead day = read_date(text.substr(0, 10));
  if (!day.date) return std::nullopt;
  const std::string_view rest = text.substr(11);
  int numbers[3] = {0, 0, 0};
  for (std::size_t k = 0; k * 3 < rest.size(); ++k) {
    const std::string_view two = rest.substr(k * 3, 3);
    const bool last = rest.size() == k * 3 + 2;
    if (k > 2 || two.size() < 2 || (!last && (two.size() < 3 || two[2] != ':'))) return std::nullopt;
    if (two[0] < '0' || two[0] > '9' || two[1] < '0' || two[1] > '9') return std::nullopt;
    numbers[k] = (two[0] - '0') * 10 + (two[1] - '0');
  }
  if (numbers[0] > 23 || numbers[1] > 59 || numbers[2] > 59) return std::nullopt;
  return midnight(*day.date) + c::hours(numbers[0]) + c::minutes(numbers[1]) + Seconds(numbers[2]);
}

}  // namespace seambook
