#include "sample_book.hpp"

#include <array>

namespace seambook {
namespace {

struct SampleRow {
  const char* name;
  double leg, length, metres_per_hour;
};
constexpr std::array<SampleRow, 5> sample_rows = {{{"Base frame to posts", 6, 4.8, 9.6},
                                                   {"Gussets", 5, 2.4, 12},
                                                   {"Drip tray, seal weld", 3, 7.2, 18},
                                                   {"Lifting lugs", 8, 0.96, 4.8},
                                                   {"Höhenverstellung / 高さ調整", 4, 1.2, 12}}};
constexpr double rate = 54;

Sheet rates_sheet() {
  Sheet sheet;
  sheet.name = "Rates";
  sheet.column_widths = {30, 14, 12, 14, 40};
  sheet.frozen_rows = 3;
  sheet.header = "Bracket & frame";
  sheet.footer = "12 brackets, revision B & C";
  const std::string money = "#,##0.00";
  sheet.cells = {
      {0, 0, "Rates", Look::title, ""},
      {1, 0, "Tinted cells may be changed; grey cells ask for another run.", Look::note, ""},
      {2, 0, "What", Look::heading, ""},
      {2, 1, "Value", Look::heading, ""},
      {2, 2, "Unit", Look::heading, ""},
      {2, 3, "In the rate book", Look::heading, ""},
      {2, 4, "Rests on", Look::heading, ""},
      {3, 0, "Labour, grade B", Look::text, ""},
      {3, 1, rate, Look::input, money},
      {3, 2, "EUR/h", Look::label, ""},
      {3, 3, rate, Look::figure, money},
      {3, 4, "shop accounts of last year, all burdens in", Look::wrapped, ""},
      {4, 0, "Margin", Look::text, ""},
      {4, 1, 0.18, Look::input, "0.0%"},
      {4, 2, "of price", Look::label, ""},
      {4, 3, 0.2, Look::figure, "0.0%"},
      {4, 4, "assumption", Look::wrapped, ""},
      {5, 0, "Pieces", Look::text, ""},
      {5, 1, 12.0, Look::input, "0"},
      {5, 2, "pieces", Look::label, ""},
      {5, 3, 12.0, Look::figure, "0"},
      {5, 4, "the customer's request", Look::wrapped, ""},
      {6, 0, "Procedure", Look::text, ""},
      {6, 1, "135-PB-6", Look::frozen, ""},
      {6, 4, "chosen by leg and position; a change reorders the work, so run again", Look::wrapped, ""},
      {8, 0, "The travel speed of the lifting lugs lies above what the deposition rate allows.", Look::warning, ""},
      {9, 0, "=1+1", Look::text, ""},
      {10, 0, "_x0041_ & <b>", Look::text, ""},
      {10, 1, Formula{"A11", "_x0041_ & <b>"}, Look::text, ""},
      {11, 0, "+A1", Look::text, ""},
      {12, 0, "@x", Look::text, ""},
  };
  sheet.merges = {{1, 0, 4}, {8, 0, 4}};
  sheet.validations = {{3, 1, 1, 500, false, "Between 1 and 500 EUR/h."},
                       {4, 1, 0, 0.95, false, "A share of the price, 0 to 95 %."},
                       {5, 1, 1, 10000, true, ""}};
  sheet.highlights = {{3, 5, 0, 4, "$B4<>$D4"}};
  return sheet;
}

Chart chart(ChartKind kind, std::uint32_t row, std::uint16_t column, const char* title) {
  Chart result;
  result.kind = kind;
  result.row = row;
  result.column = column;
  result.title = title;
  result.value_axis = "minutes";
  result.series = {{"Welding", "'Cost page'!$A$4:$A$8", "'Cost page'!$E$4:$E$8"},
                   {"Handling", "'Cost page'!$A$4:$A$8", "'Cost page'!$F$4:$F$8"}};
  if (kind == ChartKind::bar || kind == ChartKind::column) result.series.pop_back();
  result.width = 460;
  result.height = 215;
  return result;
}

// Per row: section = leg^2/2; welding minutes = length / speed x 60; handling a fifth of it plus 2; cost at the rate.
void add_cost_row(Sheet& sheet, std::uint32_t row, const SampleRow& given, double& sum) {
  const std::string at = std::to_string(row + 1);
  const double welding = given.length / given.metres_per_hour * 60, handling = welding / 5 + 2;
  const double cost = (welding + handling) / 60 * rate;
  sum += cost;
  sheet.cells.insert(
      sheet.cells.end(),
      {{row, 0, given.name, Look::text, ""},
       {row, 1, given.leg, Look::figure, "0.0"},
       {row, 2, Formula{"B" + at + "*B" + at + "/2", given.leg * given.leg / 2}, Look::figure, "0.0"},
       {row, 3, given.length, Look::figure, "0.00"},
       {row, 4, Formula{"D" + at + "/" + std::to_string(given.metres_per_hour) + "*60", welding}, Look::figure, "0.0"},
       {row, 5, Formula{"E" + at + "/5+2", handling}, Look::figure, "0.0"},
       {row, 6, Formula{"(E" + at + "+F" + at + ")/60*Labour_rate", cost}, Look::figure, "#,##0.00"},
       {row, 7, Formula{"IF(G" + at + ">40,\"large\",\"\")", cost > 40 ? std::string("large") : std::string()},
        Look::label, ""}});
}

Sheet cost_sheet() {
  Sheet sheet;
  sheet.name = "Cost page";
  sheet.column_widths = {34, 8, 10, 10, 10, 10, 12, 10};
  sheet.frozen_rows = 3;
  sheet.frozen_columns = 1;
  sheet.repeat_rows = {{0, 2}};
  sheet.landscape = true;
  sheet.header = "Cost page, not for the customer";
  sheet.cells = {{0, 0, "Cost of one frame", Look::title, ""}};
  const std::array<const char*, 8> headings = {"Joint",        "Leg, mm",       "Section, mm²", "Length, m",
                                               "Welding, min", "Handling, min", "Cost, EUR",    "Size"};
  for (std::uint16_t at = 0; at < headings.size(); ++at)
    sheet.cells.push_back({2, at, headings[at], Look::heading, ""});
  double sum = 0;
  for (std::uint32_t at = 0; at < sample_rows.size(); ++at) add_cost_row(sheet, 3 + at, sample_rows[at], sum);
  const std::string money = "#,##0.00";
  const double overhead = sum * 0.25, price = (sum + overhead) / (1 - 0.18);
  for (std::uint16_t at = 0; at < 8; ++at) {
    if (at != 0 && at != 6) sheet.cells.push_back({8, at, {}, Look::subtotal, ""});
    if (at != 0 && at != 6) sheet.cells.push_back({10, at, {}, Look::total, ""});
  }
  sheet.cells.insert(sheet.cells.end(), {{8, 0, "Labour", Look::subtotal, ""},
                                         {8, 6, Formula{"SUM(G4:G8)", sum}, Look::subtotal, money},
                                         {9, 0, "Overhead, a quarter of labour", Look::text, ""},
                                         {9, 6, Formula{"G9*0.25", overhead}, Look::figure, money},
                                         {10, 0, "Price at the margin of the rates page", Look::total, ""},
                                         {10, 6, Formula{"(G9+G10)/(1-Rates!$B$5)", price}, Look::total, money},
                                         {11, 0, "Rounded once, on the customer's page.", Look::note, ""}});
  sheet.charts = {chart(ChartKind::bar, 13, 0, "Welding time by joint"),
                  chart(ChartKind::stacked_bar, 13, 4, "Welding and handling"),
                  chart(ChartKind::column, 25, 0, "Welding time by joint"),
                  chart(ChartKind::line, 25, 4, "=Welding and handling")};
  return sheet;
}

}  // namespace

Workbook sample_book() {
  Workbook book;
  book.title = "Bracket quote";
  book.author = "Shop";
  book.subject = "sample";
  book.sheets = {rates_sheet(), cost_sheet()};
  book.names = {{"Labour_rate", "Rates!$B$4"}, {"Margin", "Rates!$B$5"}};
  return book;
}

}  // namespace seambook
