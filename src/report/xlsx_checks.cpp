#include "report/xlsx_checks.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <optional>
#include <set>
#include <stdexcept>
#include <utility>

#include "basics/utf8.hpp"
#include "report/xlsx_names.hpp"

namespace seambook {
namespace {

// Limits of the file format.
constexpr std::uint32_t row_limit = 1048576;
constexpr std::uint16_t column_limit = 16384;
constexpr std::size_t text_limit = 32767, formula_limit = 8192, message_limit = 255, format_limit = 255;
constexpr double width_limit = 255, height_limit = 409;

// Put into words only when something is wrong: a sheet may have a million cells.
struct Where {
  std::string_view sheet;
  std::optional<std::pair<std::uint32_t, std::uint16_t>> cell;
  std::string_view part;
};

[[noreturn]] void refuse_cell(const Where& where, std::string_view why) {
  std::string place(where.sheet);
  if (where.cell) place += "!" + cell_name(where.cell->first, where.cell->second);
  if (!where.part.empty()) place.append(place.empty() ? "" : " ").append(where.part);
  throw std::invalid_argument(fmt::format("{}: {}", place, why));
}

// The format counts characters outside the basic plane twice.
void check_text(const Where& where, std::string_view text, std::size_t limit) {
  const auto plain = std::ranges::find_if(text, [](char c) { return c < ' ' || c > '~'; });
  std::size_t length = static_cast<std::size_t>(plain - text.begin());  // by far most texts are plain to their ends
  text.remove_prefix(length);
  while (!text.empty()) {
    const Character next = character_at(text, 0);
    if (!next.valid) refuse_cell(where, "the text is not valid UTF-8");
    const bool line_or_tab = next.code == '\n' || next.code == '\t';
    if ((next.code < 0x20 && !line_or_tab) || next.code == 0x7F)
      refuse_cell(where, "the text holds a control character");
    if (next.code == 0xFFFE || next.code == 0xFFFF) refuse_cell(where, "the text holds a character that XML forbids");
    length += next.code > 0xFFFF ? 2 : 1;
    text.remove_prefix(next.bytes);
  }
  if (length > limit) refuse_cell(where, fmt::format("the text has {} characters, at most {} fit", length, limit));
}

void check_number(const Where& where, double number) {
  if (!std::isfinite(number)) refuse_cell(where, "the number is not finite");
}

void check_formula(const Where& where, const std::string& text) {
  if (text.empty()) refuse_cell(where, "the formula is empty");
  if (text.front() == '=') refuse_cell(where, "a formula is given without its '='");
  if (text.find_first_of("\n\t") != std::string::npos) refuse_cell(where, "the formula holds a line break or a tab");
  check_text(where, text, formula_limit - 1);
}

void check_place(const Where& where, std::uint32_t row, std::uint16_t column) {
  if (row >= row_limit || column >= column_limit) refuse_cell(where, "the cell lies outside the sheet");
}

void check_cell(const Where& where, const Cell& cell) {
  check_place(where, cell.row, cell.column);
  check_text(where, cell.number_format, format_limit);
  if (const auto* text = std::get_if<std::string>(&cell.content)) check_text(where, *text, text_limit);
  if (const auto* number = std::get_if<double>(&cell.content)) check_number(where, *number);
  if (const auto* formula = std::get_if<Formula>(&cell.content)) {
    check_formula(where, formula->text);
    if (const auto* number = std::get_if<double>(&formula->value)) check_number(where, *number);
    if (const auto* text = std::get_if<std::string>(&formula->value)) check_text(where, *text, text_limit);
  }
}

std::uint64_t place_key(std::uint32_t row, std::uint16_t column) { return (std::uint64_t{row} << 16U) | column; }

void check_merges(const Sheet& sheet) {
  std::set<std::uint64_t> taken;
  for (const Merge& merge : sheet.merges) {
    const Where where{sheet.name, std::pair(merge.row, merge.first_column), ""};
    check_place(where, merge.row, merge.last_column);
    if (merge.first_column >= merge.last_column) refuse_cell(where, "a merge spans at least two columns");
    for (std::uint16_t column = merge.first_column; column <= merge.last_column; ++column)
      if (!taken.insert(place_key(merge.row, column)).second) refuse_cell(where, "two merges overlap");
  }
}

// Spanned columns of a merge must be blank: the file keeps only the leftmost cell's content.
bool spanned(const Cell& cell, const RowMarks& marks) {
  return std::ranges::any_of(marks.merges, [&](const Merge& merge) {
    return cell.column > merge.first_column && cell.column <= merge.last_column;
  });
}

void check_validations(const Sheet& sheet) {
  for (const Validation& rule : sheet.validations) {
    const Where where{sheet.name, std::pair(rule.row, rule.column), "validation"};
    check_place(where, rule.row, rule.column);
    check_number(where, rule.minimum);
    check_number(where, rule.maximum);
    if (rule.minimum > rule.maximum) refuse_cell(where, "the minimum is above the maximum");
    check_text(where, rule.message, message_limit);
    std::size_t together = 0;
    for (const std::string& choice : rule.choices) {
      check_text(where, choice, message_limit);
      if (choice.empty() || choice.find(',') != std::string::npos)
        refuse_cell(where, "a choice is empty or holds a comma");
      together += choice.size() + 1;
    }
    if (together > message_limit + 1) refuse_cell(where, "the choices together are too long");
  }
}

void check_highlights(const Sheet& sheet) {
  for (const Highlight& rule : sheet.highlights) {
    const Where where{sheet.name, std::pair(rule.first_row, rule.first_column), "highlight"};
    check_place(where, rule.last_row, rule.last_column);
    if (rule.first_row > rule.last_row || rule.first_column > rule.last_column)
      refuse_cell(where, "the range is reversed");
    check_formula(where, rule.formula);
  }
}

void check_measures(const Sheet& sheet) {
  for (const double width : sheet.column_widths) {
    if (!(width >= 0 && width <= width_limit))
      refuse_cell({sheet.name, {}, {}}, "a column width lies outside 0 to 255");
  }
  if (sheet.column_widths.size() > column_limit) refuse_cell({sheet.name, {}, {}}, "too many columns");
  for (const auto& [row, height] : sheet.row_heights) {
    if (row >= row_limit || !(height >= 0 && height <= height_limit)) {
      refuse_cell({sheet.name, {}, {}}, "a row height lies outside 0 to 409, or its row outside the sheet");
    }
  }
  if (sheet.repeat_rows &&
      (sheet.repeat_rows->first > sheet.repeat_rows->second || sheet.repeat_rows->second >= row_limit)) {
    refuse_cell({sheet.name, {}, {}}, "the repeated rows are no range of rows");
  }
  for (const std::uint32_t row : sheet.page_breaks)
    if (row == 0 || row >= row_limit) refuse_cell({sheet.name, {}, {}}, "a page break lies outside the sheet");
  check_place({sheet.name, {}, "frozen panes"}, sheet.frozen_rows, sheet.frozen_columns);
}

void check_charts(const Workbook& workbook, const Sheet& sheet) {
  for (const Chart& chart : sheet.charts) {
    const Where where{sheet.name, std::pair(chart.row, chart.column), "chart"};
    check_place(where, chart.row, chart.column);
    check_text(where, chart.title, message_limit);
    check_text(where, chart.value_axis, message_limit);
    if (!(chart.width >= 50 && chart.width <= 10000 && chart.height >= 50 && chart.height <= 10000)) {
      refuse_cell(where, "the size lies outside 50 to 10 000 pixels");
    }
    if (chart.series.empty()) refuse_cell(where, "a chart needs a series");
    for (const ChartSeries& series : chart.series) {
      check_text(where, series.name, message_limit);
      for (const std::string* range : {&series.categories, &series.values}) {
        const bool left_out = range == &series.categories && range->empty();
        if (!left_out && !is_chart_range(workbook, *range)) {
          refuse_cell(where, fmt::format("'{}' is no range of a sheet of this workbook", *range));
        }
      }
    }
  }
}

void check_book(const Workbook& workbook) {
  for (const std::string* text : {&workbook.title, &workbook.author, &workbook.subject}) {
    check_text({{}, {}, "document properties"}, *text, text_limit);  // they are cut when written
  }
  const std::chrono::year_month_day date{std::chrono::year(workbook.year),
                                         std::chrono::month(static_cast<unsigned>(workbook.month)),
                                         std::chrono::day(static_cast<unsigned>(workbook.day))};
  if (!date.ok() || workbook.year < 1980 || workbook.year > 9999) {
    refuse_cell({{}, {}, "document properties"}, "the date of creation is not in the calendar");
  }
  if (workbook.sheets.empty()) refuse_cell({{}, {}, "workbook"}, "there is no sheet");
}

}  // namespace

void check_row(const Sheet& sheet, RowCells cells, const RowMarks& marks) {
  const Cell* before = nullptr;
  for (const Cell* cell : cells) {
    const Where where{sheet.name, std::pair(cell->row, cell->column), {}};
    check_cell(where, *cell);
    if (before != nullptr && before->column == cell->column) refuse_cell(where, "the cell is given twice");
    if (!std::holds_alternative<std::monostate>(cell->content) && spanned(*cell, marks))
      refuse_cell(where, "a spanned cell has content of its own");
    before = cell;
  }
}

void check_writable(const Workbook& workbook) {
  check_book(workbook);
  check_sheet_names(workbook);
  check_defined_names(workbook);
  for (const Sheet& sheet : workbook.sheets) {
    check_merges(sheet);
    const std::map<std::uint32_t, RowMarks> marks = row_marks(sheet);
    each_held_row(sheet, [&](RowCells cells) { check_row(sheet, cells, marks_of(marks, cells.front()->row)); });
    check_validations(sheet);
    check_highlights(sheet);
    check_measures(sheet);
    check_charts(workbook, sheet);
    check_text({sheet.name, {}, "header"}, sheet.header, text_limit);
    check_text({sheet.name, {}, "footer"}, sheet.footer, text_limit);
  }
}

std::string property_text(std::string_view text) {
  std::size_t length = 0;
  for (std::size_t at = 0; at < text.size();) {
    const Character next = character_at(text, at);
    length += next.code > 0xFFFF ? 2 : 1;
    if (length >= message_limit && at + next.bytes < text.size()) return std::string(text.substr(0, at)) + "…";
    at += next.bytes;
  }
  return std::string(text);
}

std::string escaped_text(std::string_view text) {
  if (text.find("_x") == std::string_view::npos) return std::string(text);
  const auto hexadecimal = [](char c) {
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'F') || (c >= 'a' && c <= 'f');
  };
  std::string escaped;
  escaped.reserve(text.size());
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::string_view ahead = text.substr(at, 7);
    const bool code = ahead.size() == 7 && ahead.starts_with("_x") && ahead.back() == '_' &&
                      std::ranges::all_of(ahead.substr(2, 4), hexadecimal);
    escaped += code ? std::string_view("_x005F_") : text.substr(at, 1);
  }
  return escaped;
}

}  // namespace seambook
