#include "report/cost_page.hpp"

#include <fmt/format.h>

#include "report/cost_sums.hpp"
#include "report/edits_page.hpp"
#include "report/price_steps.hpp"

namespace seambook {
namespace {

void put_kinds(Sheet& sheet, const QuoteInputs<double>& in, const CostSums& sums, const std::string& currency) {
  put(sheet, cost_at::kinds_heading, cost_at::words, "Cost by kind", Look::heading);
  for (const auto& [column, figure] :
       {std::pair{cost_at::each, &fig::kind_each}, {cost_at::lot, &fig::kind_lot}, {cost_at::once, &fig::kind_once}})
    put(sheet, cost_at::kinds_heading, column, heading_of(*figure, currency), Look::heading);
  for (std::uint32_t k = 0; k < cost_kinds; ++k) {
    put(sheet, cost_at::first_kind + k, cost_at::words, cost_kind_words[k]);
    put_formula(sheet, cost_at::first_kind + k, cost_at::each, {sums.each[k], in.each[k].si}, 2);
    put_formula(sheet, cost_at::first_kind + k, cost_at::lot, {sums.lot[k], in.lot[k].si}, 2);
    put_formula(sheet, cost_at::first_kind + k, cost_at::once, {sums.once[k], in.once[k].si}, 2);
  }
}

/// A total is the sum of the cells above it, overhead included.
void put_total(Sheet& sheet, const PriceRows& rows, const CostFigures<double>& cost) {
  put(sheet, rows.total, cost_at::words, "together", Look::total);
  const std::pair<std::uint16_t, double> totals[] = {
      {cost_at::each, cost.each.si}, {cost_at::lot, cost.lot.si}, {cost_at::once, cost.once.si}};
  for (const auto& [column, value] : totals) {
    put_formula(
        sheet, rows.total, column,
        {fmt::format("SUM({}:{})", cell_name(cost_at::first_kind, column), cell_name(rows.total - 1, column)), value},
        2, Look::total);
  }
}

}  // namespace

CostPage cost_page(const RateBook& book, const Job& job, const Quote& quote, const ShopPages& pages,
                   const SharedCells& shared) {
  const PriceRows rows = price_rows(quote.inputs);
  CostPage page;
  Sheet& sheet = page.sheet;
  sheet.name = cost_sheet;
  put_title(sheet, fmt::format("Cost of {}", job.title.empty() ? job.name : job.title),
            "For the shop only: hours and margin stand here. Print the Quote page for the customer.");
  put(sheet, 2, 0, "these sheets are", Look::label);
  put_formula(sheet, 2, 1, {edits_state_cell, std::string(edits_none)}, 0, Look::label);
  put_kinds(sheet, quote.inputs, cost_sums(pages), book.currency);
  put_total(sheet, rows, quote.cost);
  put_price_steps(sheet, rows, book, job.quantities, quote.sourced, shared, weldment_sum(pages, fig::weldment_mass));
  sheet.column_widths = {44, 15, 15, 15, 13, 13, 13};
  sheet.frozen_rows = 3;
  constexpr std::size_t quantities_upright = 4;
  sheet.landscape = quote.prices.size() > quantities_upright;
  page.quantity_row = rows.of(fig::quantity);
  page.unit_price_row = rows.of(fig::unit_price);
  page.pieces_row = rows.of(fig::pieces_price);
  page.one_off_row = rows.of(fig::one_off_price);
  page.total_row = rows.of(fig::order_total);
  page.order_cost_row = rows.of(fig::order_cost);
  page.left_row = rows.of(fig::order_margin);
  for (const Figure* figure : rows.figures) page.price_rows[figure] = rows.of(*figure);
  return page;
}

}  // namespace seambook
