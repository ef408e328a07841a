// A sheet of a workbook (.xlsx) as a table. Its file is registered already, without text: the rows of the sheet become
// its text, so that messages can show them, and places count rows and columns of cells.
// Cells are read as the sheet shows them, at full precision: dates, shares and units of number formats included.
// Refused: what is locked, damaged, larger than anybody writes, or of another format; merged and unreadable cells.
#pragma once

#include "text/input_table.hpp"
#include "text/sheet_xml.hpp"

namespace seambook {

/// Whether a file is a workbook, or is called one: by its first bytes, else by its name.
bool is_workbook(std::string_view name, std::string_view bytes);
struct WantedSheet {
  std::string name;  // empty: the first that is not hidden
  Place place;       // where it is asked for
};

/// The first row with text holds the headings. Nothing when there is no such sheet or it holds no table. A row with a
/// cell that cannot be read is left out; all reasons are in the diagnostics.
std::optional<InputTable> parse_workbook(std::uint32_t file, std::string_view bytes, const WantedSheet&, Diagnostics&);
/// The same from parts that are unpacked already.
std::optional<InputTable> parse_workbook_parts(std::uint32_t file, const PartFinder&, const WantedSheet&, Diagnostics&);

}  // namespace seambook
