// How a sheet shows its numbers: as dates, as shares, with a unit behind. A number is read as the sheet shows it, at
// full precision: what the author sees is what counts.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "text/input_table.hpp"
#include "text/sheet_xml.hpp"

namespace seambook {

struct NumberLook {
  bool date = false, percent = false;
  std::string behind;  // words that the format adds: `mm`
};

/// What a format code such as `0.0" mm"` or `dd.mm.yyyy` does.
NumberLook number_look(std::string_view format_code);
/// The looks of a workbook by the style number of a cell; empty when the part cannot be read.
std::vector<NumberLook> number_looks(const std::string& styles_part);
/// A stored number as it is shown: `3.2`, `3.2 mm`, `20 %`, `2026-05-02`, `2026-05-02 06:30`, `06:30`; 15 digits at
/// most. `from_1904`: the workbook counts its days from then.
InputField shown_field(double number, const NumberLook&, bool from_1904);

}  // namespace seambook
