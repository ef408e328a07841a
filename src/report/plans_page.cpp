#include "report/plans_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/page_parts.hpp"
#include "report/plan_levels.hpp"
#include "report/task_words.hpp"
#include "schedule/clock.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

struct PlansAt {
  enum Column : std::uint16_t { name, cannot, late, change, money, loads, finish };
};
struct LoadAt {
  enum Column : std::uint16_t { station, open, change, work, used };
};

struct PlansPage {
  const PlannedShop& shop;
  Sheet& sheet;
  std::uint32_t row;
  std::uint32_t rate_row;  // its second column holds the rate
};

std::string rate_cell(const PlansPage& page) { return cell_name(page.rate_row, 1, true); }

double set_up_money(const PlannedShop& shop, std::int64_t seconds) {
  return static_cast<double>(seconds) * set_up_rate(shop).si;
}

void put_plan_row(PlansPage& page, const OtherPlan& of) {
  const Levels& levels = of.levels;
  Sheet& sheet = page.sheet;
  put(sheet, page.row, PlansAt::name, of.name, Look::wrapped);
  put_number(sheet, page.row, PlansAt::cannot, static_cast<double>(levels.unplaced), 0);
  put_number(sheet, page.row, PlansAt::late, static_cast<double>(levels.late) / 60, 0);
  put_number(sheet, page.row, PlansAt::change, static_cast<double>(levels.change) / 60, 0);
  put_formula(sheet, page.row, PlansAt::money,
              {fmt::format("{}/60*{}", cell_name(page.row, PlansAt::change), rate_cell(page)),
               set_up_money(page.shop, levels.change)},
              2);
  put_number(sheet, page.row, PlansAt::loads, static_cast<double>(levels.loads), 0);
  put(sheet, page.row++, PlansAt::finish, clock_word(page.shop.work.problem.start + Seconds(levels.finish)));
}

void put_fact(PlansPage& page, const std::string& words, Formula formula, int decimals) {
  put(page.sheet, page.row, 0, words, Look::wrapped);
  put_formula(page.sheet, page.row++, 1, std::move(formula), decimals);
}

/// What set-ups cost against what they buy. `first`: the row of this plan, `last`: that of the last other one.
void put_trade(PlansPage& page, const std::vector<OtherPlan>& plans, std::uint32_t first, std::uint32_t last) {
  const PlannedShop& shop = page.shop;
  const std::string& currency = shop.book.currency;
  put(page.sheet, page.row, 0, "A set-up against an hour late", Look::heading);
  put(page.sheet, page.row++, 1, "", Look::heading);
  const auto change = [&](std::uint32_t row) { return cell_name(row, PlansAt::change); };
  const double count = static_cast<double>(set_up_count(shop.plan));
  put(page.sheet, page.row, 0, "set-ups in this plan");
  put_number(page.sheet, page.row++, 1, count, 0);
  const std::string count_cell = cell_name(page.row - 1, 1);
  const double money = set_up_money(shop, shop.plan.levels.change);
  put_fact(
      page, fmt::format("one more set-up of mean length ({})", currency),
      {fmt::format("IF({0}>0,{1}/{0},0)", count_cell, cell_name(first, PlansAt::money)), count > 0 ? money / count : 0},
      2);
  const auto least = std::min_element(plans.begin(), plans.end(), [](const OtherPlan& a, const OtherPlan& b) {
    return a.levels.change < b.levels.change;
  });
  const std::uint32_t least_row = first + static_cast<std::uint32_t>(least - plans.begin());
  const Levels &mine = shop.plan.levels, &theirs = least->levels;
  const double more = set_up_money(shop, mine.change - theirs.change);
  const double sooner = static_cast<double>(theirs.late - mine.late) / 3600;
  put_fact(page, fmt::format("set-up money more than the plan with least set-ups ({})", currency),
           {fmt::format("({}-MIN({}:{}))/60*{}", change(first), change(first), change(last), rate_cell(page)), more},
           2);
  const std::string more_cell = cell_name(page.row - 1, 1);
  put_fact(page, "hours late less than that plan, times the orders' weights",
           {fmt::format("({}-{})/60", cell_name(least_row, PlansAt::late), cell_name(first, PlansAt::late)), sooner},
           1);
  const std::string sooner_cell = cell_name(page.row - 1, 1);
  put_fact(page, fmt::format("so an hour less late takes ({})", currency),
           {fmt::format("IF({0}>0,{1}/{0},0)", sooner_cell, more_cell), sooner > 0 ? more / sooner : 0}, 2);
}

