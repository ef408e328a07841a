#include "report/rates_page.hpp"

#include <fmt/format.h>

#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::uint32_t rates_heading = 4;
struct RatesAt {
  enum RatesColumn : std::uint16_t { entry, what, value, unit_column, original, changed, basis, words };
};

Unit unit_of(const RateBook& book, const RateSource& source) { return shown_in(book.terms, source.unit).unit; }

double shown_value(const RateBook& book, const RateSource& source) {
  return shown_number(source.value, unit_of(book, source));
}

int decimals_of(double number) {
  for (int d = 0; d < 4; ++d) {
    if (round_decimal(number, d) == round_decimal(number, 4)) return d;
  }
  return 4;
}

}  // namespace

SharedCells rate_cells(const RateBook& book, const std::vector<SourceId>& used) {
  SharedCells cells;
  cells.terms = book.terms;
  cells.currency = book.currency;
  std::uint32_t row = rates_heading;
  for (const SourceId id : used) {
    cells.cells[id] = shown_leaf(std::string(rates_sheet) + "!" + cell_name(++row, RatesAt::value, true),
                                 unit_of(book, book.sources[id]));
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
    put(sheet, row, RatesAt::entry, source.entry, Look::wrapped);
    put(sheet, row, RatesAt::what, source.field);
    put_number(sheet, row, RatesAt::value, shown_value(book, source), decimals_of(shown_value(book, source)),
               source.frozen ? Look::frozen : Look::input);
    if (!source.frozen) {
      sheet.validations.push_back(admitted(row, RatesAt::value, source.limits, unit_of(book, source), source.field));
      sheet.live.push_back({row, RatesAt::value, id, shown_value(book, source),
                            fmt::format("{}: {}", source.entry, source.field),
                            unit_word(unit_of(book, source), book.currency)});
    }
    put(sheet, row, RatesAt::unit_column, unit_word(unit_of(book, source), book.currency));
    put_number(sheet, row, RatesAt::original, shown_value(book, source), decimals_of(shown_value(book, source)));
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
  sheet.column_widths = {32, 24, 12, 12, 14, 10, 16, 48};
  sheet.frozen_rows = rates_heading + 1;
  sheet.repeat_rows = {rates_heading, rates_heading};
  sheet.landscape = true;
  return sheet;
}

}  // namespace seambook
