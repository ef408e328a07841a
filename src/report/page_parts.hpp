// Parts that the pages of a plan share: headings in a row, bands, boxes to fill in, names for sheets.
#pragma once

#include <initializer_list>
#include <span>
#include <string>
#include <vector>

#include "report/cells.hpp"

namespace seambook {

/// Headings from the first column on; empty words give an empty heading.
void put_heading_row(Sheet&, std::uint32_t row, std::span<const char* const> words);
inline void put_heading_row(Sheet& sheet, std::uint32_t row, std::initializer_list<const char*> words) {
  put_heading_row(sheet, row, std::span(words.begin(), words.size()));
}
/// A line of text over the columns from `first` to `last`.
void put_across(Sheet&, std::uint32_t row, std::uint16_t first, std::uint16_t last, const std::string& text, Look);
/// Empty framed cells.
void put_boxes(Sheet&, std::uint32_t row, std::uint16_t first, std::uint16_t last);
/// A framed cell over several columns.
void put_wide_box(Sheet&, std::uint32_t row, std::uint16_t first, std::uint16_t last);
/// `SUM(F5:F9)` of the rows above `row` from `first` on, with its value.
void put_sum(Sheet&, std::uint32_t row, std::uint16_t column, std::uint32_t first, double value, int decimals);
void put_minutes(Sheet&, std::uint32_t row, std::uint16_t column, Time<>, int decimals);

/// `wanted` as a sheet may be called, and as no sheet of the workbook is: characters that are not allowed become `-`,
/// long names are cut, a number tells twins apart.
std::string free_sheet_name(const std::vector<Sheet>&, const std::string& wanted);

}  // namespace seambook
