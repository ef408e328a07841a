#include "report/cells.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace seambook {
namespace {

Sheet& sheet_named(std::vector<Sheet>& sheets, const std::string& name) {
  return *std::find_if(sheets.begin(), sheets.end(), [&](const Sheet& s) { return s.name == name; });
}

void put_input(Sheet& sheet, const SharedCells& shared, const Job& job, const Label& label, double value,
               std::uint32_t row, std::uint16_t column) {
  const Shown as = shown_in(shared.terms, *label.figure);
  const double shown = shown_number(value, as.unit);
  if (const auto home = shared.cells.find(label.source); home != shared.cells.end()) {
    Tape one;  // a lone input, rendered in the column's unit
    one.labels.push_back(label);
    const std::uint32_t leaf = one.add({.value = value, .label = 1, .op = Op::input});
    const std::uint32_t link = one.add({.value = value, .operands = {leaf}, .op = Op::named});
    const std::string text = formula(one, link, as.unit, [&](const Tape&, std::uint32_t) { return home->second; });
    put_formula(sheet, row, column, {text, shown}, as.decimals);
    return;
  }
  const JobSource* source = label.source >= first_job_source ? &job.sources[label.source - first_job_source] : nullptr;
  const bool frozen = source == nullptr || source->frozen;
  put_number(sheet, row, column, shown, as.decimals, frozen ? Look::frozen : Look::input);
  if (frozen) return;
  sheet.live.push_back({row, column, label.source, label.figure->words, unit_word(as.unit, shared.currency)});
  Validation rule = admitted(row, column, source->limits, as.unit, label.figure->words);
  const bool count = as.decimals == 0 && as.unit.si == 1;
  if (count) rule.whole = true, rule.minimum = std::max(rule.minimum, 1.0);
  sheet.validations.push_back(std::move(rule));
}

}  // namespace

Validation admitted(std::uint32_t row, std::uint16_t column, const Limits& limits, const Unit& unit,
                    std::string_view words) {
  constexpr double step = 1e-3;  // of the shown unit: how near an end comes that is not allowed itself
  Validation v{row, column, shown_number(limits.low, unit), std::min(shown_number(limits.high, unit), 1e6), false, {}};
  if (limits.low_open) v.minimum += step;
  if (limits.high_open) v.maximum -= step;
  v.message = fmt::format("{}, {:g} to {:g}", words, v.minimum, v.maximum);
  return v;
}

void put(Sheet& sheet, std::uint32_t row, std::uint16_t column, std::string text, Look look) {
  sheet.cells.push_back({row, column, std::move(text), look, {}});
}
void put_number(Sheet& sheet, std::uint32_t row, std::uint16_t column, double value, int decimals, Look look) {
  sheet.cells.push_back({row, column, value, look, number_format(decimals)});
}
void put_formula(Sheet& sheet, std::uint32_t row, std::uint16_t column, Formula formula, int decimals, Look look) {
  sheet.cells.push_back({row, column, std::move(formula), look, number_format(decimals)});
}

void put_share(Sheet& sheet, std::uint32_t row, std::uint16_t column, Formula formula) {
  put_formula(sheet, row, column, std::move(formula), 1);
  sheet.cells.back().number_format = "0.0\" %\"";
}

std::string number_format(int decimals) {
  std::string code = "#,##0";
  if (decimals > 0) code += "." + std::string(static_cast<std::size_t>(decimals), '0');
  return code;
}

std::string unit_word(const Unit& unit, const std::string& currency) {
  std::string word = unit.word;
  if (const std::size_t at = word.find("¤"); at != std::string::npos)
    word.replace(at, std::string_view("¤").size(), currency);
  return word;
}

Shown shown_in(Terms terms, const Figure& figure) { return shown_in(terms, figure.unit, figure.decimals); }

std::string heading_of(const Figure& figure, const std::string& currency, Terms terms) {
  const std::string unit = unit_word(shown_in(terms, figure).unit, currency);
  return unit.empty() ? figure.words : fmt::format("{} ({})", figure.words, unit);
}

std::string sum_of(const std::string& sheet, std::uint16_t column, std::uint32_t first, std::uint32_t last) {
  return fmt::format("SUM({}!{}:{})", sheet_reference(sheet), cell_name(first, column), cell_name(last, column));
}

void put_title(Sheet& sheet, const std::string& title, const std::string& below) {
  put(sheet, 0, 0, title, Look::title);
  put_wide(sheet, 1, below, Look::note);
}

void put_wide(Sheet& sheet, std::uint32_t row, const std::string& text, Look look) {
  constexpr std::uint16_t across = 6;
  put(sheet, row, 0, text, look);
  sheet.merges.push_back({row, 0, across});
}

LeafFinder cells_of(const Table& table, const SharedCells& shared, std::string sheet, std::uint32_t row) {
  return [&table, &shared, sheet = std::move(sheet), row](const Tape& tape,
                                                          std::uint32_t node) -> std::optional<LeafText> {
    const Label& label = tape.labels[tape.nodes[node].label];
    if (const auto at = table.columns.find(label.figure); at != table.columns.end()) {
      const std::string cell = cell_name(row + label.row, at->second.column);
      const bool here = at->second.sheet == sheet;
      return shown_leaf(here ? cell : sheet_reference(at->second.sheet) + "!" + cell,
                        shown_in(shared.terms, *label.figure).unit);
    }
    if (const auto home = shared.cells.find(label.source); home != shared.cells.end()) return home->second;
    return std::nullopt;
  };
}

void put_record(std::vector<Sheet>& sheets, const Table& table, const SharedCells& shared, const Job& job,
                const Tape& tape, std::uint32_t row) {
  const std::vector<bool> read = read_nodes(tape);
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    const TapeNode& node = tape.nodes[i];
    if (node.label == 0) continue;
    const Label& label = tape.labels[node.label];
    const auto at = table.columns.find(label.figure);
    if (at == table.columns.end()) continue;
    Sheet& sheet = sheet_named(sheets, at->second.sheet);
    const std::uint32_t in_row = row + label.row;
    const Shown as = shown_in(shared.terms, *label.figure);
    if (node.op == Op::input && !read[i]) {  // said by the job, used by no formula
      put_number(sheet, in_row, at->second.column, shown_number(node.value, as.unit), as.decimals);
      continue;
    }
    if (node.op == Op::input) {
      put_input(sheet, shared, job, label, node.value, in_row, at->second.column);
      continue;
    }
    const std::string text = formula(tape, i, as.unit, cells_of(table, shared, sheet.name, row));
    sheet.cells.push_back({in_row, at->second.column, Formula{text, shown_number(node.value, as.unit)}, Look::figure,
                           number_format(as.decimals)});
  }
}

}  // namespace seambook
