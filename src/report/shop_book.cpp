#include "report/shop_book.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "quote/quote.hpp"
#include "report/bars_page.hpp"
#include "report/day_page.hpp"
#include "report/dispatch_page.hpp"
#include "report/fetch_page.hpp"
#include "report/kept_back_page.hpp"
#include "report/page_parts.hpp"
#include "report/plans_page.hpp"
#include "report/setups_page.hpp"
#include "report/task_words.hpp"
#include "report/traveller_page.hpp"

namespace seambook {
namespace {

/// User text stands in the name of the sheet, so it is made legal here.
void add_sheet(Workbook& workbook, Sheet sheet) {
  sheet.name = free_sheet_name(workbook.sheets, sheet.name);
  sheet.header = workbook.title;
  sheet.footer = sheet.name;
  workbook.sheets.push_back(std::move(sheet));
}

/// Calls f with the run of each station's entries; they stand by station.
template <class T, class F>
void each_station(const std::vector<T>& entries, F f) {
  for (std::size_t first = 0; first < entries.size();) {
    std::size_t end = first;
    while (end < entries.size() && entries[end].station == entries[first].station) ++end;
    f(std::span(entries).subspan(first, end - first));
    first = end;
  }
}

Sheet caution_page(const PlannedShop& shop) {
  Sheet sheet;
  sheet.name = "Cautions";
  put(sheet, 0, 0, "Cautions", Look::title);
  put(sheet, 1, 0, "For the processes of these jobs.", Look::note);
  std::vector<std::string> lines;
  for (const Job& job : shop.jobs)
    for (const std::string& line : cautions(shop.book, job)) add_new(lines, line);
  std::uint32_t row = heading_row - 1;
  for (const std::string& line : lines) put(sheet, row++, 0, line, Look::wrapped);
  sheet.column_widths = {100};
  return sheet;
}

}  // namespace

Workbook plan_workbook(const PlannedShop& shop) {
  Workbook workbook;
  workbook.title = fmt::format("Plan {}", iso(shop.date));
  workbook.author = shop.book.shop;
  workbook.letter_paper = shop.book.letter_paper;
  workbook.year = shop.date.year, workbook.month = shop.date.month, workbook.day = shop.date.day;
  const ShiftWork work = shift_work(shop);
  add_sheet(workbook, day_page(shop, work));
  if (!work.lists.empty()) add_sheet(workbook, bars_page(shop, work.shifts, work.lists));
  each_station(work.lists, [&](std::span<const DispatchList> lists) {
    add_sheet(workbook, dispatch_page(shop, work.shifts, lists));
  });
  each_station(set_ups_of(shop),
               [&](std::span<const PlannedSetUp> set_ups) { add_sheet(workbook, setups_page(shop, set_ups)); });
  if (std::optional<Sheet> travellers = traveller_page(shop)) add_sheet(workbook, *std::move(travellers));
  add_sheet(workbook, kept_back_page(shop));
  if (!work.fetched.empty()) add_sheet(workbook, fetch_page(shop, work.shifts, work.fetched));
  add_sheet(workbook, plans_page(shop));
  add_sheet(workbook, caution_page(shop));
  return workbook;
}

}  // namespace seambook
