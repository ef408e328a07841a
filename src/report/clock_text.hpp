// Points in time and spans of it as a shop reads them, in its local time. To the minute: seconds are rounded.
#pragma once

#include <string>

#include "schedule/shop.hpp"

namespace seambook {

/// `Mon 11 May 07:15`.
std::string clock_text(Instant);
/// `07:15`.
std::string hour_text(Instant);
/// `Mon 11 May`.
std::string day_text(Instant);
/// `2026-05-11T07:15:00`, ISO 8601 without a zone; exact.
std::string iso_text(Instant);
/// `45 min`, `3 h 20 min`, `2 d 4 h`; of a negative span its size.
std::string span_text(Seconds);

}  // namespace seambook
