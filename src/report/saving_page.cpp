#include "report/saving_page.hpp"

#include <fmt/format.h>

#include <array>

#include "report/page_blocks.hpp"

namespace seambook {
namespace {

constexpr std::array sum_figures = {&fig::family_metres,     &fig::now_floor,   &fig::next_floor,
                                    &fig::next_burning,      &fig::now_labour,  &fig::now_other,
                                    &fig::now_equipment,     &fig::next_labour, &fig::next_other,
                                    &fig::fit_up_extra_cost, &fig::finish_saved};
constexpr std::array worth_figures = {&fig::metres_year,     &fig::minutes_saved, &fig::saved_loaded,
                                      &fig::saved_avoidable, &fig::saved_metre,   &fig::saved_year,
                                      &fig::worth_year,      &fig::suited_year,   &fig::burning_year};

struct SavingAt {
  enum SavingColumn : std::uint16_t { family, now, next, first_figure };
};

/// Sums of a way on the families page; other costs are all less labour and equipment.
struct WayCells {
  const WaysPage& page;
  std::uint32_t row = 0;

  std::string of(const Figure& figure) const {
    return fmt::format("{}!{}", families_sheet, cell_name(row, page.columns.at(&figure)));
  }
  std::string other() const { return of(fig::joint_cost) + "-" + of(fig::labour_cost) + "-" + of(fig::equipment_cost); }
  std::string at_labour(const Figure& minutes) const {
    return fmt::format("{}*{}/{}", of(minutes), of(fig::labour_cost), of(fig::attended));
  }
};

void put_heading(Sheet& sheet, std::uint32_t row, std::span<const Figure* const> figures, const RateBook& book) {
  std::uint16_t column = SavingAt::first_figure;
  for (const Figure* figure : figures)
    put(sheet, row, column++, heading_of(*figure, book.currency, book.terms), Look::heading);
}

/// The sums of a judged family as links to the families page, in the order of `sum_figures`.
std::array<std::string, sum_figures.size()> links_of(const WayCells& now, const WayCells& next) {
  return {now.of(fig::weld_length),
          now.of(fig::floor),
          next.of(fig::floor),
          next.of(fig::arc),
          now.of(fig::labour_cost),
          now.other(),
          now.of(fig::equipment_cost),
          next.of(fig::labour_cost),
          next.other(),
          next.at_labour(fig::fit_up_extra_min),
          now.at_labour(fig::finish_min) + "-" + next.at_labour(fig::finish_min)};
}

std::array<double, sum_figures.size()> values_of(const FamilyInputs<double>& in) {
  return {in.metres.si,    in.floor.si,       in.next_floor.si, in.next_burning.si, in.labour.si,      in.other.si,
          in.equipment.si, in.next_labour.si, in.next_other.si, in.fit_up_extra.si, in.finish_saved.si};
}

void put_links(const RateBook& book, const Comparison& comparison, const WaysPage& ways, std::size_t k, Sheet& sheet,
               std::uint32_t row) {
  const std::size_t f = comparison.both[k];
  const Judged& judged = comparison.judged[f];
  const WayCells now{ways, ways.rows[f][*judged.now]}, next{ways, ways.rows[f][*judged.next]};
  const auto links = links_of(now, next);
  const auto values = values_of(
      lift_family<double>(family_inputs(comparison.sums[f][*judged.now], comparison.sums[f][*judged.next]), 0));
  for (std::size_t i = 0; i < links.size(); ++i) {
    const Shown as = shown_in(book.terms, *sum_figures[i]);
    put_formula(sheet, row, static_cast<std::uint16_t>(SavingAt::first_figure + i), {links[i], values[i] / as.unit.si},
                as.decimals);
  }
}

void put_names(const RateBook& book, const Comparison& comparison, std::size_t k, Sheet& sheet, std::uint32_t row) {
  const Family& family = comparison.ways.families[comparison.both[k]];
  const Judged& judged = comparison.judged[comparison.both[k]];
  const auto process = [&](std::size_t way) {
    return process_word(book.processes[family.ways[way].process].number, book.terms);
  };
  put(sheet, row, SavingAt::family, family.words, Look::wrapped);
  put(sheet, row, SavingAt::now, process(*judged.now));
  put(sheet, row, SavingAt::next, process(*judged.next));
}

}  // namespace

SavingPage saving_page(const RateBook& book, const Comparison& comparison, const WaysPage& ways, NamedCells& cells) {
  SavingPage page;
  Sheet& sheet = page.sheet;
  sheet.name = saving_sheet;
  put_title(
      sheet, fmt::format("Saving by {}", book.investment->name),
      "Families that can be welded both ways; its own hour rate is left out, because its cost stands by the year.");
  put(sheet, heading_row, SavingAt::family, "for one piece", Look::heading);
  put(sheet, heading_row, SavingAt::now, "now", Look::heading);
  put(sheet, heading_row, SavingAt::next, "with it", Look::heading);
  put_heading(sheet, heading_row, sum_figures, book);
  const auto count = static_cast<std::uint32_t>(comparison.both.size());
  std::uint32_t row = heading_row + 1;
  std::vector<PageBlock> blocks = {{heading_row, false}};
  for (std::uint32_t k = 0; k < count; ++k, ++row) {
    put_names(book, comparison, k, sheet, row);
    put_links(book, comparison, ways, k, sheet, row);
    for (std::uint32_t i = 0; i < sum_figures.size(); ++i)
      cells[{sum_figures[i], k}] = {sheet.name, row, static_cast<std::uint16_t>(SavingAt::first_figure + i)};
  }
  for (std::uint32_t s = 0; s < comparison.scenarios.size(); ++s) {
    ++row;
    blocks.push_back({row, false});
    put(sheet, row, SavingAt::family, "scenario: " + comparison.scenarios[s].name, Look::heading);
    put(sheet, row, SavingAt::now, "now", Look::heading);
    put(sheet, row, SavingAt::next, "with it", Look::heading);
    put_heading(sheet, row, worth_figures, book);
    const std::uint32_t first = row + 1;
    for (std::uint32_t k = 0; k < count; ++k) {
      put_names(book, comparison, k, sheet, ++row);
      for (std::uint32_t i = 0; i < worth_figures.size(); ++i)
        cells[{worth_figures[i], s * count + k}] = {sheet.name, row,
                                                    static_cast<std::uint16_t>(SavingAt::first_figure + i)};
    }
    page.rows.emplace_back(first, row);
    ++row;
  }
  sheet.column_widths = {34, 8, 8};
  sheet.column_widths.resize(SavingAt::first_figure + sum_figures.size(), 12);
  sheet.frozen_columns = 1;
  sheet.landscape = true;
  break_pages(sheet, blocks, book.letter_paper);
  return page;
}

void put_saving(SavingPage& page, const Tape& tape, const NamedCells& cells, const SharedCells& shared) {
  put_named(page.sheet, cells, shared, tape);
}

std::string saving_sum(const SavingPage& page, const NamedCells& cells, const Figure& figure, std::size_t scenario,
                       std::size_t families) {
  const NamedCell& cell = cells.at({&figure, static_cast<std::uint32_t>(scenario * families)});
  return sum_of(saving_sheet, cell.column, page.rows[scenario].first, page.rows[scenario].second);
}

}  // namespace seambook
