#include "report/material_totals.hpp"

#include <fmt/format.h>

namespace seambook {
namespace {

constexpr std::uint16_t name_column = 0, used_column = 3, money_column = 4;

/// Where a kind of material is named, and the figures that tell its use and money.
struct MaterialKind {
  const char* words;
  std::uint16_t named_in;
  const Figure& used;
  const Figure* money;  // none where a column holds the money of several kinds
};

std::string column_range(const JointPages& pages, std::uint16_t column) {
  return fmt::format("{}:{}", cell_name(pages.table.first_row, column, true), cell_name(pages.last_row, column, true));
}

/// The next free row of the materials page.
struct KindRows {
  const RateBook& book;
  JointPages& pages;
  std::uint32_t row = 0;
};

void put_sum(const KindRows& at, const MaterialKind& kind, const Figure& figure, std::uint16_t column, double si) {
  const Shown shown = shown_in(at.book.terms, figure);
  const std::string text =
      fmt::format("SUMPRODUCT(--({}={}),{})", column_range(at.pages, kind.named_in), cell_name(at.row, name_column),
                  column_range(at.pages, at.pages.table.columns.at(&figure).column));
  put_formula(at.pages.sheets[3], at.row, column, {text, si / shown.unit.si}, shown.decimals);
}

/// One row a name.
template <Dim D>
void put_kind(KindRows& at, const MaterialKind& kind, const std::map<std::string, Quantity<D>>& used,
              const std::map<std::string, Money<>>& money) {
  if (used.empty() || !at.pages.table.columns.contains(&kind.used)) return;
  Sheet& sheet = at.pages.sheets[3];
  put(sheet, at.row, name_column, kind.words, Look::heading);
  put(sheet, at.row, used_column, heading_of(kind.used, at.book.currency, at.book.terms), Look::heading);
  if (kind.money != nullptr)
    put(sheet, at.row, money_column, heading_of(*kind.money, at.book.currency, at.book.terms), Look::heading);
  for (const auto& [name, quantity] : used) {
    put(sheet, ++at.row, name_column, name);
    put_sum(at, kind, kind.used, used_column, quantity.si);
    if (kind.money != nullptr) put_sum(at, kind, *kind.money, money_column, money.at(name).si);
  }
  at.row += 2;
}

}  // namespace

MaterialTotals material_totals(const RateBook& book, const Job& job, const Estimate& estimate) {
  MaterialTotals totals;
  const auto add = [](auto& to, const auto& amount) { to = to + amount; };
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    for (std::size_t g = 0; g < job.joints[j].passes.size(); ++g) {
      const Procedure& procedure = book.procedures[job.joints[j].passes[g].procedure];
      const PassFigures<double>& figures = estimate.joints[j].passes[g];
      if (procedure.filler) {
        const std::string& name = book.fillers[*procedure.filler].name;
        add(totals.fillers[name], figures.filler), add(totals.filler_costs[name], figures.filler_cost);
      }
      if (procedure.flux) {
        const std::string& name = book.fluxes[*procedure.flux].name;
        add(totals.fluxes[name], figures.flux), add(totals.flux_costs[name], figures.flux_cost);
      }
      if (procedure.gas) add(totals.gases[book.gases[*procedure.gas].name], figures.gas);
      if (job.joints[j].purge)
        add(totals.purge_gases[book.gases[book.allowances.purge_gas.value()].name], figures.purge_gas);
    }
  }
  return totals;
}

void put_material_totals(const RateBook& book, const Job& job, const Estimate& estimate, JointPages& pages) {
  const MaterialTotals totals = material_totals(book, job, estimate);
  KindRows rows{book, pages, pages.last_row + 3};
  put_kind(rows, {"fillers", material_words::filler, fig::filler, &fig::filler_cost}, totals.fillers,
           totals.filler_costs);
  put_kind(rows, {"fluxes", material_words::flux, fig::flux, &fig::flux_cost}, totals.fluxes, totals.flux_costs);
  put_kind(rows, {"gases", material_words::gas, fig::gas, nullptr}, totals.gases, {});
  put_kind(rows, {"gases behind the weld", material_words::purge_gas, fig::purge_gas, nullptr}, totals.purge_gases, {});
}

}  // namespace seambook
