#include "report/price_steps.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "quote/lift.hpp"

namespace seambook {
namespace {

std::vector<const Figure*> figures_of(const QuoteInputs<double>& in) {
  std::vector<const Figure*> out;
  const auto add = [&](bool wanted, std::initializer_list<const Figure*> figures) {
    if (wanted) out.insert(out.end(), figures);
  };
  add(true, {&fig::quantity, &fig::lot_share});
  add(in.order.learning, {&fig::learning_factor, &fig::learning_effect});
  add(true, {&fig::unit_cost, &fig::contingency_cost, &fig::exact_price, &fig::unit_price, &fig::pieces_price,
             &fig::one_off_price});
  add(in.order.expedite_asked, {&fig::order_labour, &fig::expedite_cost, &fig::expedite_price});
  add(in.has_minimum, {&fig::supplement});
  add(in.order.has_freight && !in.order.freight_by_mass.empty(), {&fig::order_mass});
  add(in.order.has_freight, {&fig::freight_cost, &fig::freight_price});
  add(in.order.list_rounded, {&fig::list_rounding});
  add(true, {&fig::order_total});
  add(in.order.taxed, {&fig::tax, &fig::total_with_tax});
  add(true, {&fig::order_cost, &fig::order_margin});
  return out;
}

/// Overheads and totals of the costs, each in its column.
struct CostCell {
  const Figure* figure;
  std::uint16_t column;
};
constexpr CostCell overheads[] = {
    {&fig::overhead_each, cost_at::each}, {&fig::overhead_lot, cost_at::lot}, {&fig::overhead_once, cost_at::once}};
constexpr CostCell total_cells[] = {
    {&fig::total_each, cost_at::each}, {&fig::total_lot, cost_at::lot}, {&fig::total_once, cost_at::once}};
constexpr CostCell kinds[] = {
    {&fig::kind_each, cost_at::each}, {&fig::kind_lot, cost_at::lot}, {&fig::kind_once, cost_at::once}};

/// Kinds stand below each other, quantities beside each other; the policy stands on the rates page.
LeafFinder price_cells(const PriceRows& rows, const SharedCells& shared) {
  return [&rows, &shared](const Tape& tape, std::uint32_t node) -> std::optional<LeafText> {
    const Label& label = tape.labels[tape.nodes[node].label];
    const Figure* f = label.figure;
    const double unit = shown_in(shared.terms, *f).unit.si;
    for (const CostCell& cell : kinds)
      if (f == cell.figure) return LeafText{cell_name(cost_at::first_kind + label.row, cell.column, true), unit};
    for (const CostCell& cell : overheads)
      if (f == cell.figure) return LeafText{cell_name(rows.overhead, cell.column, true), unit};
    for (const CostCell& cell : total_cells)
      if (f == cell.figure) return LeafText{cell_name(rows.total, cell.column, true), unit};
    if (std::find(rows.order_figures.begin(), rows.order_figures.end(), f) != rows.order_figures.end())
      return LeafText{cell_name(rows.of(*f), cost_at::each, true), unit};
    if (std::find(rows.figures.begin(), rows.figures.end(), f) != rows.figures.end())
      return LeafText{cell_name(rows.of(*f), static_cast<std::uint16_t>(cost_at::each + label.row)), unit};
    if (const auto home = shared.cells.find(label.source); home != shared.cells.end()) return home->second;
    return std::nullopt;
  };
}

/// What the job adds to the costs: the mass of a piece off the weldments page, its own price of freight.
void put_order_terms(Sheet& sheet, const PriceRows& rows, const RateBook& book, const OrderTerms<Sourced>& order,
                     const std::string& piece_mass) {
  for (const Figure* figure : rows.order_figures) {
    const std::uint32_t row = rows.of(*figure);
    const Shown as = shown_in(book.terms, *figure);
    put(sheet, row, cost_at::words, heading_of(*figure, book.currency, book.terms));
    if (figure == &fig::mass_of_piece) {
      put_formula(sheet, row, cost_at::each, {piece_mass, order.piece_mass.si.value / as.unit.si}, as.decimals);
      continue;
    }
    put_number(sheet, row, cost_at::each, order.freight.si.value, as.decimals, Look::input);
    sheet.validations.push_back({row, cost_at::each, 0, 1e9, false, "freight, 0 or more"});
    sheet.live.push_back({row, cost_at::each, order.freight.si.source, order.freight.si.value, "freight",
                          book.currency + (order.freight_each ? " each" : " per lot")});
    put(sheet, row, cost_at::lot, order.freight_each ? "each piece" : "a lot", Look::note);
  }
}

/// With the unit model of learning the quantity decides a share that no cell computes.
void put_quantity(Sheet& sheet, const PriceRows& rows, std::uint16_t column, std::int64_t quantity,
                  std::size_t quantities, bool frozen) {
  const std::uint32_t row = rows.of(fig::quantity);
  put_number(sheet, row, column, static_cast<double>(quantity), 0, frozen ? Look::frozen : Look::input);
  if (frozen) return;
  sheet.validations.push_back({row, column, 1, 1e6, true, "pieces, 1 or more"});
  sheet.live.push_back(
      {row, column, no_source, static_cast<double>(quantity), fmt::format("{} of {}", column, quantities), {}});
}

void put_named_prices(Sheet& sheet, const PriceRows& rows, const SharedCells& shared, const Tape& tape) {
  const LeafFinder cells = price_cells(rows, shared);
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    const Label& label = tape.labels[tape.nodes[i].label];
    if (label.figure == nullptr) continue;
    const Shown as = shown_in(shared.terms, *label.figure);
    const double value = tape.nodes[i].value / as.unit.si;
    const auto column = static_cast<std::uint16_t>(cost_at::each + label.row);
    if (tape.nodes[i].op == Op::input && label.source == worked_out)
      put_number(sheet, rows.of(*label.figure), column, value, 2, Look::frozen);
    if (tape.nodes[i].op != Op::named) continue;
    const Formula text{formula(tape, i, as.unit.si, cells), value};
    for (const CostCell& cell : overheads)
      if (label.figure == cell.figure) put_formula(sheet, rows.overhead, cell.column, text, as.decimals);
    if (std::find(rows.figures.begin(), rows.figures.end(), label.figure) == rows.figures.end()) continue;
    const bool total = label.figure == &fig::order_total || label.figure == &fig::total_with_tax;
    put_formula(sheet, rows.of(*label.figure), column, text, as.decimals, total ? Look::total : Look::figure);
  }
}

}  // namespace

