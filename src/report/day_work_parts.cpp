#include <fmt/format.h>

#include <algorithm>

#include "report/day_parts.hpp"
#include "report/dispatch_page.hpp"
#include "report/fetch_page.hpp"
#include "report/page_parts.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

constexpr std::size_t rows_a_welder = 4;

/// A row of a list of the first day.
struct NextRow {
  std::size_t station = 0;
  const DispatchRow* row = nullptr;
};

std::vector<NextRow> first_rows(const DayPage& page) {
  std::vector<NextRow> rows;
  for (const DispatchList& list : page.work.lists) {
    if (!on_first_day(page, list.shift)) continue;
    for (const DispatchRow& row : list.rows) rows.push_back({list.station, &row});
  }
  std::stable_sort(rows.begin(), rows.end(), [](const NextRow& a, const NextRow& b) {
    return a.row->parts.front().from < b.row->parts.front().from;
  });
  return rows;
}

const PlannedTask& begun_with(const DayPage& page, const DispatchRow& row) {
  return page.shop.plan.tasks[row.parts.front().at];
}

bool works_in(const DayPage& page, const DispatchRow& row, std::size_t person) {
  const std::vector<std::size_t>& people = way_of(page.shop, begun_with(page, row)).people;
  return std::find(people.begin(), people.end(), person) != people.end();
}

void put_next_row(DayPage& page, const NextRow& next, const std::string& stamp) {
  const DispatchRow& row = *next.row;
  const TaskRef& ref = ref_of(page.shop, begun_with(page, row));
  put(page.sheet, page.row, 0,
      fmt::format("{}  {} to {}", stamp, hour_word(row.parts.front().from), hour_word(row.parts.back().to)));
  put(page.sheet, page.row, 1, page.shop.work.problem.stations[next.station].name);
  put_minutes(page.sheet, page.row, 2, change_of(row), 0);
  put_across(
      page.sheet, page.row++, 3, last_day_column,
      fmt::format("{}/{}: {}", page.shop.jobs[ref.job].name, lot_words(page.shop, ref), row_work_words(page.shop, row)),
      Look::wrapped);
}

}  // namespace

bool on_first_day(const DayPage& page, std::size_t shift) {
  return date_of(page.work.shifts[shift].span.from) == date_of(page.work.shifts.front().span.from);
}

void put_begun(DayPage& page) {
  if (page.shop.work.begun.empty()) return;
  put_day_heading(page, {"still under way", "station", "until", "welder"});
  for (const Begun& begun : page.shop.work.begun) {
    put(page.sheet, page.row, 0, begun.name, Look::wrapped);
    put(page.sheet, page.row, 1, begun.station ? page.shop.work.problem.stations[*begun.station].name : "away");
    put(page.sheet, page.row, 2, clock_word(begun.finish));
    put_across(page.sheet, page.row++, 3, last_day_column,
               begun.person ? page.shop.work.problem.people[*begun.person].stamp : "not said", Look::text);
  }
}

void put_welders(DayPage& page) {
  put_day_heading(page, {"who does what next", "station", "set-up (min)", "work"});
  const std::vector<NextRow> rows = first_rows(page);
  std::vector<std::string> idle;
  for (std::size_t person = 0; person < page.shop.work.problem.people.size(); ++person) {
    const std::string& stamp = page.shop.work.problem.people[person].stamp;
    std::size_t shown = 0, more = 0;
    for (const NextRow& next : rows) {
      if (!works_in(page, *next.row, person)) continue;
      if (shown == rows_a_welder)
        ++more;
      else
        put_next_row(page, next, stamp), ++shown;
    }
    if (shown == 0) idle.push_back(stamp);
    if (more > 0) put_nothing(page, fmt::format("{} has {} more on the lists", stamp, more).c_str());
  }
  if (!idle.empty()) put_nothing(page, ("no work today: " + joined(idle, ", ")).c_str());
}

void put_stops(DayPage& page) {
  put_day_heading(page, {"where work stops today", "about", "station", "who looks, at what"});
  const std::uint32_t first = page.row;
  for (const NextRow& next : first_rows(page))
    for (const TaskPart& part : next.row->parts) {
      const TaskRef& ref = ref_of(page.shop, page.shop.plan.tasks[part.at]);
      const std::string words = hold_words(ref);
      if (words.empty() || part.goes_on) continue;
      put(page.sheet, page.row, 0, page.shop.work.problem.tasks[page.shop.plan.tasks[part.at].task].name,
          Look::wrapped);
      put(page.sheet, page.row, 1, hour_word(part.to));
      put(page.sheet, page.row, 2, page.shop.work.problem.stations[next.station].name);
      put_across(page.sheet, page.row++, 3, last_day_column, words, Look::wrapped);
    }
  if (page.row == first) put_nothing(page, "no hold or witness point today");
}

void put_away(DayPage& page) {
  bool headed = false;
  for (const PlannedTask& task : page.shop.plan.tasks) {
    if (way_of(page.shop, task).station) continue;
    if (!headed) put_day_heading(page, {"away from the shop", "leaves", "back", "what for"});
    headed = true;
    const TaskRef& ref = ref_of(page.shop, task);
    put(page.sheet, page.row, 0, page.shop.jobs[ref.job].name + "/" + lot_words(page.shop, ref), Look::wrapped);
    put(page.sheet, page.row, 1, clock_word(task.start));
    put(page.sheet, page.row, 2, clock_word(task.finish));
    put_across(page.sheet, page.row++, 3, last_day_column, page.shop.work.problem.tasks[task.task].name, Look::wrapped);
  }
}

void put_to_fetch(DayPage& page) {
  put_day_heading(page, {"to fetch to", "what, for today"});
  const std::uint32_t first = page.row;
  for (std::size_t station = 0; station < page.shop.work.problem.stations.size(); ++station) {
    std::vector<std::string> words;
    for (const Fetched& of : page.work.fetched)
      if (on_first_day(page, of.shift) && of.station == station) words.push_back(fetched_words(page.shop, of));
    if (words.empty()) continue;
    put(page.sheet, page.row, 0, page.shop.work.problem.stations[station].name);
    put_across(page.sheet, page.row++, 1, last_day_column, joined(words, "; "), Look::wrapped);
  }
  if (page.row == first) put_nothing(page, "nothing");
}

}  // namespace seambook
