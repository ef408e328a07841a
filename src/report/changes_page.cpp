#include "report/changes_page.hpp"

#include <fmt/format.h>

#include "basics/utf8.hpp"
#include "report/cells.hpp"
#include "report/number_text.hpp"
#include "report/terminal.hpp"

namespace seambook {
namespace {

constexpr const char* order_in_words =
    "Each amount is what the total moved when that cause alone was changed over, in this order; what two causes do "
    "together falls to the later. Rates: the rate book but for its ways to weld. Procedure: these, and what the job "
    "says of process, procedure, position and passes.";

std::string then_in_words(const Changes& changes) {
  return fmt::format("quoted {} for {} (version {})", iso(changes.past_date), changes.past_quantity,
                     changes.past_version.empty() ? "unknown" : changes.past_version);
}

/// Gives the row after; the causes add up to the present total by formula.
std::uint32_t put_amounts(const RateBook& book, const Changes& changes, Sheet& sheet) {
  const int digits = book.minor_digits;
  std::uint32_t row = heading_row;
  put(sheet, row, 0, "cause", Look::heading);
  put(sheet, row, 1, fmt::format("amount ({})", book.currency), Look::heading);
  const std::uint32_t first = ++row;
  put(sheet, row, 0, then_in_words(changes));
  put_number(sheet, row, 1, changes.past_total.si, digits, Look::frozen);
  for (const CauseAmount& amount : changes.amounts) {
    put(sheet, ++row, 0, causes_in_words(amount.causes));
    put_number(sheet, row, 1, amount.amount.si, digits, Look::frozen);
  }
  put(sheet, ++row, 0, fmt::format("now, for {}", changes.quantity), Look::total);
  put_formula(sheet, row, 1, {fmt::format("SUM({}:{})", cell_name(first, 1), cell_name(row - 1, 1)), changes.total.si},
              digits, Look::total);
  for (const std::string& note : changes.notes) put_wide(sheet, ++row, note, Look::warning);
  return row + 2;
}

void put_items(const Changes& changes, Sheet& sheet, std::uint32_t row) {
  std::uint16_t column = 0;
  for (const char* words : {"what changed", "cause", "figure", "before", "now"})
    put(sheet, row, column++, words, Look::heading);
  for (const ChangedItem& item : changes.items) {
    put(sheet, ++row, 0, item.of, Look::wrapped);
    put(sheet, row, 1, cause_words[static_cast<std::size_t>(item.cause)]);
    put(sheet, row, 2, item.what, Look::wrapped);
    put(sheet, row, 3, item.before.empty() ? "-" : item.before, Look::wrapped);
    put(sheet, row, 4, item.after.empty() ? "-" : item.after, Look::wrapped);
  }
  if (changes.items.empty()) put(sheet, ++row, 0, "nothing that either quote reads", Look::note);
  if (changes.items_left_out > 0) put(sheet, ++row, 0, fmt::format("and {} more", changes.items_left_out), Look::note);
}

}  // namespace

Sheet changes_page(const RateBook& book, const Changes& changes) {
  Sheet sheet;
  sheet.name = changes_sheet;
  put_title(sheet, "Changes since the previous quote",
            "As calculated from the previous quote's own files; run again after a change.");
  put_wide(sheet, 2, order_in_words, Look::note);
  const std::uint32_t row = put_amounts(book, changes, sheet);
  put_items(changes, sheet, row);
  sheet.column_widths = {38, 16, 34, 30, 30};
  sheet.landscape = true;
  return sheet;
}

std::string changes_text(const RateBook& book, const Changes& changes, std::size_t columns) {
  const auto money = [&](Money<> m) { return figure(m.si, book.minor_digits); };
  TextTable table;
  table.headings = {"since the previous quote", "amount " + book.currency};
  table.right_aligned = {false, true};
  table.rows.push_back({then_in_words(changes), money(changes.past_total)});
  for (const CauseAmount& amount : changes.amounts)
    table.rows.push_back({causes_in_words(amount.causes), money(amount.amount)});
  table.rule_before_row = table.rows.size();
  table.rows.push_back({fmt::format("now, for {}", changes.quantity), money(changes.total)});
  std::string text = render(table, columns);
  for (const std::string& note : changes.notes) {
    append_printable(text, note);
    text += "\n";
  }
  return text;
}

}  // namespace seambook
