#include "schedule/instants.hpp"

#include <fmt/format.h>

#include "read/shop_text.hpp"

namespace seambook {
namespace {

namespace c = std::chrono;

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

Instant instant_of(const Moment& moment) { return midnight(moment.date) + moment.at; }

std::string hour_word(Instant t) {
  const auto time = time_of_day(t);
  return fmt::format("{:02}:{:02}", time.hours().count(), time.minutes().count());
}

std::string day_word(Instant t) {
  const Date date = date_of(t);
  return fmt::format("{} {} {}", weekday_words[weekday(date)], date.day, month_words[date.month - 1]);
}

std::string clock_word(Instant t) { return day_word(t) + " " + hour_word(t); }

std::string iso_word(Instant t) {
  return fmt::format("{}T{}:{:02}", iso(date_of(t)), hour_word(t), time_of_day(t).seconds().count());
}

std::optional<Instant> read_instant(std::string_view text) {
  Seconds seconds{};
  if (text.size() == 19 && text[16] == ':' && text[17] >= '0' && text[17] <= '5' && text[18] >= '0' &&
      text[18] <= '9') {
    seconds = Seconds((text[17] - '0') * 10 + text[18] - '0');
    text.remove_suffix(3);
  }
  const DayRead day = read_day(text);
  if (!day.date || !day.at) return std::nullopt;
  return midnight(*day.date) + *day.at + seconds;
}

}  // namespace seambook
