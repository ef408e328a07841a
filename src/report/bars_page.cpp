#include "report/bars_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/page_blocks.hpp"
#include "report/page_parts.hpp"
#include "report/task_words.hpp"
#include "report/terminal.hpp"
#include "schedule/clock.hpp"

namespace seambook {
namespace {

using Minutes = std::chrono::minutes;
constexpr Minutes an_hour(60);

constexpr std::uint16_t most_bar_cells = 132;

/// The hours that all shifts' bars run over, from the midnight before a shift.
struct BarHours {
  Minutes from, to, step;
  std::uint16_t cells() const { return static_cast<std::uint16_t>((to - from) / step); }
};

Instant midnight_before(const PlanShift& shift) { return std::chrono::floor<std::chrono::days>(shift.span.from); }

BarHours bar_hours(const std::vector<PlanShift>& shifts) {
  Minutes first = 24 * an_hour, last{0};
  for (const PlanShift& shift : shifts) {
    const Instant midnight = midnight_before(shift);
    first = std::min(first, std::chrono::floor<Minutes>(shift.span.from - midnight));
    last = std::max(last, std::chrono::ceil<Minutes>(shift.span.to - midnight));
  }
  first = first / an_hour * an_hour,
  last = std::max((last + an_hour - Minutes(1)) / an_hour * an_hour, first + an_hour);
  BarHours span{first, last, Minutes(5)};
  for (const int step : {5, 10, 15, 30, 60}) {
    span.step = Minutes(step);
    if (span.cells() <= most_bar_cells) break;
  }
  return span;
}

/// What goes on in one row: a task's part with its number on the list.
struct Bar {
  Instant set_up, start, finish;
  std::string label;  // full, and short where that is too long
  std::string number;
  bool other = false;  // every second bar has another tint, so that their ends show
};

/// A row of the page: when it is there, what it does.
struct BarRow {
  std::string name;
  const WorkingTime* open;
  std::vector<Bar> bars;
};

/// Stations and people that do something in the plan.
struct Busy {
  std::vector<bool> stations, people;
};

Busy busy_in(const PlannedShop& shop) {
  Busy busy{std::vector<bool>(shop.work.problem.stations.size()), std::vector<bool>(shop.work.problem.people.size())};
  for (const PlannedTask& task : shop.plan.tasks) {
    const Way& way = way_of(shop, task);
    if (way.station) busy.stations[*way.station] = true;
    for (const std::size_t person : way.people) busy.people[person] = true;
  }
  for (const Begun& begun : shop.work.begun) {
    if (begun.station) busy.stations[*begun.station] = true;
    if (begun.person) busy.people[*begun.person] = true;
  }
  return busy;
}

/// `; without work: ST-4, Q5`.
std::string idle_words(const PlannedShop& shop, const Busy& busy) {
  std::vector<std::string> names;
  for (std::size_t s = 0; s < busy.stations.size(); ++s)
    if (!busy.stations[s]) names.push_back(shop.work.problem.stations[s].name);
  for (std::size_t p = 0; p < busy.people.size(); ++p)
    if (!busy.people[p]) names.push_back(shop.work.problem.people[p].stamp);
  return names.empty() ? "" : " Without work: " + joined(names, ", ") + ".";
}

struct BarsPage {
  const PlannedShop& shop;
  const BarHours& hours;
  const Busy& busy;
  Sheet& sheet;
  std::uint32_t row;
};

Seconds inside(const Window& cell, Instant from, Instant to) {
  return std::max(Seconds{}, std::min(cell.to, to) - std::max(cell.from, from));
}

/// What most of a cell's busy time goes to, and the bar it belongs to; nothing where the row is mostly free.
std::optional<std::pair<Look, std::size_t>> look_of_cell(const BarRow& row, const Window& cell) {
  std::optional<std::pair<Look, std::size_t>> look;
  Seconds most{}, busy{};
  for (std::size_t b = 0; b < row.bars.size(); ++b) {
    const Bar& bar = row.bars[b];
    const Seconds set_up = inside(cell, bar.set_up, bar.start), work = inside(cell, bar.start, bar.finish);
    busy += set_up + work;
    if (std::max(set_up, work) <= most) continue;
    most = std::max(set_up, work);
    look = {set_up >= work ? Look::bar_set_up : bar.other ? Look::bar_other_work : Look::bar_work, b};
  }
  return 2 * busy < cell.to - cell.from ? std::nullopt : look;
}

void put_hour_row(const BarsPage& page, const std::string& name) {
  put(page.sheet, page.row, 0, name, Look::heading);
  const auto per_hour = static_cast<std::uint16_t>(an_hour / page.hours.step);
  std::uint16_t column = first_bar_column;
  for (Minutes at = page.hours.from; at < page.hours.to; at += an_hour) {
    const std::string hour = fmt::format("{:02}", at / an_hour % 24);
    const auto next = static_cast<std::uint16_t>(column + per_hour);
    put_across(page.sheet, page.row, column, next - 1, hour, Look::heading);
    column = next;
  }
}

/// A cell of a row: how it looks, and of which bar it is part.
struct BarCell {
  std::optional<Look> look;
  std::size_t bar = 0;
};

std::vector<BarCell> cells_of_row(const BarsPage& page, const BarRow& row, Instant midnight) {
  std::vector<BarCell> cells(page.hours.cells());
  Instant from = midnight + page.hours.from;
  for (BarCell& cell : cells) {
    const Window window{from, from + page.hours.step};
    from = window.to;
    if (working_between(*row.open, window.from, window.to) * 2 < page.hours.step)
      cell.look = Look::bar_closed;
    else if (const auto look = look_of_cell(row, window))
      cell = {look->first, look->second};
  }
  return cells;
}

/// The words of a bar that fit on so many cells: all, its number, or none.
std::string words_on(const Bar& bar, std::size_t cells) {
  const std::size_t room = cells * 3 / 2;  // letters
  if (display_width(bar.label) <= room) return bar.label;
  return display_width(bar.number) <= room ? bar.number : "";
}

void put_bar_row(const BarsPage& page, const BarRow& row, Instant midnight) {
  put(page.sheet, page.row, 0, row.name);
  std::vector<bool> labelled(row.bars.size());
  const std::vector<BarCell> cells = cells_of_row(page, row, midnight);
  std::uint16_t column = first_bar_column;
  for (auto cell = cells.begin(); cell != cells.end(); ++cell, ++column) {
    if (!cell->look) continue;
    Cell drawn{page.row, column, {}, *cell->look, {}};
    const bool work = cell->look == Look::bar_work || cell->look == Look::bar_other_work;
    if (work && !labelled[cell->bar]) {
      labelled[cell->bar] = true;
      const auto end = std::find_if(
          cell, cells.end(), [&](const BarCell& other) { return other.look != cell->look || other.bar != cell->bar; });
      const std::string words = words_on(row.bars[cell->bar], static_cast<std::size_t>(end - cell));
      if (!words.empty()) drawn.content = words;
    }
    page.sheet.cells.push_back(std::move(drawn));
  }
}

void put_bar_rows(BarsPage& page, const std::vector<BarRow>& rows, const std::vector<bool>& busy, Instant midnight) {
  for (std::size_t r = 0; r < rows.size(); ++r) {
    if (!busy[r]) continue;
    put_bar_row(page, rows[r], midnight);
    page.sheet.row_heights.emplace_back(page.row++, 20);
  }
  page.sheet.row_heights.emplace_back(page.row++, 6);
}

/// Bars of a list's rows, at the station and for each person.
void add_bars(const PlannedShop& shop, const DispatchList& list, std::vector<BarRow>& stations,
              std::vector<BarRow>& people) {
  for (std::size_t r = 0; r < list.rows.size(); ++r) {
    const DispatchRow& row = list.rows[r];
    const PlannedTask& first = shop.plan.tasks[row.parts.front().at];
    const TaskRef& ref = ref_of(shop, first);
    const Instant from = row.parts.front().from;
    const Instant start = row.parts.front().continued ? from : std::max(from, first.start);
    Bar bar{from, std::min(start, row.parts.back().to), row.parts.back().to, {}, {}, false};
    const std::string number = std::to_string(r + 1), what = number + " " + weldment_of(shop, ref).name;
    const auto add = [&](BarRow& to, const std::string& before) {
      bar.label = before + what, bar.number = before + number, bar.other = to.bars.size() % 2 == 1;
      to.bars.push_back(bar);
    };
    add(stations[list.station], "");
    for (const std::size_t person : way_of(shop, first).people)
      add(people[person], shop.work.problem.stations[list.station].name + " ");
  }
}

/// What is under way when the plan begins, in the shift in which it ends.
void add_begun_bars(const PlannedShop& shop, const PlanShift& shift, std::vector<BarRow>& stations,
                    std::vector<BarRow>& people) {
  for (const Begun& begun : shop.work.begun) {
    if (begun.finish <= shift.span.from || begun.start >= shift.span.to) continue;
    const Bar bar{begun.start, begun.start, begun.finish, "under way", {}, false};
    if (begun.station) stations[*begun.station].bars.push_back(bar);
    if (begun.person) people[*begun.person].bars.push_back(bar);
  }
}

void put_shift(BarsPage& page, const PlanShift& shift, std::size_t number, const std::vector<DispatchList>& lists) {
  const ShopProblem& problem = page.shop.work.problem;
  std::vector<BarRow> stations, people;
  stations.reserve(problem.stations.size()), people.reserve(problem.people.size());
  for (const ShopStation& station : problem.stations) stations.push_back({station.name, &station.open, {}});
  for (const ShopPerson& person : problem.people) people.push_back({person.stamp, &person.present, {}});
  add_begun_bars(page.shop, shift, stations, people);
  for (const DispatchList& list : lists)
    if (list.shift == number) add_bars(page.shop, list, stations, people);
  for (BarRow& row : people)
    std::stable_sort(row.bars.begin(), row.bars.end(), [](const Bar& a, const Bar& b) { return a.set_up < b.set_up; });
  const Instant midnight = midnight_before(shift);
  put_hour_row(page, shift.name);
  ++page.row;
  put_bar_rows(page, stations, page.busy.stations, midnight);
  put_bar_rows(page, people, page.busy.people, midnight);
}

void put_key(Sheet& sheet, std::uint16_t columns) {
  constexpr std::uint32_t row = 2;
  const std::pair<Look, const char*> keys[] = {{Look::bar_set_up, "set-up"},
                                               {Look::bar_work, "work"},
                                               {Look::bar_other_work, "work, every second row of the list"},
                                               {Look::bar_closed, "closed, or not there"}};
  std::uint16_t column = first_bar_column;
  for (const auto& [look, words] : keys) {
    for (std::uint16_t c = 0; c < 3; ++c)
      sheet.cells.push_back({row, static_cast<std::uint16_t>(column + c), {}, look, {}});
    put(sheet, row, column + 3, words, Look::label);
    column = static_cast<std::uint16_t>(column + std::max(16, columns / 5));
  }
}

}  // namespace

std::chrono::minutes bar_step(const std::vector<PlanShift>& shifts) { return bar_hours(shifts).step; }

Sheet bars_page(const PlannedShop& shop, const std::vector<PlanShift>& shifts, const std::vector<DispatchList>& lists) {
  Sheet sheet;
  sheet.name = "Bars";
  sheet.landscape = true;
  const BarHours span = bar_hours(shifts);
  put(sheet, 0, 0, "Stations and welders over time", Look::title);
  const Busy busy = busy_in(shop);
  put(sheet, 1, 0,
      fmt::format("A cell is {} min. The number is the row's on the station's list.{}", span.step.count(),
                  idle_words(shop, busy)),
      Look::label);
  put_key(sheet, span.cells());
  sheet.column_widths = {16};
  sheet.column_widths.resize(first_bar_column + span.cells() + 1U, 1.0);
  sheet.frozen_columns = first_bar_column;
  BarsPage page{shop, span, busy, sheet, heading_row + 1};
  std::vector<PageBlock> blocks;
  blocks.reserve(shifts.size());
  for (std::size_t s = 0; s < shifts.size(); ++s) {
    const bool works =
        std::any_of(lists.begin(), lists.end(), [&](const DispatchList& list) { return list.shift == s; });
    if (!works) continue;
    blocks.push_back({page.row, false});
    put_shift(page, shifts[s], s, lists);
  }
  break_pages(sheet, blocks, shop.book.letter_paper);
  return sheet;
}

}  // namespace seambook
