#include "report/doubt_page.hpp"

#include <fmt/format.h>

#include <cmath>
#include <initializer_list>

#include "report/page_blocks.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t total_row = 2, drivers_heading = 5;
constexpr double charts_height = 290;     // pixels; with it what comes before the samples stands on one page
constexpr std::uint32_t chart_rows = 15;  // that it covers
struct DoubtAt {
  enum Column : std::uint16_t {
    input,
    low,
    quoted,
    high,
    unit_column,
    total_low,
    total_high,
    off_low,
    off_high,
    swing,
    basis
  };
};

std::string cells_down(std::uint16_t column, std::uint32_t first, std::uint32_t last) {
  return fmt::format("{}!{}:{}", doubt_sheet, cell_name(first, column, true), cell_name(last, column, true));
}

void put_driver_headings(Sheet& sheet, const std::string& currency) {
  const auto money = [&](const char* words) { return fmt::format("{} ({})", words, currency); };
  std::uint16_t column = 0;
  for (const std::string& words : std::initializer_list<std::string>{
           "what moves the total most", "low", "as quoted", "high", "unit", money("total at low"),
           money("total at high"), money("off at low"), money("off at high"), money("swing"), "rests on"})
    put(sheet, drivers_heading, column++, words, Look::heading);
}

void put_driver(const RateBook& book, const DoubtDriver& driver, Sheet& sheet, std::uint32_t row) {
  constexpr int input_decimals = 3;
  const Unit shown = shown_in(book.terms, driver.unit).unit;
  const int digits = book.minor_digits;
  put(sheet, row, DoubtAt::input, driver.words, Look::wrapped);
  put_number(sheet, row, DoubtAt::low, driver.low / shown.si, input_decimals, Look::frozen);
  put_number(sheet, row, DoubtAt::quoted, driver.quoted / shown.si, input_decimals, Look::frozen);
  put_number(sheet, row, DoubtAt::high, driver.high / shown.si, input_decimals, Look::frozen);
  put(sheet, row, DoubtAt::unit_column, unit_word(shown, book.currency));
  put_number(sheet, row, DoubtAt::total_low, driver.total_low.si, digits, Look::frozen);
  put_number(sheet, row, DoubtAt::total_high, driver.total_high.si, digits, Look::frozen);
  put(sheet, row, DoubtAt::basis, driver.basis);
}

/// Differences are formulas over the frozen totals, so that the bars can be taken apart.
void put_differences(const Doubt& doubt, const DoubtDriver& driver, int digits, Sheet& sheet, std::uint32_t row) {
  const std::string total = cell_name(total_row, DoubtAt::low, true);
  const auto off = [&](std::uint16_t column, std::uint16_t of, Money<> money) {
    put_formula(sheet, row, column, {fmt::format("{}-{}", cell_name(row, of), total), money.si - doubt.total.si},
                digits);
  };
  off(DoubtAt::off_low, DoubtAt::total_low, driver.total_low);
  off(DoubtAt::off_high, DoubtAt::total_high, driver.total_high);
  put_formula(sheet, row, DoubtAt::swing,
              {fmt::format("ABS({}-{})", cell_name(row, DoubtAt::total_high), cell_name(row, DoubtAt::total_low)),
               std::fabs(driver.total_high.si - driver.total_low.si)},
              digits);
}

void put_tornado(const std::string& currency, std::uint32_t first, std::uint32_t last, Sheet& sheet,
                 std::uint32_t row) {
  Chart chart;
  chart.row = row;
  chart.title = "What the total hangs on";
  chart.value_axis = "off the quoted total, " + currency;
  const std::string names = cells_down(DoubtAt::input, first, last);
  chart.series = {{"input at its low value", names, cells_down(DoubtAt::off_low, first, last)},
                  {"input at its high value", names, cells_down(DoubtAt::off_high, first, last)}};
  chart.overlapped = true;
  chart.width = 700;
  chart.height = charts_height;
  sheet.charts.push_back(std::move(chart));
}

/// Gives the row for the charts.
std::uint32_t put_drivers(const RateBook& book, const Doubt& doubt, Sheet& sheet) {
  put_driver_headings(sheet, book.currency);
  std::uint32_t row = drivers_heading + 1;
  if (doubt.drivers.empty()) {
    put(sheet, row, 0, "nothing moves the total", Look::note);
    return row + 2;
  }
  const std::uint32_t first = row;
  for (const DoubtDriver& driver : doubt.drivers) {
    put_driver(book, driver, sheet, row);
    put_differences(doubt, driver, book.minor_digits, sheet, row++);
  }
  put_tornado(book.currency, first, row - 1, sheet, row + 1);
  return row + 1;
}

