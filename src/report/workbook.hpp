// A workbook as a value: sheets of cells with formulas and the values they show. Layout is tested as text (`dump`);
// report/xlsx.hpp turns it into a file.
// Rows and columns count from 0. A formula's text has no leading '='. User text is always a plain string, never a
// formula.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace seambook {

struct Formula {
  std::string text;
  std::variant<double, std::string> value = 0.0;  // shown until something recalculates
};

/// How a cell looks. `input`: may be changed by the estimator (unlocked, tinted); `frozen`: locked, "run again". `box`:
/// to be filled in on paper or here; `band`: heads the rows of one shift or set-up. The last four draw bars in cells.
enum class Look : std::uint8_t {
  text,
  wrapped,
  title,
  heading,
  label,
  figure,
  input,
  frozen,
  subtotal,
  total,
  note,
  warning,
  box,
  band,
  bar_set_up,
  bar_work,
  bar_other_work,
  bar_closed
};

struct Cell {
  std::uint32_t row = 0;
  std::uint16_t column = 0;
  std::variant<std::monostate, std::string, double, Formula> content;
  Look look = Look::text;
  std::string number_format;  // spreadsheet code, for example `0.00`; empty: general
};

/// What an input cell admits; shown as a message when the cell is selected or refused. With `choices` one of them, with
/// `anything` whatever is typed: the message is only shown then. `or_empty`: the cell may be left empty.
struct Validation {
  std::uint32_t row = 0;
  std::uint16_t column = 0;
  double minimum = 0, maximum = 1e9;
  bool whole = false;
  std::string message;                    // at most 255 characters
  std::vector<std::string> choices = {};  // together at most 255 characters, with a comma between; none holds a comma
  bool anything = false, or_empty = false;
  std::uint32_t last_row = 0;  // where the rule holds down to this row; cells without a rule may lie between
};

/// Whether two rules are one but for where they hold.
bool same_rule(const Validation&, const Validation&);

/// Cells whose row is tinted when `formula` (relative to the range's first cell) is true.
struct Highlight {
  std::uint32_t first_row = 0, last_row = 0;
  std::uint16_t first_column = 0, last_column = 0;
  std::string formula;
};

struct ChartSeries {
  std::string name, categories, values;  // ranges such as `Costs!$A$3:$A$9`
};
enum class ChartKind : std::uint8_t { bar, stacked_bar, column, line };
struct Chart {
  ChartKind kind = ChartKind::bar;
  std::uint32_t row = 0;
  std::uint16_t column = 0;
  std::string title, value_axis;
  std::vector<ChartSeries> series;
  double width = 640, height = 320;  // pixels
  bool overlapped = false;           // bars of all series on one line, to both sides of zero
};

/// An input cell whose value stands in one of the author's files.
struct LiveInput {
  std::uint32_t row = 0;
  std::uint16_t column = 0;
  std::uint32_t source = 0;  // SourceId
  double value = 0;          // as the cell shows it
  std::string words, unit;   // unit as the file would write it, with what follows the number: `EUR each`
  std::string of = {};       // what its row is about, where no cell of the sheet tells
};

struct Merge {
  std::uint32_t row = 0;
  std::uint16_t first_column = 0, last_column = 0;
};

/// Rows of a large page, made a block at a time when they are needed and let go, so that a page of a hundred thousand
/// joints is never held. Blocks come from the top; their rows lie between those that the sheet holds, not among them.
struct LaterRows {
  std::size_t blocks = 0;
  /// Appends a block's cells, none a heading. Refers to what the sheet was made from, which must outlive it.
  std::function<void(std::size_t block, std::vector<Cell>&)> make;
};

struct Sheet {
  std::string name;
  std::vector<Cell> cells;  // any order; no cell twice
  LaterRows later;
  std::vector<double> column_widths;
  std::vector<std::pair<std::uint32_t, double>> row_heights;  // points
  std::vector<Merge> merges;                                  // the leftmost cell's content spans the columns
  std::vector<Validation> validations;
  std::vector<Highlight> highlights;
  std::vector<LiveInput> live;
  std::vector<Chart> charts;
  std::uint32_t frozen_rows = 0;
  std::uint16_t frozen_columns = 0;
  std::uint16_t repeat_columns = 0;  // where one page across is too small to read: on both of two; 0: always one
  std::optional<std::pair<std::uint32_t, std::uint32_t>> repeat_rows;  // printed on every page
  std::vector<std::uint32_t> page_breaks;  // rows that begin a page, ascending; the print is scaled to the width
  bool landscape = false, locked = true;
  bool one_page = false;       // printed on one page, however tall
  std::string header, footer;  // plain text; the page number is added by the writer
};

/// A name for a cell, for example `Labour_rate` for `Rates!$C$5`.
struct DefinedName {
  std::string name, target;
};

struct Workbook {
  std::string title, author, subject;
  int year = 2026, month = 1, day = 1;  // creation date written into the file; never the clock
  bool letter_paper = false;            // else A4
  std::vector<Sheet> sheets;
  std::vector<DefinedName> names;
};

/// `A`, `B` ... `AA` for a column number.
std::string column_name(std::uint16_t column);
/// `C7`, or `$C$7` when absolute.
std::string cell_name(std::uint32_t row, std::uint16_t column, bool absolute = false);
/// A sheet name as formulas need it: quoted when it holds anything but letters, digits and underscores.
std::string sheet_reference(const std::string& name);
/// Text for tests: one line a cell, `Costs!B3 total =SUM(B2:B2) -> 12.34`, in sheet, row, column order.
std::string dump(const Workbook&);

}  // namespace seambook
