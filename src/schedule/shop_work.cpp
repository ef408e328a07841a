#include "schedule/shop_work.hpp"

#include <algorithm>
#include <cmath>

#include "schedule/clock.hpp"
#include "schedule/instants.hpp"
#include "schedule/set_up_table.hpp"
#include "schedule/shop_draft.hpp"

namespace seambook {
namespace {

constexpr int days_at_least = 42, days_at_most = 400;
constexpr double minutes_a_day = 240;  // of work, carefully: what the days that are looked at are counted by

/// Days enough for all the work, were there one welder.
int days_for(const WorkToPlan& plan) {
  double minutes = 0;
  for (std::size_t n = 0; n < plan.jobs.size(); ++n) {
    Time<> floor;
    for (const RowFigures<double>& row : plan.estimates[n].joints) floor = floor + joint_totals(row).floor;
    for (const WeldmentFigures<double>& weldment : plan.estimates[n].weldments) floor = floor + weldment.floor;
    minutes += static_cast<double>(plan.jobs[n].quantities.front()) * floor.si / 60;
  }
  return static_cast<int>(std::min<double>(days_at_most, days_at_least + minutes / minutes_a_day));
}

/// Days from the first on which work that is still under way was begun.
PlanDays days_of(const WorkToPlan& plan) {
  Date first = date_of(plan.start);
  if (plan.day)
    for (const StartedWork& started : plan.day->started) first = std::min(first, started.at.date);
  const auto before = std::chrono::duration_cast<std::chrono::days>(midnight(date_of(plan.start)) - midnight(first));
  return {first, days_for(plan) + static_cast<int>(before.count())};
}

template <class Absences>
WorkingTime time_away(const Absences& all, std::size_t number, std::size_t Absences::value_type::*of) {
  WorkingTime time;
  for (const auto& absence : all)
    if (absence.*of == number) time.push_back({instant_of(absence.from), instant_of(absence.until)});
  return tidy(std::move(time));
}

/// Working time of some shifts with the overtime that is to be worked.
WorkingTime planned_time(const WorkDraft& draft, const std::vector<std::size_t>& shifts) {
  const Calendar& calendar = draft.plan.book.calendar;
  WorkingTime time = shift_time(calendar, draft.days, shifts, draft.plan.overtime);
  if (!draft.plan.day) return time;
  for (const DayOvertime& extra : draft.plan.day->overtime) {
    const bool ours = shifts.empty() || std::count(shifts.begin(), shifts.end(), extra.shift) > 0;
    const WorkingTime on = ours ? shift_on(calendar, extra.shift, extra.date, true) : WorkingTime{};
    time.insert(time.end(), on.begin(), on.end());
  }
  return tidy(std::move(time));
}

void add_model(WorkDraft& draft) {
  SetupModel& model = draft.work.problem.model;
  for (const ChangeRule& rule : draft.plan.book.change_tasks) {
    const Time<> whole{std::round(rule.time.si.value)};
    model.tasks.push_back(draft.numbers.task(rule.name, rule.attribute, rule.from, rule.to, whole, rule.cold));
  }
  const auto at = std::find(set_up_attributes.begin(), set_up_attributes.end(), "weldment");
  draft.work.problem.load_attribute = static_cast<std::size_t>(at - set_up_attributes.begin());
}

void add_stations(WorkDraft& draft) {
  const RateBook& book = draft.plan.book;
  for (std::size_t s = 0; s < book.stations.size(); ++s) {
    const Station& station = book.stations[s];
    ShopStation out;
    out.name = station.name;
    out.open = planned_time(draft, station.shifts);
    NeedWords start = stated_words(station.mounted);
    if (draft.plan.day) {
      out.open = without(out.open, time_away(draft.plan.day->down, s, &StationDown::station));
      for (const MountedNow& now : draft.plan.day->mounted)
        if (now.station == s) start = stated_words(now.mounted);
    }
    out.start = draft.numbers.numbers(start);
    if (!station.end_state.empty()) out.end = draft.numbers.numbers(stated_words(station.end_state));
    for (const NeverChange& never : station.never)
      out.never.push_back(draft.numbers.task("never " + std::to_string(out.never.size()), never.attribute, never.from,
                                             never.to, {}, false));
    draft.work.problem.stations.push_back(std::move(out));
    draft.work.stations.push_back(s);
  }
}

void add_people(WorkDraft& draft) {
  const RateBook& book = draft.plan.book;
  for (std::size_t w = 0; w < book.welders.size(); ++w) {
    WorkingTime present = planned_time(draft, book.welders[w].shifts);
    if (draft.plan.day) present = without(present, time_away(draft.plan.day->absent, w, &Absence::welder));
    draft.work.problem.people.push_back({book.welders[w].stamp, std::move(present)});
    draft.work.welders.push_back(w);
  }
}

void add_orders(WorkDraft& draft) {
  for (std::size_t n = 0; n < draft.plan.jobs.size(); ++n) {
    const Job& job = draft.plan.jobs[n];
    auto due = job.due;
    auto due_at = job.plan.due_at;
    double weight = job.plan.late_weight;
    if (draft.plan.day) {
      for (const Rush& rush : draft.plan.day->rush) {
        if (rush.job != n) continue;
        if (rush.due) due = rush.due, due_at = rush.due_at;
        weight = rush.late_weight.value_or(weight);
      }
    }
    ShopOrder order{job.name, Instant::max(), std::max<std::int64_t>(1, std::llround(weight))};
    if (due) order.due = due_at ? instant_of({*due, *due_at}) : end_of_day(draft.plan.book.calendar, *due);
    draft.work.problem.orders.push_back(std::move(order));
    draft.work.job_of_order.push_back(n);
  }
}

/// Jobs may wait for each other in a ring, though none does by itself.
bool waits_in_a_ring(const WorkDraft& draft) {
  const ShopProblem& problem = draft.work.problem;
  const std::vector<std::size_t> ring = find_cycle(problem.tasks.size(), problem.precedence);
  if (ring.empty()) return false;
  std::string names;
  for (const std::size_t t : ring) names += problem.tasks[t].name + " -> ";
  draft.diagnostics.error({}, "work waits for itself: " + names + problem.tasks[ring.front()].name,
                          "look at 'after' and 'after_jobs'");
  return true;
}

}  // namespace

std::optional<ShopWork> shop_work(const WorkToPlan& plan, Diagnostics& diagnostics) {
  if (plan.book.calendar.shifts.empty()) {
    diagnostics.error({}, "the rate book states no shifts, and nothing can be planned by the clock",
                      "add 'shifts' to it: name, days, start, end, breaks");
    return std::nullopt;
  }
  WorkDraft draft(plan, diagnostics);
  draft.days = days_of(plan);
  draft.work.problem.start = plan.start;
  add_model(draft);
  add_stations(draft);
  add_people(draft);
  add_orders(draft);
  add_tasks(draft);
  add_order(draft);
  if (waits_in_a_ring(draft)) return std::nullopt;
  apply_day(draft);
  if (!draft.sound) return std::nullopt;
  keep_out(draft);
  drop_kept_out(draft);
  return std::move(draft.work);
}

}  // namespace seambook