void put_percentiles(const RateBook& book, const Doubt& doubt, Sheet& sheet, std::uint32_t& row) {
  std::uint16_t column = 0;
  for (const std::string& words : std::initializer_list<std::string>{
           fmt::format("all in doubt at once ({})", book.currency), "as quoted", "P10", "P50", "P80", "P90"})
    put(sheet, row, column++, words, Look::heading);
  const auto line = [&](const char* words, Money<> quoted, const Percentiles& p) {
    put(sheet, ++row, 0, words);
    column = 1;
    for (const double money : {quoted.si, p.p10, p.p50, p.p80, p.p90})
      put_number(sheet, row, column++, money, book.minor_digits, Look::frozen);
  };
  line("total of the order", doubt.total, doubt.totals);
  line("cost of the order, before contingency and margin", doubt.cost, doubt.costs);
  put(sheet, ++row, 0, "contingency that covers it (% of cost)");
  put_number(sheet, row, 1, book.prices.contingency.si.value / unit::percent.si, 1, Look::frozen);
  put_number(sheet, row, 4, doubt.contingency_p80.si / unit::percent.si, 1, Look::frozen);
  put_number(sheet, row, 5, doubt.contingency_p90.si / unit::percent.si, 1, Look::frozen);
  row += 1;
}

/// The table stands in `row`, its picture beside the other one.
void put_histogram(const RateBook& book, const Doubt& doubt, Sheet& sheet, std::uint32_t row, std::uint32_t chart_row) {
  const int digits = doubt.bar_width.si >= 1 ? 0 : book.minor_digits;
  put(sheet, row, 0, fmt::format("total from ({})", book.currency), Look::heading);
  put(sheet, row, 1, "samples", Look::heading);
  const std::uint32_t first = row + 1;
  for (std::size_t i = 0; i < doubt.bars.size(); ++i) {
    put_number(sheet, ++row, 0, round_decimal(doubt.bars_from.si + doubt.bar_width.si * static_cast<double>(i), digits),
               digits, Look::frozen);
    put_number(sheet, row, 1, static_cast<double>(doubt.bars[i]), 0, Look::frozen);
  }
  Chart chart;
  chart.kind = ChartKind::column;
  chart.row = chart_row;
  chart.column = DoubtAt::total_high;
  chart.title = fmt::format("Where the total lies, {} samples", doubt.samples);
  chart.value_axis = "samples";
  chart.series = {{"samples", cells_down(0, first, row), cells_down(1, first, row)}};
  chart.width = 470;
  chart.height = charts_height;
  sheet.charts.push_back(std::move(chart));
}

}  // namespace

std::string sampling_in_words(const Doubt& doubt) {
  if (!doubt.ranges_stated)
    return "No ranges are stated: each input is moved by 10 % either way, and nothing is sampled. A rate book with "
           "'ranges' tells how far figures may lie off.";
  return fmt::format(
      "{} inputs have a range. {} samples; in each, every input is drawn once for all rows that read it, from a "
      "triangular distribution about its value. Procedures, counts and order of work stay as quoted; margin, "
      "contingency and minimum charge are decisions and not in doubt.",
      doubt.inputs, doubt.samples);
}

std::string percentiles_in_words(const Doubt& doubt) {
  if (doubt.samples == 0) return {};
  return "P10: 10 of 100 samples are no higher. The contingency that covers P80 is the share by which the cost at P80 "
         "exceeds the cost as quoted: with it, 80 of 100 such orders cost no more than cost and contingency together.";
}

Sheet doubt_page(const RateBook& book, const Doubt& doubt) {
  Sheet sheet;
  sheet.name = doubt_sheet;
  put_title(sheet, fmt::format("Doubt: how far the total for {} may lie off", doubt.quantity),
            "As calculated: nothing here follows a change on the sheets; run again after one. Money before rounding.");
  put(sheet, total_row, DoubtAt::input, fmt::format("total as quoted ({})", book.currency), Look::label);
  put_number(sheet, total_row, DoubtAt::low, doubt.total.si, book.minor_digits, Look::frozen);
  put_wide(sheet, total_row + 1, sampling_in_words(doubt), Look::note);
  const std::uint32_t chart_row = put_drivers(book, doubt, sheet);
  std::uint32_t row = chart_row + (sheet.charts.empty() ? 1 : chart_rows);
  if (doubt.samples > 0) {
    put_percentiles(book, doubt, sheet, row);
    put_wide(sheet, row++, percentiles_in_words(doubt), Look::note);
    if (!doubt.bars.empty()) put_histogram(book, doubt, sheet, row + 1, chart_row);
  }
  sheet.column_widths = {44, 11, 11, 11, 11, 12, 12, 11, 11, 11, 16};
  sheet.landscape = true;
  if (!doubt.bars.empty()) break_pages(sheet, {{drivers_heading, false}, {row + 1, true}}, book.letter_paper);
  return sheet;
}

}  // namespace seambook
