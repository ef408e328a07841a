#include "report/xlsx_heights.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "report/terminal.hpp"

namespace seambook {
namespace {

constexpr double one_line = 15.75, line_pitch = 12.75, title_line = 24;  // points, for text of 10 points
constexpr double tallest_row = 409;                                      // the format's limit
constexpr double default_width = 8.43;                                   // of a column nobody gave a width
constexpr double letters_per_width = 1.05;  // a column is measured in digits; mixed text runs a little narrower

bool wraps_text(Look look) {
  return look == Look::wrapped || look == Look::heading || look == Look::note || look == Look::warning;
}

double spanned_width(const Sheet& sheet, std::uint16_t first, std::uint16_t last) {
  double width = 0;
  for (std::size_t at = first; at <= last; ++at) {
    width += at < sheet.column_widths.size() ? sheet.column_widths[at] : default_width;
  }
  return width;
}

// Lines that `text` takes in a column of that width; rather one too many than one too few.
double lines_needed(std::string_view text, double width) {
  const double letters = std::max(1.0, width * letters_per_width - 1);
  double lines = 0;
  while (true) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    lines += std::max(1.0, std::ceil(static_cast<double>(display_width(text.substr(0, end))) / letters));
    if (end == text.size()) return lines;
    text.remove_prefix(end + 1);
  }
}

std::string_view shown_words(const Cell& cell) {
  if (const auto* text = std::get_if<std::string>(&cell.content)) return *text;
  const auto* formula = std::get_if<Formula>(&cell.content);
  const auto* shown = formula != nullptr ? std::get_if<std::string>(&formula->value) : nullptr;
  return shown != nullptr ? std::string_view(*shown) : std::string_view();
}

void add_need(double& height, const Sheet& sheet, const Cell& cell, const Merge* merge) {
  if (cell.look == Look::title) height = std::max(height, title_line);
  if (!wraps_text(cell.look)) return;
  const std::uint16_t last = merge != nullptr ? merge->last_column : cell.column;
  const double lines = lines_needed(shown_words(cell), spanned_width(sheet, cell.column, last));
  if (lines > 1) height = std::max(height, std::min(tallest_row, one_line + (lines - 1) * line_pitch));
}

}  // namespace

double row_height(const Sheet& sheet, RowCells cells, const RowMarks& marks) {
  if (marks.height) return *marks.height;
  double height = one_line;
  for (const Cell* cell : cells) {
    const auto merge = std::ranges::find(marks.merges, cell->column, &Merge::first_column);
    add_need(height, sheet, *cell, merge == marks.merges.end() ? nullptr : &*merge);
  }
  return height;
}

std::map<std::uint32_t, double> row_heights(const Sheet& sheet) {
  const std::map<std::uint32_t, RowMarks> marks = row_marks(sheet);
  std::map<std::uint32_t, double> heights;
  for (const auto& [row, mark] : marks)
    if (mark.height) heights[row] = *mark.height;
  each_held_row(sheet, [&](RowCells cells) {
    const std::uint32_t row = cells.front()->row;
    heights[row] = row_height(sheet, cells, marks_of(marks, row));
  });
  return heights;
}

}  // namespace seambook
