#include "report/fetch_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/number_text.hpp"
#include "report/page_parts.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

struct FetchAt {
  enum Column : std::uint16_t { shift, station, kind, name, amount, unit, packs, done };
};

std::string fetch_unit(const PlannedShop& shop, const Fetched& row) {
  const std::string word = fetched_shown(shop, row).unit.word;
  return word.empty() ? "pieces" : word;
}

void put_fetched(const PlannedShop& shop, Sheet& sheet, std::uint32_t row, const Fetched& of,
                 const std::string& shift) {
  const Shown as = fetched_shown(shop, of);
  put(sheet, row, FetchAt::shift, shift);
  put(sheet, row, FetchAt::station, shop.work.problem.stations[of.station].name);
  put(sheet, row, FetchAt::kind, of.kind);
  put(sheet, row, FetchAt::name, of.name, Look::wrapped);
  put_number(sheet, row, FetchAt::amount, of.amount / as.unit.si, as.decimals);
  put(sheet, row, FetchAt::unit, fetch_unit(shop, of));
  put(sheet, row, FetchAt::packs, pack_words(shop, of), Look::wrapped);
  put_boxes(sheet, row, FetchAt::done, FetchAt::done);
}

/// Sums by material over the rows above, as formulas.
void put_fetch_totals(const PlannedShop& shop, Sheet& sheet, std::uint32_t row, std::uint32_t last,
                      const std::vector<Fetched>& rows) {
  std::vector<Fetched> totals;
  for (const Fetched& of : rows) {
    const auto at = std::find_if(totals.begin(), totals.end(),
                                 [&](const Fetched& other) { return other.kind == of.kind && other.name == of.name; });
    if (at == totals.end())
      totals.push_back(of);
    else
      at->amount += of.amount;
  }
  std::stable_sort(totals.begin(), totals.end(), [](const Fetched& a, const Fetched& b) { return a.kind < b.kind; });
  const auto range = [&](std::uint16_t column) {
    return cell_name(heading_row + 1, column, true) + ":" + cell_name(last, column, true);
  };
  for (const Fetched& of : totals) {
    const Shown as = fetched_shown(shop, of);
    put(sheet, row, FetchAt::shift, "whole plan");
    put(sheet, row, FetchAt::kind, of.kind);
    put(sheet, row, FetchAt::name, of.name, Look::wrapped);
    put_formula(sheet, row, FetchAt::amount,
                {fmt::format("SUMPRODUCT(({}={})*({}={})*{})", range(FetchAt::kind), cell_name(row, FetchAt::kind),
                             range(FetchAt::name), cell_name(row, FetchAt::name), range(FetchAt::amount)),
                 of.amount / as.unit.si},
                as.decimals);
    put(sheet, row, FetchAt::unit, fetch_unit(shop, of));
    put(sheet, row++, FetchAt::packs, pack_words(shop, of), Look::wrapped);
  }
}

}  // namespace

Shown fetched_shown(const PlannedShop& shop, const Fetched& of) {
  const bool pieces = std::string_view(of.unit.word).empty(), litres = of.unit.si == unit::l.si;
  return pieces ? Shown{unit::none, 2} : shown_in(shop.book.terms, of.unit, litres ? 0 : 2);
}

std::string fetched_words(const PlannedShop& shop, const Fetched& of) {
  const Shown as = fetched_shown(shop, of);
  return fmt::format("{}{} {} {}", of.kind == "purge gas" ? "purge gas " : "", of.name,
                     figure(of.amount / as.unit.si, as.decimals), fetch_unit(shop, of));
}

std::string pack_words(const PlannedShop& shop, const Fetched& of) {
  if (of.pack <= 0) return {};
  const double packs = std::max(1.0, std::ceil(of.amount / of.pack - 1e-9));
  return fmt::format("{:.0f} of {}", packs, shown(of.pack, of.unit, shop.book.terms));
}

Sheet fetch_page(const PlannedShop& shop, const std::vector<PlanShift>& shifts, const std::vector<Fetched>& rows) {
  Sheet sheet;
  sheet.name = "To fetch";
  put_title(sheet, "To fetch",
            "What the planned work uses by the figures of the estimate, stub and loss in it. Packs are whole, what "
            "stands at the station counts against them.");
  put_heading_row(sheet, heading_row, {"shift", "station", "kind", "what", "amount", "unit", "packs", "fetched"});
  std::uint32_t row = heading_row + 1;
  for (const Fetched& of : rows) put_fetched(shop, sheet, row++, of, shifts[of.shift].name);
  if (!rows.empty()) put_fetch_totals(shop, sheet, row + 1, row - 1, rows);
  sheet.column_widths = {16, 12, 14, 24, 10, 8, 16, 12};
  sheet.frozen_rows = heading_row + 1;
  sheet.repeat_rows = {heading_row, heading_row};
  return sheet;
}

}  // namespace seambook
