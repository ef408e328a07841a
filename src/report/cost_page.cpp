#include "report/cost_page.hpp"

#include <fmt/format.h>

#include "quote/lift.hpp"
#include "report/cost_sums.hpp"
#include "report/number_text.hpp"
#include "report/rates_page.hpp"

namespace seambook {
namespace {

/// Rows of the page, fixed before formulas refer to them.
struct CostRows {
  std::uint32_t overhead = 0, total = 0, price_heading = 0, first_price = 0;
  std::vector<const Figure*> price_figures;

  std::uint32_t of(const Figure& figure) const {
    for (std::uint32_t i = 0; i < price_figures.size(); ++i) {
      if (price_figures[i] == &figure) return first_price + i;
    }
    return first_price;
  }
};

CostRows rows_of(const QuoteInputs<double>& in) {
  CostRows rows;
  rows.overhead = cost_at::first_kind + cost_kinds;
  rows.total = rows.overhead + (in.overhead_added ? 1 : 0);
  rows.price_heading = rows.total + 3;
  rows.first_price = rows.price_heading + 1;
  rows.price_figures = {&fig::quantity,    &fig::lot_share,  &fig::unit_cost,    &fig::contingency_cost,
                        &fig::exact_price, &fig::unit_price, &fig::pieces_price, &fig::one_off_price};
  if (in.has_minimum) rows.price_figures.push_back(&fig::supplement);
  for (const Figure* figure : {&fig::order_total, &fig::order_cost, &fig::order_margin})
    rows.price_figures.push_back(figure);
  return rows;
}

/// Kinds stand below each other, quantities beside each other; the policy stands on the rates page.
LeafFinder cost_cells(const CostRows& rows, const SharedCells& shared) {
  return [&rows, &shared](const Tape& tape, std::uint32_t node) -> std::optional<LeafText> {
    const Label& label = tape.labels[tape.nodes[node].label];
    const Figure* f = label.figure;
    const auto fixed = [](std::uint32_t row, std::uint16_t column) {
      return LeafText{cell_name(row, column, true), 1};
    };
    if (f == &fig::kind_each) return fixed(cost_at::first_kind + label.row, cost_at::each);
    if (f == &fig::kind_lot) return fixed(cost_at::first_kind + label.row, cost_at::lot);
    if (f == &fig::kind_once) return fixed(cost_at::first_kind + label.row, cost_at::once);
    if (f == &fig::overhead_each) return fixed(rows.overhead, cost_at::each);
    if (f == &fig::overhead_lot) return fixed(rows.overhead, cost_at::lot);
    if (f == &fig::overhead_once) return fixed(rows.overhead, cost_at::once);
    if (f == &fig::total_each) return fixed(rows.total, cost_at::each);
    if (f == &fig::total_lot) return fixed(rows.total, cost_at::lot);
    if (f == &fig::total_once) return fixed(rows.total, cost_at::once);
    for (std::uint32_t i = 0; i < rows.price_figures.size(); ++i) {
      if (rows.price_figures[i] != f) continue;
      return LeafText{cell_name(rows.first_price + i, static_cast<std::uint16_t>(1 + label.row)), f->unit.si};
    }
    if (const auto home = shared.cells.find(label.source); home != shared.cells.end()) return home->second;
    return std::nullopt;
  };
}

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
void put_total(Sheet& sheet, const CostRows& rows, const CostFigures<double>& cost) {
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

/// The traced prices of all quantities, quantity q in row q of the labels.
void put_prices(Sheet& sheet, const CostRows& rows, const Job& job, const QuoteInputs<Sourced>& inputs,
                const SharedCells& shared, const std::string& currency) {
  put(sheet, rows.price_heading, cost_at::words, "Price, step by step", Look::heading);
  for (std::uint32_t i = 0; i < rows.price_figures.size(); ++i) {
    const Figure& figure = *rows.price_figures[i];
    const bool total = &figure == &fig::order_total;
    put(sheet, rows.first_price + i, cost_at::words, heading_of(figure, currency), total ? Look::total : Look::text);
  }
  const LeafFinder cells = cost_cells(rows, shared);
  Tape tape;
  const QuoteInputs<Traced> in = lift_quote<Traced>(inputs, &tape);
  const CostFigures<Traced> cost = cost_figures(in);
  for (std::uint32_t q = 0; q < job.quantities.size(); ++q) {
    const auto column = static_cast<std::uint16_t>(1 + q);
    put(sheet, rows.price_heading, column, fmt::format("for {}", job.quantities[q]), Look::heading);
    const Ratio<Sourced> pieces{{static_cast<double>(job.quantities[q]), summed}};
    put_number(sheet, rows.of(fig::quantity), column, pieces.si.value, 0, Look::input);
    sheet.validations.push_back({rows.of(fig::quantity), column, 1, 1e6, true, "pieces, 1 or more"});
    price_figures(in, cost, lift<Traced>(pieces, fig::quantity, q, &tape), q);
  }
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    if (tape.nodes[i].op != Op::named) continue;
    const Label& label = tape.labels[tape.nodes[i].label];
    const bool overhead = label.figure == &fig::overhead_each || label.figure == &fig::overhead_lot ||
                          label.figure == &fig::overhead_once;
    const bool price = !overhead && label.figure != &fig::total_each && label.figure != &fig::total_lot &&
                       label.figure != &fig::total_once;
    if (!overhead && !price) continue;
    const std::uint32_t row = overhead ? rows.overhead : rows.of(*label.figure);
    const std::uint16_t overhead_column = label.figure == &fig::overhead_each  ? cost_at::each
                                          : label.figure == &fig::overhead_lot ? cost_at::lot
                                                                               : cost_at::once;
    const std::uint16_t column = overhead ? overhead_column : static_cast<std::uint16_t>(1 + label.row);
    const Look look = label.figure == &fig::order_total ? Look::total : Look::figure;
    put_formula(sheet, row, column, {formula(tape, i, label.figure->unit.si, cells), tape.nodes[i].value},
                label.figure->decimals, look);
  }
  if (in.overhead_added) put(sheet, rows.overhead, cost_at::words, "overhead on labour");
}

}  // namespace

CostPage cost_page(const RateBook& book, const Job& job, const Estimate& estimate, const Quote& quote,
                   const ShopPages& pages, const SharedCells& shared) {
  const CostRows rows = rows_of(quote.inputs);
  CostPage page;
  Sheet& sheet = page.sheet;
  sheet.name = cost_sheet;
  put_title(sheet, fmt::format("Cost of {}", job.title.empty() ? job.name : job.title),
            "For the shop only: hours and margin stand here. Print the Quote page for the customer.");
  put(sheet, 2, 0, "rates", Look::label);
  put_formula(sheet, 2, 1, {rates_state_cell, std::string("as in the rate book")}, 0, Look::label);
  put_kinds(sheet, quote.inputs, cost_sums(pages), book.currency);
  put_total(sheet, rows, quote.cost);
  put_prices(sheet, rows, job, quote_inputs(book, job, estimate, quote.setups), shared, book.currency);
  sheet.column_widths = {44, 15, 15, 15, 13, 13, 13};
  sheet.frozen_rows = 3;
  sheet.landscape = true;
  page.quantity_row = rows.of(fig::quantity);
  page.unit_price_row = rows.of(fig::unit_price);
  page.pieces_row = rows.of(fig::pieces_price);
  page.one_off_row = rows.of(fig::one_off_price);
  page.total_row = rows.of(fig::order_total);
  page.order_cost_row = rows.of(fig::order_cost);
  page.left_row = rows.of(fig::order_margin);
  if (quote.inputs.has_minimum) page.supplement_row = rows.of(fig::supplement);
  return page;
}

}  // namespace seambook
