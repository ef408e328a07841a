#include "report/shop_text.hpp"

#include <fmt/format.h>

#include "basics/utf8.hpp"
#include "report/day_page.hpp"
#include "report/dispatch_page.hpp"
#include "report/due_words.hpp"
#include "report/number_text.hpp"
#include "report/plan_levels.hpp"
#include "report/span_text.hpp"
#include "report/task_words.hpp"
#include "report/terminal.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

std::string whole_minutes(Time<> time) { return figure(time.si / unit::min.si, 0); }
std::string whole_minutes(std::int64_t seconds) { return figure(static_cast<double>(seconds) / 60, 0); }

std::string kept_back_text(const PlannedShop& shop, std::size_t columns) {
  TextTable table;
  table.headings = {"not to be started", "", "why, and what helps"};
  for (const KeptBack& kept : kept_back(shop))
    table.rows.push_back(
        {kept.what, std::string(kept_back_word(kept.kind)), kept.why + (kept.hint.empty() ? "" : "; " + kept.hint)});
  return table.rows.empty() ? "nothing is blocked\n\n" : render(table, columns) + "\n";
}

std::string late_text(const PlannedShop& shop, std::size_t columns) {
  TextTable table;
  table.headings = {"late order", "due", "done", "late by", "customer"};
  for (const LateOrder& late : shop.plan.late) {
    const ShopOrder& order = shop.work.problem.orders[late.order];
    table.rows.push_back({order.name, due_text(order), clock_word(late.finish), span_text(late.late),
                          shop.jobs[shop.work.job_of_order[late.order]].customer});
  }
  return table.rows.empty() ? "every order is done by its date\n\n" : render(table, columns) + "\n";
}

std::string remedies_text(const PlannedShop& shop, std::size_t columns) {
  std::string over;
  for (const std::string& line : overload_lines(shop)) append_printable(over, "over capacity: " + line), over += "\n";
  if (!over.empty()) over += "\n";
  if (shop.remedies.empty()) return over;
  TextTable table;
  table.headings = {"what would help", "late now", "late then", "price"};
  table.right_aligned = {false, false, false, true};
  for (const Remedy& remedy : shop.remedies)
    table.rows.push_back({remedy.what, span_text(Seconds(remedy.late_before)), span_text(Seconds(remedy.late_after)),
                          remedy.price ? money_text(remedy.price->si, shop.book.currency) : ""});
  return over + render(table, columns) + "\n";
}

/// All shifts of a station.
struct StationTable {
  TextTable table;
  Time<> change{}, labour{};
};

void add_list(const PlannedShop& shop, const PlanShift& shift, const DispatchList& list, StationTable& to) {
  for (const DispatchRow& row : list.rows) {
    const PlannedTask& task = shop.plan.tasks[row.parts.front().at];
    const TaskRef& ref = ref_of(shop, task);
    const bool first = &row == &list.rows.front(), sets_up = change_of(row).si > 0;
    to.table.rows.push_back({first ? shift.name : "", hour_word(row.parts.front().from), hour_word(row.parts.back().to),
                             people_words(shop, way_of(shop, task)),
                             shop.jobs[ref.job].name + "/" + lot_words(shop, ref) + ": " + row_work_words(shop, row),
                             sets_up ? whole_minutes(change_of(row)) : "", whole_minutes(labour_of(shop, row)),
                             task.reason});
    to.change = to.change + change_of(row);
    to.labour = to.labour + labour_of(shop, row);
  }
}

std::string stations_text(const PlannedShop& shop, std::size_t columns) {
  const ShiftWork work = shift_work(shop);
  std::string out;
  for (std::size_t s = 0; s < shop.work.problem.stations.size(); ++s) {
    StationTable station;
    station.table.headings = {"shift", "from", "to", "welder", "work", "set-up min", "floor min", "why here"};
    station.table.right_aligned = {false, false, false, false, false, true, true, false};
    for (const DispatchList& list : work.lists)
      if (list.station == s) add_list(shop, work.shifts[list.shift], list, station);
    if (station.table.rows.empty()) continue;
    station.table.rule_before_row = station.table.rows.size();
    station.table.rows.push_back(
        {"", "", "", "", "together", whole_minutes(station.change), whole_minutes(station.labour)});
    const Station& at = shop.book.stations[shop.work.stations[s]];
    append_printable(out, at.title.empty() ? at.name : at.name + ": " + at.title);
    out += "\n\n" + render(station.table, columns) + "\n";
  }
  return out;
}

std::string levels_text(const PlannedShop& shop, std::size_t columns) {
  TextTable table;
  table.headings = {"how good it is", "this plan", "no plan below", ""};
  table.right_aligned = {false, true, true, false};
  for (const ShownLevel& level : shown_levels(shop.plan))
    table.rows.push_back(
        {level.name, figure(level.value, 0), figure(level.bound, 0), level.proved ? "proved" : "open"});
  return table.rows.empty() ? std::string() : render(table, columns) + "\n";
}

std::string compared_text(const PlannedShop& shop, std::size_t columns) {
  TextTable table;
  table.headings = {"plan", "cannot be done", "late min", "set-up min", "fixture loads", "done"};
  table.right_aligned = {false, true, true, true, true, false};
  for (const OtherPlan& plan : compared_plans(shop))
    table.rows.push_back({plan.name, std::to_string(plan.levels.unplaced), whole_minutes(plan.levels.late),
                          whole_minutes(plan.levels.change), std::to_string(plan.levels.loads),
                          clock_word(shop.work.problem.start + Seconds(plan.levels.finish))});
  return render(table, columns);
}

}  // namespace

std::string plan_text(const PlannedShop& shop, std::size_t columns) {
  return kept_back_text(shop, columns) + late_text(shop, columns) + remedies_text(shop, columns) +
         stations_text(shop, columns) + levels_text(shop, columns) + compared_text(shop, columns);
}

}  // namespace seambook
