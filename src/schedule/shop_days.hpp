// The calendar of the rate book as working time: shifts with their breaks taken out, closed days left out.
#pragma once

#include <span>

#include "resolve/rate_book.hpp"
#include "schedule/shop.hpp"

namespace seambook {

/// Days that a plan looks at.
struct PlanDays {
  Date first;
  int count = 0;
};

/// Working time of some shifts; empty: of all. `overtime`: with what the calendar allows after those shifts.
WorkingTime shift_time(const Calendar&, const PlanDays&, std::span<const std::size_t> shifts, bool overtime);
/// The time of one shift on the day on which it starts, with overtime or not; empty where there is none that day.
WorkingTime shift_on(const Calendar&, std::size_t shift, const Date&, bool overtime);
/// When the last shift of a day ends, breaks and clear-up aside; noon of a day without shifts.
Instant end_of_day(const Calendar&, const Date&);

}  // namespace seambook
