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

}  // namespace

void break_pages(Sheet& sheet, const std::vector<PageBlock>& blocks, bool letter_paper) {
  const RowHeights heights = row_heights(sheet);
  if (heights.empty() || blocks.empty()) return;
  const std::uint32_t rows = heights.rbegin()->first + 1;
  const double room = page_height(sheet, letter_paper);
  const double repeated =
      sheet.repeat_rows ? height_between(heights, sheet.repeat_rows->first, sheet.repeat_rows->second + 1) : 0;
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

}  // namespace seambook
