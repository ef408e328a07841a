#include "report/span_text.hpp"

#include <fmt/format.h>

namespace seambook {

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
