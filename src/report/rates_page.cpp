#include "report/rates_page.hpp"

#include <fmt/format.h>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t rates_heading = 4;
struct RatesAt {
  enum RatesColumn : std::uint16_t { entry, what, value, unit_column, original, changed, basis, words };
};

double in_unit(const RateSource& source) { return source.value / source.unit.si; }

int decimals_of(double number) {
  for (int d = 0; d < 4; ++d) {
    if (round_decimal(number, d) == round_decimal(number, 4)) return d;
  }
  return 4;
}

}  // namespace

SharedCells rate_cells(const RateBook& book, const std::vector<SourceId>& used) {
  SharedCells cells;
  std::uint32_t row = rates_heading;
  for (const SourceId id : used) {
    cells.cells[id] = {std::string(rates_sheet) + "!" + cell_name(++row, RatesAt::value, true),
                       book.sources[id].unit.si};
  }
  return cells;
}

Sheet rates_page(const RateBook& book, const std::vector<SourceId>& used) {
  Sheet sheet;
  sheet.name = rates_sheet;
  put_title(sheet, "Rates: what this quote reads from the rate book",
            "Tinted values may be changed and move every page; grey ones need a new run.");
  const std::uint32_t first = rates_heading + 1;
  const std::uint32_t last = rates_heading + static_cast<std::uint32_t>(used.size());
  const std::string values = fmt::format("{}:{}", cell_name(first, RatesAt::value), cell_name(last, RatesAt::value));
  const std::string originals =
      fmt::format("{}:{}", cell_name(first, RatesAt::original), cell_name(last, RatesAt::original));
  put(sheet, 2, RatesAt::entry, "this sheet is", Look::label);
  put_formula(sheet, 2, RatesAt::value,
              {fmt::format("IF(SUMPRODUCT(--({}<>{}))>0,\"differs from the rate book\",\"as in the rate book\")",
                           values, originals),
               std::string("as in the rate book")},
              0, Look::label);
  std::uint16_t column = 0;
  for (const char* heading :
       {"entry", "number", "value", "unit", "in the rate book", "changed", "rests on", "in words"})
    put(sheet, rates_heading, column++, heading, Look::heading);
  std::uint32_t row = first;
  for (const SourceId id : used) {
    const RateSource& source = book.sources[id];
    put(sheet, row, RatesAt::entry, source.entry);
    put(sheet, row, RatesAt::what, source.field);
    put_number(sheet, row, RatesAt::value, in_unit(source), decimals_of(in_unit(source)),
               source.frozen ? Look::frozen : Look::input);
    if (!source.frozen)
      sheet.validations.push_back(admitted(row, RatesAt::value, source.limits, source.unit, source.field));
    put(sheet, row, RatesAt::unit_column, unit_word(source.unit, book.currency));
    put_number(sheet, row, RatesAt::original, in_unit(source), decimals_of(in_unit(source)));
    put_formula(
        sheet, row, RatesAt::changed,
        {fmt::format("IF({}={},\"\",\"changed\")", cell_name(row, RatesAt::value), cell_name(row, RatesAt::original)),
         std::string()},
        0, Look::note);
    put(sheet, row, RatesAt::basis, std::string(basis_in_words(source.basis)));
    put(sheet, row, RatesAt::words, source.words + (source.frozen ? " (locked: run again)" : ""), Look::wrapped);
    ++row;
  }
  sheet.highlights.push_back(
      {first, last, RatesAt::entry, RatesAt::words,
       fmt::format("${}<>${}", cell_name(first, RatesAt::value), cell_name(first, RatesAt::original))});
  sheet.column_widths = {26, 26, 12, 12, 14, 10, 16, 48};
  sheet.frozen_rows = rates_heading + 1;
  sheet.repeat_rows = {rates_heading, rates_heading};
  sheet.landscape = true;
  return sheet;
}

}  // namespace seambook