std::uint32_t PriceRows::of(const Figure& figure) const {
  const auto at = [&](const std::vector<const Figure*>& list) {
    return static_cast<std::uint32_t>(std::find(list.begin(), list.end(), &figure) - list.begin());
  };
  if (at(order_figures) < order_figures.size()) return order + at(order_figures);
  return heading + 1 + at(figures);
}

PriceRows price_rows(const QuoteInputs<double>& in) {
  PriceRows rows;
  rows.overhead = cost_at::first_kind + cost_kinds;
  rows.total = rows.overhead + (in.overhead_added ? 1 : 0);
  rows.order = rows.total + 2;
  if (in.order.has_freight)
    rows.order_figures = {in.order.freight_by_mass.empty() ? &fig::freight_rate : &fig::mass_of_piece};
  rows.heading = rows.order + 1 + static_cast<std::uint32_t>(rows.order_figures.size());
  rows.figures = figures_of(in);
  return rows;
}

void put_price_steps(Sheet& sheet, const PriceRows& rows, const RateBook& book,
                     const std::vector<std::int64_t>& quantities, const QuoteInputs<Sourced>& inputs,
                     const SharedCells& shared, const std::string& piece_mass) {
  put_order_terms(sheet, rows, book, inputs.order, piece_mass);
  put(sheet, rows.heading, cost_at::words, "Price, step by step", Look::heading);
  for (const Figure* figure : rows.figures) {
    const bool total = figure == &fig::order_total || figure == &fig::total_with_tax;
    put(sheet, rows.of(*figure), cost_at::words, heading_of(*figure, book.currency, book.terms),
        total ? Look::total : Look::text);
  }
  Tape tape;
  const QuoteInputs<Traced> in = lift_quote<Traced>(inputs, &tape);
  const CostFigures<Traced> cost = cost_figures(in);
  for (std::uint32_t q = 0; q < quantities.size(); ++q) {
    const auto column = static_cast<std::uint16_t>(cost_at::each + q);
    put(sheet, rows.heading, column, fmt::format("for {}", quantities[q]), Look::heading);
    put_quantity(sheet, rows, column, quantities[q], quantities.size(), in.order.unit_model);
    const Ratio<Sourced> pieces{{static_cast<double>(quantities[q]), summed}};
    price_figures(in, cost, lift<Traced>(pieces, fig::quantity, q, &tape), q);
  }
  put_named_prices(sheet, rows, shared, tape);
  if (in.overhead_added) put(sheet, rows.overhead, cost_at::words, "overhead on labour");
}

}  // namespace seambook
