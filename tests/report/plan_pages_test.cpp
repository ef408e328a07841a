// The pages of a plan against the plan itself.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "hand_plan.hpp"
#include "report/bars_page.hpp"
#include "report/day_page.hpp"
#include "report/dispatch_page.hpp"
#include "report/page_blocks.hpp"
#include "report/page_parts.hpp"
#include "report/shop_book.hpp"
#include "report/task_words.hpp"
#include "report/traveller_page.hpp"
#include "report/xlsx_checks.hpp"
#include "report/xlsx_heights.hpp"
#include "report/xlsx_page.hpp"
#include "schedule/clock.hpp"

namespace seambook {
namespace {

using test::hand_plan;
using test::HandPlan;

const Sheet& sheet_called(const Workbook& workbook, const std::string& name) {
  const auto at = std::find_if(workbook.sheets.begin(), workbook.sheets.end(),
                               [&](const Sheet& sheet) { return sheet.name == name; });
  REQUIRE_MESSAGE(at != workbook.sheets.end(), name);
  return *at;
}

const Cell* cell_at(const Sheet& sheet, std::uint32_t row, std::uint16_t column) {
  const auto at = std::find_if(sheet.cells.begin(), sheet.cells.end(),
                               [&](const Cell& cell) { return cell.row == row && cell.column == column; });
  return at == sheet.cells.end() ? nullptr : &*at;
}

TEST_CASE("the lists hold the plan's minutes, station by station") {
  const HandPlan hand = hand_plan();
  const PlannedShop shop = hand.shop();
  const ShiftWork work = shift_work(shop);
  CHECK(work.shifts.size() >= 2);
  std::map<std::size_t, double> listed, planned, set_ups, changed;
  for (const DispatchList& list : work.lists)
    for (const DispatchRow& row : list.rows) {
      listed[list.station] += labour_of(shop, row).si;
      set_ups[list.station] += change_of(row).si;
    }
  for (const PlannedTask& task : hand.plan.tasks) {
    planned[*way_of(shop, task).station] += labour_of(ref_of(shop, task)).si;
    changed[*way_of(shop, task).station] += task.change.duration.si;
  }
  REQUIRE(listed.size() == 2);
  for (const auto& [station, seconds] : planned) {
    CHECK(listed[station] == doctest::Approx(seconds));
    CHECK(set_ups[station] == changed[station]);
  }
}

TEST_CASE("rows of a list follow one another, and those of a shift lie in it") {
  const HandPlan hand = hand_plan();
  const PlannedShop shop = hand.shop();
  const ShiftWork work = shift_work(shop);
  for (const DispatchList& list : work.lists) {
    Instant last = work.shifts[list.shift].span.from;
    for (const DispatchRow& row : list.rows) {
      CHECK(row.parts.front().from >= last);
      last = row.parts.back().to;
      CHECK(last <= work.shifts[list.shift].span.to);
    }
  }
}

TEST_CASE("short pieces of one set-up and one weldment stand in one row, and none beyond a hold") {
  const HandPlan hand = hand_plan();
  const PlannedShop shop = hand.shop();
  const ShiftWork work = shift_work(shop);
  bool merged = false;
  for (const DispatchList& list : work.lists)
    for (const DispatchRow& row : list.rows) {
      merged = merged || row.parts.size() > 1;
      for (std::size_t p = 0; p < row.parts.size(); ++p) {
        const PlannedTask& task = hand.plan.tasks[row.parts[p].at];
        if (p > 0) CHECK(task.change.tasks.empty());
        if (p + 1 < row.parts.size()) CHECK(!stops_after(ref_of(shop, task)));
        CHECK(ref_of(shop, task).weldment == ref_of(shop, hand.plan.tasks[row.parts.front().at]).weldment);
      }
    }
  CHECK(merged);
}

TEST_CASE("what is fetched is what the estimate says the planned work uses") {
  const HandPlan hand = hand_plan();
  const PlannedShop shop = hand.shop();
  std::map<std::string, double> fetched, used;
  for (const Fetched& of : shift_work(shop).fetched)
    if (of.kind == "filler") fetched[of.name] += of.amount;
  for (const TaskRef& ref : hand.work.refs) {
    const Joint& joint = hand.jobs[ref.job].joints[*ref.joint];
    for (std::size_t g = 0; g < joint.passes.size(); ++g) {
      const Procedure& by = hand.book.procedures[joint.passes[g].procedure];
      if (by.filler)
        used[hand.book.fillers[*by.filler].name] += static_cast<double>(hand.jobs[ref.job].quantities.front()) *
                                                    hand.estimates[ref.job].joints[*ref.joint].passes[g].filler.si;
    }
  }
  REQUIRE(used.size() >= 2);
  for (const auto& [name, mass] : used) CHECK(fetched[name] == doctest::Approx(mass));
}

TEST_CASE("work under way when the plan begins stands on the first page and in the bars") {
  HandPlan hand = hand_plan();
  const Instant start = hand.work.problem.start;
  hand.work.begun = {{"crate/lid/1/1", 1, 1, start - std::chrono::hours(2), start + std::chrono::minutes(40)}};
  const PlannedShop shop = hand.shop();
  const std::string text = dump(plan_workbook(shop));
  CHECK(text.find("crate/lid/1/1") != std::string::npos);
  CHECK(text.find("under way") != std::string::npos);
}

TEST_CASE("blocks that fit on a page are not cut") {
  Sheet sheet;
  sheet.column_widths = {60};
  for (std::uint32_t row = 0; row < 100; ++row) put(sheet, row, 0, "row");
  Sheet filled = sheet, each = sheet;
  break_pages(filled, {{10, false}, {30, false}, {50, false}, {70, false}}, false);
  break_pages(each, {{10, true}, {30, true}, {50, true}, {70, true}}, false);
  CHECK(each.page_breaks == std::vector<std::uint32_t>{30, 50, 70});
  // A row is 15.75 points high, an upright A4 page 730: 46 rows.
  CHECK(filled.page_breaks == std::vector<std::uint32_t>{30, 70});
}

TEST_CASE("columns of words are widened until every block has a page, and not where none does") {
  constexpr std::uint16_t words[] = {0};
  Sheet sheet;
  sheet.column_widths = {60};
  // 66 letters take two lines of 28.5 points at 60 and one of 15.75 at 66: 30 rows of the first are longer than an
  // upright A4 page of 730 points.
  for (std::uint32_t row = 0; row < 30; ++row) put(sheet, row, 0, std::string(66, 'w'), Look::wrapped);
  widen_until_whole(sheet, {{0, true}}, words, 2, false);
  CHECK(sheet.column_widths.front() == doctest::Approx(66));
  for (std::uint32_t row = 30; row < 300; ++row) put(sheet, row, 0, "row");
  sheet.column_widths = {60};
  widen_until_whole(sheet, {{0, true}}, words, 2, false);
  CHECK(sheet.column_widths.front() == 60);
}

TEST_CASE("a sheet that is hardly longer than a page is kept on one") {
  Sheet sheet;
  sheet.column_widths = {60};
  for (std::uint32_t row = 0; row < 50; ++row) put(sheet, row, 0, "row");  // 788 of 730 points
  keep_on_one_page(sheet, false);
  CHECK(sheet.one_page);
  for (std::uint32_t row = 50; row < 70; ++row) put(sheet, row, 0, "row");
  keep_on_one_page(sheet, false);
  CHECK(!sheet.one_page);
}

TEST_CASE("a list of a station and shift stands on one page") {
  const HandPlan hand = hand_plan();
  const PlannedShop shop = hand.shop();
  const Workbook workbook = plan_workbook(shop);
  std::size_t lists = 0;
  for (const Sheet& sheet : workbook.sheets) {
    if (!sheet.name.starts_with("List ")) continue;
    const double room = page_height(sheet, shop.book.letter_paper);
    std::map<std::uint32_t, double> rows;
    for (const auto& [row, height] : row_heights(sheet)) rows[row] = height;
    std::vector<std::uint32_t> begins = sheet.page_breaks;
    begins.insert(begins.begin(), 0);
    begins.push_back(rows.rbegin()->first + 1);
    for (std::size_t page = 0; page + 1 < begins.size(); ++page, ++lists) {
      double height = page == 0 ? 0 : rows[heading_row];
      for (std::uint32_t row = begins[page]; row < begins[page + 1]; ++row)
        height += rows.contains(row) ? rows[row] : 15;
      CHECK(height <= room);
    }
    CHECK(print_scale(sheet, shop.book.letter_paper) >= 60);
  }
  CHECK(lists == shift_work(shop).lists.size());
}

TEST_CASE("no paper is made for work that is kept from the floor") {
  const HandPlan hand = hand_plan();
  const Workbook workbook = plan_workbook(hand.shop());
  const std::string joint = std::string(test::gated_joint).substr(std::string(test::gated_joint).rfind('/') + 1);
  std::size_t told = 0;
  for (const Sheet& sheet : workbook.sheets)
    for (const Cell& cell : sheet.cells) {
      const auto* text = std::get_if<std::string>(&cell.content);
      if (text == nullptr || text->find(joint) == std::string::npos) continue;
      CHECK_MESSAGE((sheet.name == "Day" || sheet.name == "Blocked and late"), sheet.name, ": ", *text);
      ++told;
    }
  CHECK(told == 2);
}

TEST_CASE("the workbook can be written: its sheets have legal names, each its own") {
  HandPlan hand = hand_plan();
  for (const std::size_t station : hand.work.stations)
    hand.book.stations[station].name = "a/station: with [a] name longer than sheets may have";
  const Workbook workbook = plan_workbook(hand.shop());
  std::set<std::string> names;
  for (const Sheet& sheet : workbook.sheets) CHECK(names.insert(sheet.name).second);
  CHECK_NOTHROW(check_writable(workbook));
}

TEST_CASE("a sheet's name is made legal and new") {
  const std::vector<Sheet> taken = {[] {
    Sheet sheet;
    sheet.name = "List st-1";
    return sheet;
  }()};
  CHECK(free_sheet_name(taken, "List ST-1") == "List ST-1 2");
  CHECK(free_sheet_name({}, "a/b") == "a-b");
  CHECK(free_sheet_name({}, "'x'") == "-x-");
  CHECK(free_sheet_name({}, "History") == "History-");
  CHECK(free_sheet_name({}, std::string(40, 'w')) == std::string(31, 'w'));
}

TEST_CASE("the cells of the bars agree with set-up, start and finish") {
  const HandPlan hand = hand_plan();
  const PlannedShop shop = hand.shop();
  const ShiftWork work = shift_work(shop);
  const Sheet bars = bars_page(shop, work.shifts, work.lists);
  const double step = static_cast<double>(bar_step(work.shifts).count()) * 60;
  std::map<std::string, double> tinted;
  for (const Cell& cell : bars.cells) {
    const bool busy = cell.look == Look::bar_set_up || cell.look == Look::bar_work || cell.look == Look::bar_other_work;
    const Cell* name = busy && cell.row > 3 ? cell_at(bars, cell.row, 0) : nullptr;
    if (name != nullptr) tinted[std::get<std::string>(name->content)] += step;
  }
  std::map<std::string, double> busy;
  for (const PlannedTask& task : hand.plan.tasks) {
    const ShopStation& station = hand.work.problem.stations[*way_of(shop, task).station];
    busy[station.name] += static_cast<double>(working_between(station.open, task.set_up, task.finish).count());
  }
  for (const auto& [station, seconds] : busy) CHECK(tinted[station] == doctest::Approx(seconds).epsilon(0.03));
}

TEST_CASE("weldments below the threshold have no traveller") {
  HandPlan hand = hand_plan();
  PlannedShop shop = hand.shop();
  const std::vector<Traveller> all = travellers_of(shop);
  REQUIRE(!all.empty());
  for (const Traveller& traveller : all) CHECK(traveller.labour >= shop.traveller_from);
  shop.traveller_from = {1e9};
  CHECK(travellers_of(shop).empty());
  CHECK(!traveller_page(shop).has_value());
}

TEST_CASE("a plan without tasks still has its first page") {
  HandPlan hand = hand_plan();
  hand.plan.tasks.clear();
  hand.plan.late.clear();
  const Workbook workbook = plan_workbook(hand.shop());
  CHECK_NOTHROW(check_writable(workbook));
  CHECK(sheet_called(workbook, "Day").name == workbook.sheets.front().name);
}

}  // namespace
}  // namespace seambook
