#include "schedule/shop_days.hpp"

#include <algorithm>

#include "schedule/clock.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

bool works_on(const Calendar& calendar, const Shift& shift, const Date& date) {
  return shift.days[static_cast<std::size_t>(weekday(date))] &&
         !std::binary_search(calendar.closed.begin(), calendar.closed.end(), date);
}

std::vector<std::size_t> all_of(const Calendar& calendar) {
  std::vector<std::size_t> shifts(calendar.shifts.size());
  for (std::size_t s = 0; s < shifts.size(); ++s) shifts[s] = s;
  return shifts;
}

}  // namespace

WorkingTime shift_on(const Calendar& calendar, std::size_t number, const Date& date, bool overtime) {
  const Shift& shift = calendar.shifts[number];
  if (!works_on(calendar, shift, date)) return {};
  const Instant day = midnight(date);
  WorkingTime time = {{day + shift.start, day + shift.end - shift.clear_up}};
  if (overtime && calendar.overtime &&
      std::count(calendar.overtime->shifts.begin(), calendar.overtime->shifts.end(), number) > 0)
    time[0].to += calendar.overtime->most;
  WorkingTime breaks;
  breaks.reserve(shift.breaks.size());
  for (const Break& pause : shift.breaks) breaks.push_back({day + pause.at, day + pause.at + pause.length});
  return without(time, tidy(std::move(breaks)));
}

WorkingTime shift_time(const Calendar& calendar, const PlanDays& days, std::span<const std::size_t> shifts,
                       bool overtime) {
  const std::vector<std::size_t> all = all_of(calendar);
  if (shifts.empty()) shifts = all;
  WorkingTime time;
  for (int d = -1; d < days.count; ++d) {  // a night shift of the day before runs into the first
    const Date date = plus_days(days.first, d);
    for (const std::size_t shift : shifts) {
      const WorkingTime on = shift_on(calendar, shift, date, overtime);
      time.insert(time.end(), on.begin(), on.end());
    }
  }
  return tidy(std::move(time));
}

Instant end_of_day(const Calendar& calendar, const Date& date) {
  Instant end = Instant::min();
  for (const Shift& shift : calendar.shifts)
    if (works_on(calendar, shift, date)) end = std::max<Instant>(end, midnight(date) + shift.end);
  return end == Instant::min() ? midnight(date) + std::chrono::hours(12) : end;
}

}  // namespace seambook
