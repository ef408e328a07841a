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

constexpr std::size_t narrowest_column = 12;

std::size_t line_width(const std::vector<std::size_t>& widths) {
  std::size_t width = widths.empty() ? 0 : 2 * (widths.size() - 1);
  for (const std::size_t column : widths) width += column;
  return width;
}

std::size_t longest_word(std::string_view text) {
  std::size_t longest = 0;
  while (!text.empty()) {
    const std::size_t blank = std::min(text.find(' '), text.size());
    longest = std::max(longest, display_width(text.substr(0, blank)));
    text.remove_prefix(std::min(blank + 1, text.size()));
  }
  return longest;
}

/// How narrow each column may become: figures stay whole, with the words of their heading.
std::vector<std::size_t> least_widths(const std::vector<TableLine>& lines, const std::vector<bool>& right) {
  std::vector<std::size_t> least = table_widths({lines.begin() + 1, lines.end()});
  least.resize(std::max(least.size(), lines.front().size()));
  for (std::size_t at = 0; at < least.size(); ++at) {
    if (at >= right.size() || !right[at]) least[at] = narrowest_column;
    if (at < lines.front().size()) least[at] = std::max(least[at], longest_word(lines.front()[at]));
  }
  return least;
}

/// Makes columns narrower, always the widest that can give way, until a line fits or none can.
void narrow(std::vector<std::size_t>& widths, const std::vector<std::size_t>& least, std::size_t columns) {
  while (line_width(widths) > columns) {
    std::size_t widest = widths.size();
    for (std::size_t at = 0; at < widths.size(); ++at) {
      if (widths[at] > least[at] && (widest == widths.size() || widths[at] > widths[widest])) widest = at;
    }
    if (widest == widths.size()) return;
    --widths[widest];
  }
}

/// The words of a cell in lines of that width; a word that is wider is cut.
std::vector<std::string> cell_lines(std::string_view text, std::size_t width) {
  std::vector<std::string> lines(1);
  std::size_t used = 0;
  while (!text.empty()) {
    const std::size_t blank = std::min(text.find(' '), text.size());
    const std::size_t word = display_width(text.substr(0, blank));
    if (used > 0 && used + word > width) lines.emplace_back(), used = 0;
    for (std::string_view rest = text.substr(0, blank); !rest.empty();) {
      const Character next = character_at(rest, 0);
      const std::size_t wide = display_width(rest.substr(0, next.bytes));
      if (used > 0 && used + wide > width) lines.emplace_back(), used = 0;
      lines.back().append(rest.substr(0, next.bytes));
      used += wide;
      rest.remove_prefix(next.bytes);
    }
    if (blank < text.size() && used < width) lines.back() += ' ', ++used;
    text.remove_prefix(std::min(blank + 1, text.size()));
  }
  for (std::string& line : lines) line.erase(line.find_last_not_of(' ') + 1);
  return lines;
}

/// A row in as many lines as its highest cell takes.
std::string table_lines(const TableLine& row, const std::vector<std::size_t>& widths, const std::vector<bool>& right) {
  std::vector<TableLine> lines(1, TableLine(row.size()));
  for (std::size_t at = 0; at < row.size(); ++at) {
    if (display_width(row[at]) <= widths[at]) {
      lines.front()[at] = row[at];
      continue;
    }
    const std::vector<std::string> cell = cell_lines(row[at], widths[at]);
    if (cell.size() > lines.size()) lines.resize(cell.size(), TableLine(row.size()));
    for (std::size_t line = 0; line < cell.size(); ++line) lines[line][at] = cell[line];
  }
  std::string text;
  for (const TableLine& line : lines) text += table_line(line, widths, right);
  return text;
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

std::string wrapped(std::string_view text, std::size_t columns, std::size_t indent) {
  const std::size_t begin = std::min(text.find_first_not_of(' '), text.size());
  std::string out(text.substr(0, begin));
  text.remove_prefix(begin);
  std::size_t used = begin;
  while (!text.empty()) {
    const std::size_t room = std::max(columns, used + narrowest_column) - used;
    const std::vector<std::string> lines = cell_lines(text, room);
    out += lines.front() + "\n";
    if (lines.size() == 1) break;
    text.remove_prefix(lines.front().size());
    text.remove_prefix(std::min(text.find_first_not_of(' '), text.size()));
    used = indent;
    out.append(indent, ' ');
  }
  return out;
}

std::string render(const TextTable& table, std::size_t columns) {
  std::vector<TableLine> lines;
  lines.push_back(table.headings);
  lines.insert(lines.end(), table.rows.begin(), table.rows.end());
  for (TableLine& line : lines) {
    for (std::string& cell : line) cell = shown_text(cell);
  }
  auto widths = table_widths(lines);
  if (line_width(widths) > columns) narrow(widths, least_widths(lines, table.right_aligned), columns);
  std::string text;
  if (!table.headings.empty()) text += table_lines(lines.front(), widths, table.right_aligned) + rule_line(widths);
  for (std::size_t row = 0; row < table.rows.size(); ++row) {
    if (table.rule_before_row == row) text += rule_line(widths);
    text += table_lines(lines[row + 1], widths, table.right_aligned);
  }
  return text;
}

}  // namespace seambook
