// What a workbook must be for the spreadsheet library to write a file that opens without complaint. The library
// itself accepts NaN, broken UTF-8, illegal names and over-long formulas and then writes a damaged file.
#pragma once

#include <string>
#include <string_view>

#include "report/sheet_rows.hpp"

namespace seambook {

/// Throws std::invalid_argument naming the sheet and cell when the workbook cannot be written faithfully. Rows that
/// are made later are not looked at.
void check_writable(const Workbook&);
/// The same of a row of it.
void check_row(const Sheet&, RowCells, const RowMarks&);
/// The format reads `_x0041_` as an escaped `A`. Gives text that reads back as typed.
std::string escaped_text(std::string_view text);
/// As a property of the document, cut to what the format takes.
std::string property_text(std::string_view text);

}  // namespace seambook
