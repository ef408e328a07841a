#include "report/order_page.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/material_totals.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t quantity_row = 2;
constexpr std::uint16_t quantity_column = 1;
struct OrderAt {
  enum Column : std::uint16_t {
    what,
    classification,
    unit,
    piece,
    order,
    pack,
    packs,
    to_order,
    price,
    money,
    columns
  };
};

/// A price of the rate book and the cell that shows it.
struct Price {
  LeafText cell;
  double si = 0;
};

/// One thing to buy. Amounts are in `unit`; a piece's is a formula.
struct Item {
  std::string what, classification;
  Unit unit;
  Formula piece;
  std::optional<double> pack;
  std::optional<Price> price;  // none when the rate book has none
};

struct OrderSheet {
  const RateBook& book;
  Sheet& sheet;
  double quantity = 1;
  std::uint32_t row = heading_row, first_row = heading_row + 1;
  double money = 0;
};

std::string materials_range(const JointPages& pages, std::uint16_t column) {
  return fmt::format("{}!{}:{}", materials_sheet, cell_name(pages.table.first_row, column, true),
                     cell_name(pages.last_row, column, true));
}

/// The sum of a figure's column over the rows that name the material, in `unit`.
Formula used_of(const OrderSheet& at, const JointPages& pages, std::uint16_t named_in, const Figure& figure,
                const Unit& unit, double si) {
  const double scale = shown_in(at.book.terms, figure).unit.si / unit.si;
  std::string text =
      fmt::format("SUMPRODUCT(--({}={}),{})", materials_range(pages, named_in), cell_name(at.row + 1, OrderAt::what),
                  materials_range(pages, pages.table.columns.at(&figure).column));
  if (scale != 1) text += "*" + formula_number(scale);
  return {text, si / unit.si};
}

void put_item(OrderSheet& at, const Item& item) {
  const std::uint32_t row = ++at.row;
  Sheet& sheet = at.sheet;
  const int decimals = 2;
  const double piece = std::get<double>(item.piece.value), order = piece * at.quantity;
  put(sheet, row, OrderAt::what, item.what, Look::wrapped);
  put(sheet, row, OrderAt::classification, item.classification, Look::wrapped);
  put(sheet, row, OrderAt::unit, item.unit.word);
  put_formula(sheet, row, OrderAt::piece, item.piece, 3);
  put_formula(
      sheet, row, OrderAt::order,
      {fmt::format("{}*{}", cell_name(row, OrderAt::piece), cell_name(quantity_row, quantity_column, true)), order},
      decimals);
  double to_order = order;
  std::string text = cell_name(row, OrderAt::order);
  if (item.pack) {
    const double packs = whole_up(order / *item.pack);
    put_number(sheet, row, OrderAt::pack, *item.pack, decimals, Look::frozen);
    put_formula(sheet, row, OrderAt::packs,
                {fmt::format("ROUNDUP({}/{}*{},0)", cell_name(row, OrderAt::order), cell_name(row, OrderAt::pack),
                             formula_number(1 - whole_tolerance)),
                 packs},
                0);
    to_order = packs * *item.pack;
    text = fmt::format("{}*{}", cell_name(row, OrderAt::packs), cell_name(row, OrderAt::pack));
  }
  put_formula(sheet, row, OrderAt::to_order, {text, to_order}, decimals);
  if (!item.price) return;
  const double scale = item.price->cell.scale * item.unit.si, price = item.price->si * item.unit.si;
  put_formula(
      sheet, row, OrderAt::price,
      {scale == 1 ? item.price->cell.text : fmt::format("{}*{}", item.price->cell.text, formula_number(scale)), price},
      4);
  put_formula(
      sheet, row, OrderAt::money,
      {fmt::format("{}*{}", cell_name(row, OrderAt::to_order), cell_name(row, OrderAt::price)), to_order * price}, 2);
  at.money += to_order * price;
}

template <Dim D>
std::optional<Price> price_of(const Known<D>& price, const SharedCells& shared) {
  const auto at = shared.cells.find(price.si.source);
  if (at == shared.cells.end()) return {};
  return Price{at->second, price.si.value};
}

const Filler& filler_named(const RateBook& book, const std::string& name) {
  return *std::ranges::find(book.fillers, name, &Filler::name);
}

void put_fillers(OrderSheet& at, const MaterialTotals& totals, const JointPages& joints, const SharedCells& shared) {
  const Unit kg = shown_in(at.book.terms, unit::kg).unit;
  for (const auto& [name, mass] : totals.fillers) {
    const Filler& filler = filler_named(at.book, name);
    std::optional<double> pack;
    if (filler.pack) pack = filler.pack->si / kg.si;
    put_item(at, {name, filler.classification, kg, used_of(at, joints, joints.words.filler, fig::filler, kg, mass.si),
                  pack, price_of(filler.price, shared)});
  }
  for (const auto& [name, mass] : totals.fluxes) {
    const Flux& flux = *std::ranges::find(at.book.fluxes, name, &Flux::name);
    put_item(at, {name, flux.classification, kg, used_of(at, joints, *joints.words.flux, fig::flux, kg, mass.si),
                  std::nullopt, price_of(flux.price, shared)});
  }
}

