#include "report/crossover_page.hpp"

#include <fmt/format.h>

#include "report/number_text.hpp"

namespace seambook {
namespace {

constexpr const char* crossover_sheet = "Crossover";

std::uint16_t column_of_curve(std::uint32_t curve) { return static_cast<std::uint16_t>(1 + curve); }

std::string curve_name(const RateBook& book, const CostCurve& curve) {
  return process_word(book.processes[curve.process].number, book.terms);
}

void put_curves_chart(Sheet& sheet, const RateBook& book, const Crossover& crossover, std::uint32_t last_row) {
  const auto range = [&](std::uint16_t column) {
    return fmt::format("{}!{}:{}", crossover_sheet, cell_name(heading_row + 1, column, true),
                       cell_name(last_row, column, true));
  };
  Chart chart{ChartKind::line, heading_row, 7, "Cost of a metre against thickness", "", {}, 620, 360};
  chart.value_axis = fmt::format("{} per {}", book.currency, shown_in(book.terms, unit::m).unit.word);
  for (std::uint32_t c = 0; c < crossover.curves.size(); ++c)
    chart.series.push_back({curve_name(book, crossover.curves[c]), range(0), range(column_of_curve(c))});
  sheet.charts.push_back(std::move(chart));
}

}  // namespace

std::vector<std::string> crossing_words(const RateBook& book, const Crossover& crossover) {
  std::vector<std::string> lines;
  const Shown in = shown_in(book.terms, unit::mm, 1);
  for (const Crossing& at : crossover.crossings)
    lines.push_back(fmt::format(
        "below {} {} {} is cheaper than {}, above it dearer", figure(at.thickness.si / in.unit.si, in.decimals),
        in.unit.word, curve_name(book, crossover.curves[at.below]), curve_name(book, crossover.curves[at.above])));
  if (lines.empty()) lines.emplace_back("no two processes change places in these thicknesses");
  return lines;
}

Sheet crossover_page(const RateBook& book, const Crossover& crossover) {
  Sheet sheet;
  sheet.name = crossover_sheet;
  put_title(sheet, "Crossover: " + crossover.words,
            "By the procedures of the rate book, equipment by the hour. As calculated; run again after a change.");
  const Shown in = shown_in(book.terms, unit::mm, 1);
  put(sheet, heading_row, 0, fmt::format("thickness ({})", in.unit.word), Look::heading);
  sheet.column_widths = {14};
  for (std::uint32_t c = 0; c < crossover.curves.size(); ++c) {
    put(sheet, heading_row, column_of_curve(c),
        fmt::format("{} ({}/{})", curve_name(book, crossover.curves[c]), book.currency,
                    shown_in(book.terms, unit::m).unit.word),
        Look::heading);
    sheet.column_widths.push_back(12);
  }
  std::uint32_t row = heading_row;
  for (std::size_t i = 0; i < crossover.thicknesses.size(); ++i) {
    put_number(sheet, ++row, 0, crossover.thicknesses[i].si / in.unit.si, in.decimals, Look::frozen);
    for (std::uint32_t c = 0; c < crossover.curves.size(); ++c) {
      if (const auto& cost = crossover.curves[c].cost[i])
        put_number(sheet, row, column_of_curve(c), cost->si * shown_in(book.terms, unit::m).unit.si, 2, Look::frozen);
    }
  }
  put_curves_chart(sheet, book, crossover, row);
  for (const std::string& line : crossing_words(book, crossover)) put_wide(sheet, ++row + 1, line, Look::note);
  sheet.landscape = true;
  return sheet;
}

}  // namespace seambook
