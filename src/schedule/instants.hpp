// Instants, days and the moments that files write; instants in words, for the shop and for files.
#pragma once

#include <string>

#include "schedule/shop.hpp"
#include "text/clock_words.hpp"

namespace seambook {

/// `Mon 11 May 07:15`.
std::string clock_word(Instant);
/// `07:15`.
std::string hour_word(Instant);
/// `Mon 11 May`.
std::string day_word(Instant);
/// ISO 8601, local: `2026-05-11T07:15:00`.
std::string iso_word(Instant);
/// The instant of a word as `iso_word` writes it, seconds left out or not; nothing when it is none.
std::optional<Instant> read_instant(std::string_view);
/// Midnight at which a day begins; the day of an instant.
Instant midnight(const Date&);
Date date_of(Instant);
Instant instant_of(const Moment&);

}  // namespace seambook
