#include <algorithm>
#include <map>

#include "report/dispatch.hpp"
#include "schedule/clock.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

constexpr std::chrono::hours long_pause(3), longest_shift(18);

/// From the first set-up to the last end of the plan.
Window planned_span(const Plan& plan) {
  Window span{Instant::max(), Instant::min()};
  for (const PlannedTask& task : plan.tasks) {
    span.from = std::min(span.from, task.set_up);
    span.to = std::max(span.to, task.finish);
  }
  return span;
}

/// Round the clock, midnight parts the shifts.
void add_cut_at_midnight(WorkingTime& out, Window window) {
  while (window.to - window.from > longest_shift) {
    const Instant midnight = std::chrono::floor<std::chrono::days>(window.from) + std::chrono::days(1);
    out.push_back({window.from, std::min(midnight, window.to)});
    window.from = out.back().to;
  }
  if (window.from < window.to) out.push_back(window);
}

/// When one shift of the calendar takes over from another: it begins when that one ends, or a little before.
std::vector<Instant> hand_overs(const Calendar& calendar, const Window& span) {
  constexpr std::chrono::minutes overlap(30);
  std::vector<Instant> out;
  const auto last = std::chrono::floor<std::chrono::days>(span.to);
  for (auto day = std::chrono::floor<std::chrono::days>(span.from); day <= last; day += std::chrono::days(1)) {
    const auto weekday = std::chrono::weekday(std::chrono::sys_days(day.time_since_epoch())).iso_encoding() - 1;
    for (const Shift& next : calendar.shifts)
      for (const Shift& before : calendar.shifts) {
        const bool takes_over = before.start < next.start && before.end - overlap <= next.start;
        if (next.days[weekday] && before.days[weekday] && takes_over) out.emplace_back(day + next.start);
      }
  }
  return out;
}

WorkingTime cut_at(const WorkingTime& windows, const std::vector<Instant>& cuts) {
  WorkingTime out;
  for (Window window : windows) {
    for (const Instant cut : cuts) {
      if (cut <= window.from || cut >= window.to) continue;
      out.push_back({window.from, cut});
      window.from = cut;
    }
    add_cut_at_midnight(out, window);
  }
  return out;
}

WorkingTime open_in_plan(const PlannedShop& shop, const Window& span) {
  WorkingTime all;
  for (const ShopStation& station : shop.work.problem.stations)
    for (const Window& open : station.open)
      if (open.from < span.to && open.to > span.from) all.push_back(open);
  return tidy(std::move(all));
}

bool goes_into(const Window& shift, const Window& next, const std::vector<Instant>& cuts) {
  const bool cut =
      std::any_of(cuts.begin(), cuts.end(), [&](Instant at) { return at > shift.from && at <= next.from; });
  return !cut && next.from - shift.to <= long_pause && next.to - shift.from <= longest_shift;
}

}  // namespace

std::vector<PlanShift> shifts_of(const PlannedShop& shop) {
  if (shop.plan.tasks.empty()) return {};
  const Window span = planned_span(shop.plan);
  std::vector<PlanShift> shifts;
  std::vector<Instant> cuts = hand_overs(shop.book.calendar, span);
  std::sort(cuts.begin(), cuts.end());
  for (const Window& open : cut_at(open_in_plan(shop, span), cuts)) {
    if (!shifts.empty() && goes_into(shifts.back().span, open, cuts))
      shifts.back().span.to = open.to;
    else
      shifts.push_back({open, {}});
  }
  if (shifts.empty()) shifts.push_back({span, {}});
  std::map<std::string, int> on_day;
  for (const PlanShift& shift : shifts) ++on_day[day_word(shift.span.from)];
  for (PlanShift& shift : shifts) {
    const std::string day = day_word(shift.span.from);
    shift.name = on_day[day] > 1 ? clock_word(shift.span.from) : day;
  }
  return shifts;
}

}  // namespace seambook
