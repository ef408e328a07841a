#include "report/page_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "basics/utf8.hpp"

namespace seambook {
namespace {

constexpr std::size_t longest_sheet_name = 31;

/// At most so many characters as the format counts them: those outside the basic plane twice.
std::string cut_text(std::string_view text, std::size_t most) {
  std::string out;
  for (std::size_t length = 0; !text.empty();) {
    const Character next = character_at(text, 0);
    length += next.code > 0xFFFF ? 2 : 1;
    if (length > most) break;
    out.append(text.substr(0, next.bytes));
    text.remove_prefix(next.bytes);
  }
  return out;
}

/// Letters of ASCII in lower case: names that differ only in case are one to spreadsheet programs.
bool same_sheet_name(const std::string& a, const std::string& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
    return std::tolower(static_cast<unsigned char>(x)) == std::tolower(static_cast<unsigned char>(y));
  });
}

std::string allowed_sheet_name(std::string_view wanted) {
  std::string name;
  for (; !wanted.empty();) {
    const Character next = character_at(wanted, 0);
    const bool refused = !next.valid || is_control(next.code) || next.code == 0xFFFE || next.code == 0xFFFF ||
                         std::string_view("[]:*?/\\'").find(wanted.front()) != std::string_view::npos;
    name += refused ? std::string_view("-") : wanted.substr(0, next.bytes);
    wanted.remove_prefix(std::max<std::size_t>(next.bytes, 1));
  }
  return name.empty() || same_sheet_name(name, "history") ? name + "-" : name;
}

}  // namespace

void put_heading_row(Sheet& sheet, std::uint32_t row, std::span<const char* const> words) {
  std::uint16_t column = 0;
  for (const char* word : words) put(sheet, row, column++, word, Look::heading);
}

void put_across(Sheet& sheet, std::uint32_t row, std::uint16_t first, std::uint16_t last, const std::string& text,
                Look look) {
  put(sheet, row, first, text, look);
  if (first < last) sheet.merges.push_back({row, first, last});
}

void put_boxes(Sheet& sheet, std::uint32_t row, std::uint16_t first, std::uint16_t last) {
  for (std::uint16_t column = first; column <= last; ++column) sheet.cells.push_back({row, column, {}, Look::box, {}});
}

void put_wide_box(Sheet& sheet, std::uint32_t row, std::uint16_t first, std::uint16_t last) {
  sheet.cells.push_back({row, first, {}, Look::box, {}});
  if (first < last) sheet.merges.push_back({row, first, last});
}

void put_sum(Sheet& sheet, std::uint32_t row, std::uint16_t column, std::uint32_t first, double value, int decimals) {
  const std::string text = fmt::format("SUM({}:{})", cell_name(first, column), cell_name(row - 1, column));
  put_formula(sheet, row, column, {text, value}, decimals, Look::total);
}

void put_minutes(Sheet& sheet, std::uint32_t row, std::uint16_t column, Time<> time, int decimals) {
  put_number(sheet, row, column, time.si / unit::min.si, decimals);
}

std::string free_sheet_name(const std::vector<Sheet>& sheets, const std::string& wanted) {
  const std::string allowed = allowed_sheet_name(wanted);
  std::string name = cut_text(allowed, longest_sheet_name);
  const auto taken = [&](const Sheet& sheet) { return same_sheet_name(sheet.name, name); };
  for (int number = 2; std::any_of(sheets.begin(), sheets.end(), taken); ++number) {
    const std::string tail = fmt::format(" {}", number);
    name = cut_text(allowed, longest_sheet_name - tail.size()) + tail;
  }
  return name;
}

}  // namespace seambook
