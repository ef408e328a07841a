#include "report/page_blocks.hpp"

#include "report/xlsx_heights.hpp"
#include "report/xlsx_page.hpp"

namespace seambook {
namespace {

using RowHeights = std::map<std::uint32_t, double>;

/// Of the rows from `first` on, before `end`; rows without cells are as tall as a line.
double height_between(const RowHeights& heights, std::uint32_t first, std::uint32_t end) {
  constexpr double empty_row = 15;
  double sum = empty_row * (end - first);
  for (const auto& [row, height] : heights)
    if (row >= first && row < end) sum += height - empty_row;
  return sum;
}

double repeated_height(const Sheet& sheet, const RowHeights& heights) {
  return sheet.repeat_rows ? height_between(heights, sheet.repeat_rows->first, sheet.repeat_rows->second + 1) : 0;
}

/// Whether each block has room on a page, the first one below what stands above it.
bool all_whole(const Sheet& sheet, const std::vector<PageBlock>& blocks, bool letter_paper) {
  const RowHeights heights = row_heights(sheet);
  if (heights.empty() || blocks.empty()) return true;
  const std::uint32_t rows = heights.rbegin()->first + 1;
  const double room = page_height(sheet, letter_paper);
  for (std::size_t b = 0; b < blocks.size(); ++b) {
    const double above = b == 0 ? height_between(heights, 0, blocks[b].row) : repeated_height(sheet, heights);
    const std::uint32_t end = b + 1 < blocks.size() ? blocks[b + 1].row : rows;
    if (above + height_between(heights, blocks[b].row, end) > room) return false;
  }
  return true;
}

}  // namespace

void break_pages(Sheet& sheet, const std::vector<PageBlock>& blocks, bool letter_paper) {
  const RowHeights heights = row_heights(sheet);
  if (heights.empty() || blocks.empty()) return;
  const std::uint32_t rows = heights.rbegin()->first + 1;
  const double room = page_height(sheet, letter_paper);
  const double repeated = repeated_height(sheet, heights);
  double filled = height_between(heights, 0, blocks.front().row);
  for (std::size_t b = 0; b < blocks.size(); ++b) {
    const double height = height_between(heights, blocks[b].row, b + 1 < blocks.size() ? blocks[b + 1].row : rows);
    const bool new_page = b > 0 && (blocks[b].own_page || filled + height > room);
    if (new_page) {
      sheet.page_breaks.push_back(blocks[b].row);
      filled = repeated;
    }
    filled += height;
  }
}

void widen_until_whole(Sheet& sheet, const std::vector<PageBlock>& blocks, std::span<const std::uint16_t> columns,
                       double most, bool letter_paper) {
  const std::vector<double> wanted = sheet.column_widths;
  for (double factor = 1; factor <= most; factor += 0.1) {
    for (const std::uint16_t column : columns) sheet.column_widths[column] = wanted[column] * factor;
    if (all_whole(sheet, blocks, letter_paper)) return;
  }
  sheet.column_widths = wanted;
}

void keep_on_one_page(Sheet& sheet, bool letter_paper) {
  constexpr double hardly_longer = 1.25;  // print is that much smaller then
  const RowHeights heights = row_heights(sheet);
  if (heights.empty()) return;
  const double height = height_between(heights, 0, heights.rbegin()->first + 1);
  sheet.one_page = height <= page_height(sheet, letter_paper) * hardly_longer;
}

}  // namespace seambook
