#include "report/customer_page.hpp"

#include <fmt/format.h>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::uint16_t last_column = 4;

/// A label and its text over the rest of the line.
void put_line(Sheet& sheet, std::uint32_t& row, const std::string& label, const std::string& text) {
  if (text.empty()) return;
  put(sheet, row, 0, label, Look::label);
  put(sheet, row, 1, text, Look::wrapped);
  sheet.merges.push_back({row, 1, last_column});
  ++row;
}

/// Cells of the cost page, one for each quantity, with the value they show.
void put_prices(Sheet& sheet, std::uint32_t& row, const RateBook& book, const Quote& quote, const CostPage& cost) {
  const auto money = [&](const char* words) { return fmt::format("{} ({})", words, book.currency); };
  const std::vector<std::string> headings = {"quantity", money("unit price"), money("pieces"), money("one-offs"),
                                             money("total")};
  std::uint16_t at = 0;
  for (const std::string& heading : headings) put(sheet, row, at++, heading, Look::heading);
  sheet.repeat_rows = {row, row};
  for (std::uint32_t q = 0; q < quote.prices.size(); ++q) {
    ++row;
    const auto column = static_cast<std::uint16_t>(cost.first_quantity_column + q);
    const auto link = [&](std::uint32_t from) { return fmt::format("{}!{}", cost_sheet, cell_name(from, column)); };
    const PriceFigures<double>& f = quote.prices[q].figures;
    put_formula(sheet, row, 0, {link(cost.quantity_row), static_cast<double>(quote.prices[q].quantity)}, 0);
    put_formula(sheet, row, 1, {link(cost.unit_price_row), f.unit_price.si}, 2);
    put_formula(sheet, row, 2, {link(cost.pieces_row), f.pieces.si}, 2);
    put_formula(sheet, row, 3, {link(cost.one_off_row), f.one_offs.si}, 2);
    // The total may hold a supplement up to the minimum charge; it is said below.
    put_formula(sheet, row, 4, {link(cost.total_row), f.total.si}, 2, Look::subtotal);
  }
  row += 1;
}

void put_supplement(Sheet& sheet, std::uint32_t& row, const RateBook& book, const Quote& quote, const CostPage& cost) {
  if (!cost.supplement_row) return;
  const auto last = static_cast<std::uint16_t>(cost.first_quantity_column + quote.prices.size() - 1);
  const std::string range =
      fmt::format("{}!{}:{}", cost_sheet, cell_name(*cost.supplement_row, cost.first_quantity_column),
                  cell_name(*cost.supplement_row, last));
  bool any = false;
  for (const QuotePrice& price : quote.prices) any = any || price.figures.supplement.si > 0;
  const std::string words = fmt::format("Totals below the minimum charge ({}) are raised to it.", book.currency);
  put_formula(sheet, row, 0, {fmt::format("IF(SUM({})>0,\"{}\",\"\")", range, words), any ? words : std::string()}, 0,
              Look::note);
  ++row;
}

void put_list(Sheet& sheet, std::uint32_t& row, const std::string& heading, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  put(sheet, row++, 0, heading, Look::label);
  for (const std::string& line : lines) {
    put(sheet, row, 0, "– " + line, Look::wrapped);
    sheet.merges.push_back({row++, 0, last_column});
  }
}

/// What a piece consists of, in words.
std::vector<std::string> scope(const Job& job, Terms terms) {
  std::vector<std::string> lines;
  for (const Weldment& weldment : job.weldments) {
    std::string line = fmt::format("{:.0f} × {}", weldment.count.si.value, weldment.name);
    if (weldment.parts.si.source != no_source) line += fmt::format(", {:.0f} parts", weldment.parts.si.value);
    if (weldment.mass.si.source != no_source)
      line += fmt::format(", {} net each", shown(weldment.mass.si.value, shown_in(terms, unit::kg).unit));
    if (weldment.free_issue) line += ", material supplied by the customer";
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace

Sheet customer_page(const RateBook& book, const Job& job, const Quote& quote, const CostPage& cost) {
  Sheet sheet;
  sheet.name = quote_sheet;
  put(sheet, 0, 0, fmt::format("Quote {}", job.name), Look::title);
  std::uint32_t row = 1;
  put_line(sheet, row, "from", book.shop);
  put_line(sheet, row, "for", job.customer);
  put_line(sheet, row, "work", job.title);
  put_line(sheet, row, "revision", job.revision.empty() ? "0" : job.revision);
  put_line(sheet, row, "date", iso(quote.date));
  put_line(sheet, row, "valid until", iso(quote.valid_until));
  put_line(sheet, row, "drawings",
           job.drawings.empty() ? "none named" : fmt::format("{}", fmt::join(job.drawings, "; ")));
  put_line(sheet, row, "a piece is", fmt::format("{}", fmt::join(scope(job, book.terms), "; ")));
  ++row;
  put_prices(sheet, row, book, quote, cost);
  put_supplement(sheet, row, book, quote, cost);
  put_line(sheet, row, "lead time", job.lead_time.empty() ? "to be agreed on order" : job.lead_time);
  if (job.due) put_line(sheet, row, "wanted by", iso(*job.due));
  ++row;
  put_list(sheet, row, "Included", job.inclusions);
  put_list(sheet, row, "Not included", job.exclusions);
  put_list(sheet, row, "Qualifications", job.qualifications);
  ++row;
  put_line(sheet, row, "delivery", job.delivery.empty() ? book.prices.delivery : job.delivery);
  put_line(sheet, row, "payment", book.prices.payment);
  put_line(sheet, row, "tax", book.prices.tax);
  put_line(sheet, row, "rounding", "unit price rounded once, then multiplied");
  put_line(sheet, row, "standards",
           "no conformity with a code is claimed unless agreed in writing; qualified procedures and persons decide");
  sheet.column_widths = {16, 18, 18, 18, 20};
  sheet.footer = fmt::format("{}, quote {}", book.shop, job.name);
  return sheet;
}

}  // namespace seambook
