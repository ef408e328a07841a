#include "report/terminal.hpp"

#include <algorithm>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

std::string shown_text(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    const Character next = character_at(text, 0);
    if (next.valid && !is_control(next.code)) {
      shown.append(text.substr(0, next.bytes));
    } else {
      shown.push_back('?');
    }
    text.remove_prefix(next.bytes);
  }
  return shown;
}

using TableLine = std::vector<std::string>;

std::vector<std::size_t> table_widths(const std::vector<TableLine>& rows) {
  std::vector<std::size_t> widths;
  for (const TableLine& row : rows) {
    widths.resize(std::max(widths.size(), row.size()));
    for (std::size_t at = 0; at < row.size(); ++at) widths[at] = std::max(widths[at], display_width(row[at]));
  }
  return widths;
}

std::string table_line(const TableLine& row, const std::vector<std::size_t>& widths, const std::vector<bool>& right) {
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

std::string rule_line(const std::vector<std::size_t>& widths) {
  std::string line;
  for (std::size_t at = 0; at < widths.size(); ++at) line.append(at > 0 ? 2 : 0, ' ').append(widths[at], '-');
  line.erase(line.find_last_not_of(' ') + 1);
  return line + '\n';
}

}  // namespace

std::size_t display_width(std::string_view text) {
  std::size_t width = 0;
  while (!text.empty()) {
    const Character next = character_at(text, 0);
    width += next.valid ? display_width(next.code) : 1;
    text.remove_prefix(next.bytes);
  }
  return width;
}

std::string render(const TextTable& table) {
  std::vector<TableLine> lines;
  lines.push_back(table.headings);
  lines.insert(lines.end(), table.rows.begin(), table.rows.end());
  for (TableLine& line : lines) {
    for (std::string& cell : line) cell = shown_text(cell);
  }
  const auto widths = table_widths(lines);
  std::string text;
  if (!table.headings.empty()) text += table_line(lines.front(), widths, table.right_aligned) + rule_line(widths);
  for (std::size_t row = 0; row < table.rows.size(); ++row) {
    if (table.rule_before_row == row) text += rule_line(widths);
    text += table_line(lines[row + 1], widths, table.right_aligned);
  }
  return text;
}

}  // namespace seambook