void put_gases(OrderSheet& at, const std::map<std::string, Volume<>>& used, std::uint16_t named_in,
               const Figure& figure, const char* words, const JointPages& joints, const SharedCells& shared) {
  const Unit volume = shown_in(at.book.terms, unit::l).unit;
  for (const auto& [name, amount] : used) {
    const Gas& gas = *std::ranges::find(at.book.gases, name, &Gas::name);
    put_item(at, {name, fmt::format("{}{}", gas.designation, words), volume,
                  used_of(at, joints, named_in, figure, volume, amount.si), std::nullopt, price_of(gas.price, shared)});
  }
}

/// Base metal that is bought by net mass over yield, a weldment a line.
void put_metal(OrderSheet& at, const Job& job, const Estimate& estimate, const WeldmentPage& page,
               const SharedCells& shared) {
  const Unit kg = shown_in(at.book.terms, unit::kg).unit;
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const Weldment& weldment = job.weldments[w];
    if (!weldment.metal_by_mass) continue;
    const BaseMetal& metal = at.book.base_metals[weldment.base_metal];
    const LeafText& yield = shared.cells.at(metal.yield.si.source);
    const std::string mass = fmt::format("{}!{}", weldments_sheet,
                                         cell_name(weldment_row(w), page.table.columns.at(&fig::weldment_mass).column));
    const double si = estimate.weldments[w].mass.si / metal.yield.si.value;
    put_item(at, {metal.name,
                  fmt::format("base metal of {}", weldment.name),
                  kg,
                  {fmt::format("{}/({}*{})", mass, yield.text, formula_number(yield.scale)), si / kg.si},
                  std::nullopt,
                  price_of(metal.price, shared)});
  }
}

/// Bought lines, in money only; what every piece takes counts with the quantity.
void put_bought(OrderSheet& at, const Job& job, const WeldmentPage& page) {
  std::uint32_t from = page.bought_first;
  const auto line = [&](const Bought& bought, double count) {
    const std::uint32_t row = ++at.row;
    put(at.sheet, row, OrderAt::what, bought.what, Look::wrapped);
    put(at.sheet, row, OrderAt::classification, "bought in");
    const bool each = bought.scaling == Scaling::each;
    const std::uint16_t column = each                                 ? bought_column::each
                                 : bought.scaling == Scaling::per_lot ? bought_column::lot
                                                                      : bought_column::once;
    std::string text = fmt::format("{}!{}", weldments_sheet, cell_name(from++, column));
    if (each) text += "*" + cell_name(quantity_row, quantity_column, true);
    const double money = bought.price.si.value * (each ? count * at.quantity : 1);
    put_formula(at.sheet, row, OrderAt::money, {text, money}, 2);
    at.money += money;
  };
  for (const Weldment& weldment : job.weldments)
    for (const Bought& bought : weldment.bought) line(bought, weldment.count.si.value);
  for (const Bought& bought : job.bought) line(bought, 1);
}

void put_headings(OrderSheet& at) {
  const std::string money = fmt::format("money ({})", at.book.currency);
  const std::array<std::string, OrderAt::columns> words = {
      "what",        "what it is",    "in",
      "for a piece", "for the order", "pack",
      "packs",       "to order",      fmt::format("price ({})", at.book.currency),
      money};
  for (std::uint16_t c = 0; c < OrderAt::columns; ++c) put(at.sheet, heading_row, c, words[c], Look::heading);
  at.sheet.column_widths = {34, 34, 6, 11, 12, 9, 8, 12, 12, 13};
  at.sheet.frozen_rows = heading_row + 1;
  at.sheet.repeat_rows = {heading_row, heading_row};
  at.sheet.landscape = true;
}

}  // namespace

Sheet order_page(const RateBook& book, const Job& job, const Estimate& estimate, const CostPage& cost,
                 const ShopPages& pages, const SharedCells& shared) {
  Sheet sheet;
  sheet.name = order_sheet;
  put_title(sheet, "Materials to order",
            "For the first quantity; fillers in whole packs. The price holds what is used.");
  OrderSheet at{book, sheet, static_cast<double>(job.quantities.front())};
  put(sheet, quantity_row, 0, "pieces", Look::label);
  put_formula(sheet, quantity_row, quantity_column,
              {fmt::format("{}!{}", cost_sheet, cell_name(cost.quantity_row, cost.first_quantity_column)), at.quantity},
              0);
  put_headings(at);
  const MaterialTotals totals = material_totals(book, job, estimate);
  put_fillers(at, totals, pages.joints, shared);
  put_gases(at, totals.gases, pages.joints.words.gas, fig::gas, "", pages.joints, shared);
  if (pages.joints.words.purge_gas)
    put_gases(at, totals.purge_gases, *pages.joints.words.purge_gas, fig::purge_gas, ", behind the weld", pages.joints,
              shared);
  put_metal(at, job, estimate, pages.weldments, shared);
  put_bought(at, job, pages.weldments);
  put(sheet, at.row + 1, OrderAt::what, "together", Look::total);
  put_formula(
      sheet, at.row + 1, OrderAt::money,
      {fmt::format("SUM({}:{})", cell_name(at.first_row, OrderAt::money), cell_name(at.row, OrderAt::money)), at.money},
      2, Look::total);
  return sheet;
}

}  // namespace seambook
