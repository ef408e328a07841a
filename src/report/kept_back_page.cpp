#include "report/kept_back_page.hpp"

#include <fmt/format.h>

#include "report/due_words.hpp"
#include "report/page_parts.hpp"
#include "report/span_text.hpp"
#include "report/task_words.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

constexpr std::uint16_t kept_columns = 6;

void put_kept_row(Sheet& sheet, std::uint32_t row, const KeptBack& kept) {
  put(sheet, row, 0, kept.what, Look::wrapped);
  const bool gate = kept.kind == KeptBack::Kind::gate;
  put(sheet, row, 1, std::string(kept_back_word(kept.kind)), gate ? Look::warning : Look::wrapped);
  put_across(sheet, row, 2, 3, kept.why, Look::wrapped);
  put_across(sheet, row, 4, 5, kept.hint, Look::wrapped);
}

void put_late_row(const PlannedShop& shop, Sheet& sheet, std::uint32_t row, const LateOrder& late) {
  const ShopOrder& order = shop.work.problem.orders[late.order];
  put(sheet, row, 0, order.name, Look::wrapped);
  put(sheet, row, 1, shop.jobs[shop.work.job_of_order[late.order]].customer, Look::wrapped);
  put(sheet, row, 2, due_text(order), Look::wrapped);
  put(sheet, row, 3, clock_word(late.finish), Look::wrapped);
  put(sheet, row, 4, span_text(late.late), late.late > shop.work.problem.tolerance ? Look::warning : Look::wrapped);
  put(sheet, row, 5, late.late > shop.work.problem.tolerance ? "" : "within what counts as on time", Look::wrapped);
}

void put_remedy_row(const PlannedShop& shop, Sheet& sheet, std::uint32_t row, const Remedy& remedy) {
  put_across(sheet, row, 0, 2, remedy.what, Look::wrapped);
  put(sheet, row, 3, span_text(Seconds(remedy.late_before)), Look::wrapped);
  put(sheet, row, 4, span_text(Seconds(remedy.late_after)), Look::wrapped);
  if (remedy.price)
    put_number(sheet, row, 5, remedy.price->si, shop.book.minor_digits, Look::frozen);
  else
    put(sheet, row, 5, "no price", Look::wrapped);
}

}  // namespace

Sheet kept_back_page(const PlannedShop& shop) {
  Sheet sheet;
  sheet.name = "Blocked and late";
  put_title(
      sheet, "Blocked and late",
      "Work that is kept from the floor or waits, with the reason; it stands on no list. Then orders behind their "
      "dates, and what would help.");
  std::uint32_t row = heading_row;
  put_heading_row(sheet, row++, {"what", "kind", "why", "", "what helps", ""});
  const std::vector<KeptBack> kept = kept_back(shop);
  for (const KeptBack& line : kept) put_kept_row(sheet, row++, line);
  if (kept.empty()) put_across(sheet, row++, 0, kept_columns - 1, "nothing", Look::label);
  put_heading_row(sheet, ++row, {"late order", "customer", "due", "done", "late by", ""});
  for (const LateOrder& late : shop.plan.late) put_late_row(shop, sheet, ++row, late);
  if (shop.plan.late.empty()) put_across(sheet, ++row, 0, kept_columns - 1, "nothing", Look::label);
  ++row;
  const std::vector<std::string> over = overload_lines(shop);
  if (!over.empty()) put_heading_row(sheet, ++row, {"over capacity", "", "", "", "", ""});
  for (const std::string& line : over) put_across(sheet, ++row, 0, kept_columns - 1, line, Look::wrapped);
  if (!shop.remedies.empty()) {
    put_heading_row(sheet, ++row, {"what would help", "", "", "late now", "late then", "price"});
    sheet.cells.back().content = fmt::format("price ({})", shop.book.currency);
    for (const Remedy& remedy : shop.remedies) put_remedy_row(shop, sheet, ++row, remedy);
  }
  sheet.column_widths = {28, 18, 22, 20, 20, 22};
  sheet.frozen_rows = heading_row;
  return sheet;
}

}  // namespace seambook
