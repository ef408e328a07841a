#include "report/terminal.hpp"

#include <algorithm>
#include <span>

#include "report/utf8.hpp"

namespace seambook {
namespace {

struct CodeRange {
  char32_t first, last;
};

// Characters that add nothing to the width: combining marks, joiners, variation selectors.
constexpr CodeRange zero_wide[] = {{0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD}, {0x064B, 0x065F},
                                   {0x0E34, 0x0E3A}, {0x0E47, 0x0E4E}, {0x1AB0, 0x1AFF}, {0x1DC0, 0x1DFF},
                                   {0x200B, 0x200F}, {0x20D0, 0x20FF}, {0x302A, 0x302D}, {0x3099, 0x309A},
                                   {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F}, {0xFEFF, 0xFEFF}, {0xE0100, 0xE01EF}};
// East Asian wide and full-width characters, and pictographs.
constexpr CodeRange double_wide[] = {{0x1100, 0x115F},   {0x2E80, 0x303E},   {0x3041, 0x33FF},   {0x3400, 0x4DBF},
                                     {0x4E00, 0x9FFF},   {0xA000, 0xA4CF},   {0xA960, 0xA97F},   {0xAC00, 0xD7A3},
                                     {0xF900, 0xFAFF},   {0xFE30, 0xFE6F},   {0xFF00, 0xFF60},   {0xFFE0, 0xFFE6},
                                     {0x1F300, 0x1F64F}, {0x1F680, 0x1F6FF}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD}};

bool within(std::span<const CodeRange> ranges, char32_t code) {
  return std::ranges::any_of(ranges, [&](CodeRange range) { return code >= range.first && code <= range.last; });
}

std::size_t character_width(char32_t code) {
  if (code < 0x300) return 1;
  return within(zero_wide, code) ? 0 : within(double_wide, code) ? 2 : 1;
}

std::string printable(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    const Character next = first_character(text);
    if (next.valid && !is_control(next.code)) {
      shown.append(text.substr(0, next.bytes));
    } else {
      shown.push_back('?');
    }
    text.remove_prefix(next.bytes);
  }
  return shown;
}

using Row = std::vector<std::string>;

std::vector<std::size_t> column_widths(const std::vector<Row>& rows) {
  std::vector<std::size_t> widths;
  for (const Row& row : rows) {
    widths.resize(std::max(widths.size(), row.size()));
    for (std::size_t at = 0; at < row.size(); ++at) widths[at] = std::max(widths[at], display_width(row[at]));
  }
  return widths;
}

std::string line_of(const Row& row, const std::vector<std::size_t>& widths, const std::vector<bool>& right) {
  std::string line;
  for (std::size_t at = 0; at < row.size(); ++at) {
    if (at > 0) line.append("  ");
    const std::string padding(widths[at] - display_width(row[at]), ' ');
    const bool at_right = at < right.size() && right[at];
    line.append(at_right ? padding + row[at] : row[at] + padding);
  }
  line.erase(line.find_last_not_of(' ') + 1);
  return line + '\n';
}

std::string rule(const std::vector<std::size_t>& widths) {
  std::string line;
  for (std::size_t at = 0; at < widths.size(); ++at) line.append(at > 0 ? 2 : 0, ' ').append(widths[at], '-');
  line.erase(line.find_last_not_of(' ') + 1);
  return line + '\n';
}

}  // namespace

std::size_t display_width(std::string_view text) {
  std::size_t width = 0;
  while (!text.empty()) {
    const Character next = first_character(text);
    width += next.valid ? character_width(next.code) : 1;
    text.remove_prefix(next.bytes);
  }
  return width;
}

std::string render(const TextTable& table) {
  std::vector<Row> lines;
  lines.push_back(table.headings);
  lines.insert(lines.end(), table.rows.begin(), table.rows.end());
  for (Row& line : lines) {
    for (std::string& cell : line) cell = printable(cell);
  }
  const auto widths = column_widths(lines);
  std::string text;
  if (!table.headings.empty()) text += line_of(lines.front(), widths, table.right_aligned) + rule(widths);
  for (std::size_t row = 0; row < table.rows.size(); ++row) {
    if (table.rule_before_row == row) text += rule(widths);
    text += line_of(lines[row + 1], widths, table.right_aligned);
  }
  return text;
}

}  // namespace seambook
