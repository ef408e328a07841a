#include "report/workbook.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>

#include "basics/diagnostics.hpp"
#include "report/sheet_rows.hpp"

namespace seambook {
namespace {

std::string_view look_word(Look look) {
  switch (look) {
    case Look::text:
      return "text";
    case Look::wrapped:
      return "wrapped";
    case Look::title:
      return "title";
    case Look::heading:
      return "heading";
    case Look::label:
      return "label";
    case Look::figure:
      return "figure";
    case Look::input:
      return "input";
    case Look::frozen:
      return "frozen";
    case Look::subtotal:
      return "subtotal";
    case Look::total:
      return "total";
    case Look::note:
      return "note";
    case Look::warning:
      return "warning";
    case Look::box:
      return "box";
    case Look::band:
      return "band";
    case Look::bar_set_up:
      return "set-up bar";
    case Look::bar_work:
      return "work bar";
    case Look::bar_other_work:
      return "other work bar";
    case Look::bar_closed:
      return "closed";
  }
  return "?";
}

bool reference_letter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }
bool reference_digit(char c) { return c >= '0' && c <= '9'; }

// `A1`, `xfd20`, `R1C1`, `RC`: a formula would take these for a cell.
bool reads_as_cell(std::string_view name) {
  const auto letters = static_cast<std::size_t>(std::ranges::find_if_not(name, reference_letter) - name.begin());
  const bool a1 = letters >= 1 && letters <= 3 && letters < name.size() &&
                  std::ranges::all_of(name.substr(letters), reference_digit);
  const auto row_column_letter = [](char c) {
    return reference_digit(c) || c == 'R' || c == 'r' || c == 'C' || c == 'c';
  };
  return a1 || std::ranges::all_of(name, row_column_letter);
}

// A line break inside a cell would break the rule of one line a cell.
std::string quoted_content(std::string_view text) {
  std::string shown = "\"";
  for (const char c : text) {
    if (c == '\n') {
      shown += "\\n";
    } else {
      if (c == '"' || c == '\\') shown += '\\';
      shown += c;
    }
  }
  return shown + '"';
}

std::string content_text(const Cell& cell) {
  if (const auto* text = std::get_if<std::string>(&cell.content)) return quoted_content(*text);
  if (const auto* number = std::get_if<double>(&cell.content)) return fmt::format("{}", *number);
  if (const auto* formula = std::get_if<Formula>(&cell.content)) {
    const auto* number = std::get_if<double>(&formula->value);
    const std::string value =
        number ? fmt::format("{}", *number) : quoted_content(std::get<std::string>(formula->value));
    return fmt::format("={} -> {}", formula->text, value);
  }
  return "(blank)";
}

}  // namespace

bool same_rule(const Validation& a, const Validation& b) {
  const auto terms = [](const Validation& v) {
    return std::tie(v.column, v.minimum, v.maximum, v.whole, v.message, v.choices, v.anything, v.or_empty);
  };
  return terms(a) == terms(b);
}

std::string column_name(std::uint16_t column) { return column_letters(column + 1U); }

std::string cell_name(std::uint32_t row, std::uint16_t column, bool absolute) {
  const char* mark = absolute ? "$" : "";
  return fmt::format("{}{}{}{}", mark, column_name(column), mark, std::uint64_t{row} + 1);
}

std::string sheet_reference(const std::string& name) {
  const auto plain = [](char c) { return reference_letter(c) || reference_digit(c) || c == '_'; };
  if (!name.empty() && !reference_digit(name.front()) && std::ranges::all_of(name, plain) && !reads_as_cell(name)) {
    return name;
  }
  std::string quoted_name = "'";
  for (const char c : name) quoted_name.append(c == '\'' ? 2 : 1, c);
  return quoted_name + '\'';
}

std::string dump(const Workbook& workbook) {
  std::string text;
  for (const Sheet& sheet : workbook.sheets) {
    const std::string reference = sheet_reference(sheet.name);
    each_row(sheet, [&](RowCells cells) {
      for (const Cell* cell : cells)
        text += fmt::format("{}!{} {} {}\n", reference, cell_name(cell->row, cell->column), look_word(cell->look),
                            content_text(*cell));
    });
  }
  return text;
}

}  // namespace seambook
