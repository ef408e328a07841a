// Where the numbers of an estimate stand on the sheets, and how formulas refer to them.
#pragma once

#include <map>

#include "quote/quote.hpp"
#include "report/workbook.hpp"
#include "trace/formula.hpp"

namespace seambook {

/// Column of a figure in a table whose rows run in step over one or several sheets.
struct ColumnPlace {
  std::string sheet;
  std::uint16_t column = 0;
};
struct Table {
  std::map<const Figure*, ColumnPlace> columns;
  std::uint32_t first_row = 0;
};

/// A number that several rows of a table take: an input in the first of them, a link to it in those below.
struct FirstInput {
  std::uint32_t row = 0;  // of the table, where its record begins
  LeafText cell;
};
/// The cells of shared inputs: the rate book's on the rates page, weldment counts on the weldments page.
struct SharedCells {
  Terms terms = Terms::iso;            // figures are shown in these terms' units
  std::map<SourceId, LeafText> cells;  // absolute references, with the unit each is shown in
  std::string currency;
  std::map<SourceId, FirstInput> first_inputs = {};

  /// The cell that a record which begins in `row` links to; nothing where the number is an input of its own.
  const LeafText* home(SourceId, std::uint32_t row) const;
};

class FormulaMemory;

inline constexpr std::uint32_t heading_row = 3;  // of a table page; its data follow
inline constexpr const char* rates_sheet = "Rates";

void put(Sheet&, std::uint32_t row, std::uint16_t column, std::string text, Look = Look::text);
void put_number(Sheet&, std::uint32_t row, std::uint16_t column, double value, int decimals, Look = Look::figure);
void put_formula(Sheet&, std::uint32_t row, std::uint16_t column, Formula, int decimals, Look = Look::figure);
/// A share that is already times 100, with its sign: `12.5 %`.
void put_share(Sheet&, std::uint32_t row, std::uint16_t column, Formula);
/// `#,##0.00`: thousands set apart, as the reader's language does it.
std::string number_format(int decimals);
/// `unit price (EUR)`: words and unit; the currency stands for ¤.
std::string heading_of(const Figure&, const std::string& currency, Terms = Terms::iso);
/// The unit and decimals that a figure has on the sheets.
Shown shown_in(Terms, const Figure&);
std::string unit_word(const Unit&, const std::string& currency);
/// `SUM(Labour!F5:F9)`.
std::string sum_of(const std::string& sheet, std::uint16_t column, std::uint32_t first, std::uint32_t last);
/// What a changed input has to keep, so that the sheet gives what a rerun would.
Validation admitted(std::uint32_t row, std::uint16_t column, const Limits&, const Unit&, std::string_view words);
/// A line of text over the first columns of the page.
void put_wide(Sheet&, std::uint32_t row, const std::string& text, Look);
/// Title and a line below it; every page begins so.
void put_title(Sheet&, const std::string& title, const std::string& below);

/// A record's names as cells of `table`, seen from `sheet`; row 0 of the labels stands in `row`. Named figures without
/// a column expand.
LeafFinder cells_of(const Table& table, const SharedCells& shared, std::string sheet, std::uint32_t row);
/// The same with rows called otherwise than by their numbers; `name_of` is given the label's.
LeafFinder cells_of(const Table& table, const SharedCells& shared, std::string sheet, std::uint32_t row,
                    std::function<std::string(std::uint32_t)> name_of);
/// Writes the cells that one record has on this sheet: named figures as formulas, inputs as links to shared cells or as
/// inputs of their own.
void put_record(Sheet&, const Table&, const SharedCells&, const Job&, const Tape&, std::uint32_t row);
/// The same with formulas from a memory of this table's and sheet's.
void put_record(Sheet&, const Table&, const SharedCells&, const Job&, const Tape&, std::uint32_t row, FormulaMemory&);
/// Only the inputs of its own.
void put_record_inputs(Sheet&, const Table&, const SharedCells&, const Job&, const Tape&, std::uint32_t row);

}  // namespace seambook
