#include "report/day_page.hpp"

#include <fmt/format.h>

#include "report/day_parts.hpp"
#include "report/page_blocks.hpp"
#include "report/page_parts.hpp"
#include "schedule/instants.hpp"

namespace seambook {

ShiftWork shift_work(const PlannedShop& shop) {
  ShiftWork work;
  work.shifts = shifts_of(shop);
  work.lists = dispatch_lists(shop, work.shifts);
  work.fetched = fetch_list(shop, work.lists);
  return work;
}

Sheet day_page(const PlannedShop& shop, const ShiftWork& work) {
  Sheet sheet;
  sheet.name = "Day";
  const std::string day = work.shifts.empty() ? iso(shop.date) : day_word(work.shifts.front().span.from);
  put(sheet, 0, 0, fmt::format("{}: {}", shop.book.shop, day), Look::title);
  put_across(sheet, 1, 0, last_day_column,
             "Read first. Times are planned by the clock of the shop; the station lists have every row, with reasons.",
             Look::note);
  DayPage page{shop, work, sheet, heading_row - 1};
  put_kept_back(page);
  put_late_orders(page);
  put_remedies(page);
  put_moved(page);
  put_begun(page);
  put_welders(page);
  put_stops(page);
  put_away(page);
  put_to_fetch(page);
  put_set_up_saving(page);
  put_levels(page);
  sheet.column_widths = {28, 17, 17, 11, 11, 11, 18};
  sheet.frozen_rows = heading_row - 1;
  keep_on_one_page(sheet, shop.book.letter_paper);
  return sheet;
}

}  // namespace seambook
