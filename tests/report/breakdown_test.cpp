// The pages for the shop foot: by weldment, by joint and by element they add up to what the quote has.
#include <doctest/doctest.h>

#include "quote/piece_totals.hpp"
#include "quoted.hpp"
#include "report/breakdown_page.hpp"
#include "report/overview_page.hpp"
#include "report/quote_book.hpp"
#include "report/sheet_rows.hpp"

using namespace seambook;

namespace {

double number_of(const Cell& cell) {
  if (const auto* formula = std::get_if<Formula>(&cell.content)) return std::get<double>(formula->value);
  return std::get<double>(cell.content);
}

/// The number beside a text in the first column, in rows below `after`.
double beside(const Sheet& sheet, std::string_view words, std::uint16_t column, std::string_view after = {}) {
  std::uint32_t begin = 0;
  for (const Cell& cell : sheet.cells) {
    const auto* text = std::get_if<std::string>(&cell.content);
    if (text != nullptr && cell.column == 0 && *text == after) begin = cell.row;
  }
  std::optional<std::uint32_t> row;
  for (const Cell& cell : sheet.cells) {
    const auto* text = std::get_if<std::string>(&cell.content);
    if (text != nullptr && cell.column == 0 && cell.row >= begin && *text == words && (!row || cell.row < *row))
      row = cell.row;
  }
  REQUIRE_MESSAGE(row.has_value(), words);
  for (const Cell& cell : sheet.cells)
    if (cell.row == *row && cell.column == column) return number_of(cell);
  FAIL("no number beside ", words);
  return 0;
}

const Sheet& sheet_of(const Workbook& workbook, std::string_view name) {
  for (const Sheet& sheet : workbook.sheets)
    if (sheet.name == name) return sheet;
  FAIL("no sheet ", name);
  return workbook.sheets.front();
}

}  // namespace

TEST_CASE("the pages for the shop foot with the quote") {
  constexpr std::uint16_t floor_column = 1, cost_column = 9;
  for (const char* file : {"bracket.yaml", "brewhouse-platform.yaml", "pipe-set.yaml", "wash-down-cabinet.yaml",
                           "marlgannet/machine-base.yaml", "marlgannet/coolant-tank.yaml", "saltbriar/ramp.yaml",
                           "saltbriar/tool-enclosure.yaml"}) {
    CAPTURE(file);
    const test::Quoted q = test::quoted(test::load_job(file));
    const Quote& quote = q.quote;
    Workbook workbook = quote_workbook(*q.loaded.book, *q.loaded.job, q.estimated, q.work, quote, q.loaded.diagnostics);
    hold_rows(workbook);
    const PieceTotals piece = piece_totals(*q.loaded.job, q.estimated, quote);

    const Sheet& breakdown = sheet_of(workbook, breakdown_sheet);
    const double each = sum_of_kinds(plain_money(quote.inputs.each));
    CHECK(beside(breakdown, "together", cost_column) == doctest::Approx(each).epsilon(1e-12));
    CHECK(beside(breakdown, "together", floor_column) == doctest::Approx(piece.floor.si / unit::h.si).epsilon(1e-12));
    CHECK(beside(breakdown, "together", cost_column, "by joint") ==
          doctest::Approx(welding_cost(piece.welding).si).epsilon(1e-12));
    CHECK(beside(breakdown, "floor time", 1) == doctest::Approx(piece.floor.si / unit::min.si).epsilon(1e-12));
    // What access and rest add is a part of the floor time, by factor nothing.
    const double rest = beside(breakdown, "what access and rest add", 1);
    CHECK(rest >= -1e-6);
    CHECK(rest < piece.floor.si / unit::min.si / 3);

    const Sheet& overview = sheet_of(workbook, overview_sheet);
    CHECK(beside(overview, "floor time of a piece", 1) == doctest::Approx(piece.floor.si / unit::h.si));
    CHECK(beside(overview, "set-ups of a lot", 1) == doctest::Approx(quote.setup_time.si / unit::h.si));
  }
}