Time<> in_minutes_of(Seconds span) { return {static_cast<double>(span.count())}; }

void put_load_row(PlansPage& page, std::size_t station, Instant end) {
  const PlannedShop& shop = page.shop;
  Time<> change{};
  Seconds work{};
  for (const PlannedTask& task : shop.plan.tasks) {
    if (way_of(shop, task).station != station) continue;
    change = change + task.change.duration;
    work += way_of(shop, task).time;
  }
  const ShopStation& at = shop.work.problem.stations[station];
  const Time<> open = in_minutes_of(working_between(at.open, shop.work.problem.start, end));
  const auto cell = [&](std::uint16_t column) { return cell_name(page.row, column); };
  put(page.sheet, page.row, LoadAt::station, at.name);
  put_minutes(page.sheet, page.row, LoadAt::open, open, 0);
  put_minutes(page.sheet, page.row, LoadAt::change, change, 0);
  put_minutes(page.sheet, page.row, LoadAt::work, in_minutes_of(work), 0);
  const double used = open.si > 0 ? (change.si + static_cast<double>(work.count())) / open.si * 100 : 0;
  put_share(page.sheet, page.row, LoadAt::used,
            {fmt::format("IF({0}>0,({1}+{2})/{0}*100,0)", cell(LoadAt::open), cell(LoadAt::change), cell(LoadAt::work)),
             used});
  ++page.row;
}

void put_loads(PlansPage& page) {
  put_heading_row(
      page.sheet, page.row++,
      {"station", "open until the end of the plan (min)", "set-up (min)", "work by the clock (min)", "used"});
  const std::uint32_t first = page.row;
  const Instant end = page.shop.work.problem.start + Seconds(page.shop.plan.levels.finish);
  for (std::size_t s = 0; s < page.shop.work.problem.stations.size(); ++s) put_load_row(page, s, end);
  put(page.sheet, page.row, LoadAt::station, "together", Look::total);
  for (const std::uint16_t column : {LoadAt::open, LoadAt::change, LoadAt::work}) {
    double sum = 0;
    for (const Cell& cell : page.sheet.cells)
      if (cell.row >= first && cell.row < page.row && cell.column == column) sum += std::get<double>(cell.content);
    put_sum(page.sheet, page.row, column, first, sum, 0);
  }
  ++page.row;
}

}  // namespace

Sheet plans_page(const PlannedShop& shop) {
  Sheet sheet;
  sheet.name = "Compared";
  put_title(
      sheet, "This plan against others",
      "The same work in other orders, each as early as stations and people allow. Late minutes are those above the "
      "tolerance, times the order's weight.");
  const std::vector<OtherPlan> plans = compared_plans(shop);
  PlansPage page{shop, sheet, heading_row, 0};
  put_heading_row(sheet, page.row++,
                  {"plan", "tasks that cannot be done", "late (min)", "set-up (min)", "", "fixture loads", "done"});
  sheet.cells[sheet.cells.size() - 3].content = fmt::format("set-up ({})", shop.book.currency);
  const std::uint32_t first = page.row;
  page.rate_row = first + static_cast<std::uint32_t>(plans.size()) + 1;
  for (const OtherPlan& plan : plans) put_plan_row(page, plan);
  put(sheet, page.rate_row, 0, fmt::format("labour of those who set up ({}/h)", shop.book.currency), Look::wrapped);
  put_number(sheet, page.rate_row, 1, set_up_rate(shop).si * unit::h.si, 2, Look::frozen);
  page.row = page.rate_row + 2;
  put_trade(page, plans, first, page.rate_row - 2);
  ++page.row;
  put_loads(page);
  sheet.column_widths = {40, 14, 12, 12, 12, 12, 18};
  sheet.frozen_rows = heading_row;
  return sheet;
}

}  // namespace seambook
