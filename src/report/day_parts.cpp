#include "report/day_parts.hpp"

#include "report/due_words.hpp"
#include "report/number_text.hpp"
#include "report/page_parts.hpp"
#include "report/plan_levels.hpp"
#include "report/span_text.hpp"
#include "schedule/instants.hpp"

namespace seambook {

void put_day_heading(DayPage& page, std::initializer_list<const char*> words) {
  put_heading_row(page.sheet, ++page.row, words);
  const auto last = static_cast<std::uint16_t>(words.size() - 1);
  if (last < last_day_column) page.sheet.merges.push_back({page.row, last, last_day_column});
  ++page.row;
}

void put_nothing(DayPage& page, const char* words) {
  put_across(page.sheet, page.row++, 0, last_day_column, words, Look::label);
}

void put_kept_back(DayPage& page) {
  put_day_heading(page, {"not to be started", "", "why, and what helps"});
  const std::vector<KeptBack> kept = kept_back(page.shop);
  for (const KeptBack& line : kept) {
    put(page.sheet, page.row, 0, line.what, Look::wrapped);
    const bool gate = line.kind == KeptBack::Kind::gate;
    put(page.sheet, page.row, 1, std::string(kept_back_word(line.kind)), gate ? Look::warning : Look::wrapped);
    put_across(page.sheet, page.row++, 2, last_day_column, line.why + (line.hint.empty() ? "" : "; " + line.hint),
               Look::wrapped);
  }
  if (kept.empty()) put_nothing(page, "nothing is blocked");
}

void put_late_orders(DayPage& page) {
  const PlannedShop& shop = page.shop;
  put_day_heading(page, {"late orders", "due", "done", "late by", "customer"});
  for (const LateOrder& late : shop.plan.late) {
    const ShopOrder& order = shop.work.problem.orders[late.order];
    put(page.sheet, page.row, 0, order.name, Look::wrapped);
    put(page.sheet, page.row, 1, due_text(order));
    put(page.sheet, page.row, 2, clock_word(late.finish));
    put(page.sheet, page.row, 3, span_text(late.late),
        late.late > shop.work.problem.tolerance ? Look::warning : Look::wrapped);
    put_across(page.sheet, page.row++, 4, last_day_column, shop.jobs[shop.work.job_of_order[late.order]].customer,
               Look::wrapped);
  }
  if (shop.plan.late.empty()) put_nothing(page, "every order is done by its date");
}

void put_remedies(DayPage& page) {
  const std::vector<std::string> over = overload_lines(page.shop);
  if (!over.empty()) put_day_heading(page, {"over capacity"});
  for (const std::string& line : over) put_across(page.sheet, page.row++, 0, last_day_column, line, Look::warning);
  if (page.shop.remedies.empty()) return;
  put_day_heading(page, {"what would help", "", "", "late now", "late then", "price"});
  for (const Remedy& remedy : page.shop.remedies) {
    put_across(page.sheet, page.row, 0, 2, remedy.what, Look::wrapped);
    put(page.sheet, page.row, 3, span_text(Seconds(remedy.late_before)));
    put(page.sheet, page.row, 4, span_text(Seconds(remedy.late_after)));
    put_across(page.sheet, page.row++, 5, last_day_column,
               remedy.price ? money_text(remedy.price->si, page.shop.book.currency) : "not known", Look::text);
  }
}

void put_moved(DayPage& page) {
  if (page.shop.moved.empty()) return;
  put_day_heading(page, {"moved", "was", "", "now", "", ""});
  for (const Moved& moved : page.shop.moved) {
    put(page.sheet, page.row, 0, page.shop.work.problem.tasks[moved.task].name, Look::wrapped);
    put_across(page.sheet, page.row, 1, 2, moved.from, Look::wrapped);
    put_across(page.sheet, page.row++, 3, last_day_column, moved.to, Look::wrapped);
  }
}

void put_set_up_saving(DayPage& page) {
  const std::vector<OtherPlan> plans = compared_plans(page.shop);
  put_day_heading(page, {"set-ups and lateness", "set-up (min)", "late (min)", "done"});
  for (const OtherPlan& plan : plans) {
    put(page.sheet, page.row, 0, plan.name, Look::wrapped);
    put_number(page.sheet, page.row, 1, static_cast<double>(plan.levels.change) / 60, 0);
    put_number(page.sheet, page.row, 2, static_cast<double>(plan.levels.late) / 60, 0);
    put_across(page.sheet, page.row++, 3, last_day_column,
               clock_word(page.shop.work.problem.start + Seconds(plan.levels.finish)), Look::text);
  }
}

void put_levels(DayPage& page) {
  put_day_heading(page, {"how good it is", "this plan", "no plan below", ""});
  for (const ShownLevel& level : shown_levels(page.shop.plan)) {
    put(page.sheet, page.row, 0, level.name, Look::wrapped);
    put_number(page.sheet, page.row, 1, level.value, 0);
    put_number(page.sheet, page.row, 2, level.bound, 0);
    put_across(
        page.sheet, page.row++, 3, last_day_column,
        level.proved ? "proved: no plan is better here" : "open: a better plan may exist; what follows is not judged",
        Look::wrapped);
  }
}

}  // namespace seambook
