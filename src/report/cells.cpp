#include "report/cells.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/formula_memory.hpp"

namespace seambook {
namespace {

/// A number that stands elsewhere: a lone input, rendered in the column's unit.
void put_link(Sheet& sheet, const LeafText& home, const Label& label, double value, const Shown& as, std::uint32_t row,
              std::uint16_t column) {
  Tape one;
  one.labels.push_back(label);
  const std::uint32_t leaf = one.add({.value = value, .label = 1, .op = Op::input});
  const std::uint32_t link = one.add({.value = value, .operands = {leaf}, .op = Op::named});
  const std::string text = formula(one, link, as.unit, [&](const Tape&, std::uint32_t) { return home; });
  put_formula(sheet, row, column, {text, shown_number(value, as.unit)}, as.decimals);
}

void put_own_input(Sheet& sheet, const SharedCells& shared, const Job& job, const Label& label, double value,
                   std::uint32_t row, std::uint16_t column) {
  const Shown as = shown_in(shared.terms, *label.figure);
  const double shown = shown_number(value, as.unit);
  const JobSource* source = label.source >= first_job_source ? &job.sources[label.source - first_job_source] : nullptr;
  const bool frozen = source == nullptr || source->frozen;
  put_number(sheet, row, column, shown, as.decimals, frozen ? Look::frozen : Look::input);
  if (frozen) return;
  sheet.live.push_back({row, column, label.source, shown, label.figure->words, unit_word(as.unit, shared.currency)});
  Validation rule = admitted(row, column, source->limits, as.unit, label.figure->words);
  const bool count = as.decimals == 0 && as.unit.si == 1;
  if (count) rule.whole = true, rule.minimum = std::max(rule.minimum, 1.0);
  sheet.validations.push_back(std::move(rule));
}

/// Calls f(node, label, column) for each labelled node that has a column on this sheet.
template <class F>
void each_cell_of(const Sheet& sheet, const Table& table, const Tape& tape, F f) {
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    if (tape.nodes[i].label == 0) continue;
    const Label& label = tape.labels[tape.nodes[i].label];
    const auto at = table.columns.find(label.figure);
    if (at != table.columns.end() && at->second.sheet == sheet.name) f(i, label, at->second.column);
  }
}

}  // namespace

const LeafText* SharedCells::home(SourceId source, std::uint32_t row) const {
  if (const auto at = cells.find(source); at != cells.end()) return &at->second;
  const auto first = first_inputs.find(source);
  return first != first_inputs.end() && first->second.row < row ? &first->second.cell : nullptr;
}

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
  return cells_of(table, shared, std::move(sheet), row,
                  [row](std::uint32_t of_label) { return std::to_string(std::uint64_t{row} + of_label + 1); });
}

LeafFinder cells_of(const Table& table, const SharedCells& shared, std::string sheet, std::uint32_t row,
                    std::function<std::string(std::uint32_t)> name_of) {
  return [&table, &shared, sheet = std::move(sheet), row, name_of = std::move(name_of)](
             const Tape& tape, std::uint32_t node) -> std::optional<LeafText> {
    const Label& label = tape.labels[tape.nodes[node].label];
    if (const auto at = table.columns.find(label.figure); at != table.columns.end()) {
      const std::string cell = column_name(at->second.column) + name_of(label.row);
      const bool here = at->second.sheet == sheet;
      return shown_leaf(here ? cell : sheet_reference(at->second.sheet) + "!" + cell,
                        shown_in(shared.terms, *label.figure).unit);
    }
    if (const LeafText* home = shared.home(label.source, row)) return *home;
    return std::nullopt;
  };
}

void put_record(Sheet& sheet, const Table& table, const SharedCells& shared, const Job& job, const Tape& tape,
                std::uint32_t row) {
  FormulaMemory of_this_one;
  put_record(sheet, table, shared, job, tape, row, of_this_one);
}

void put_record(Sheet& sheet, const Table& table, const SharedCells& shared, const Job& job, const Tape& tape,
                std::uint32_t row, FormulaMemory& formulas) {
  const std::vector<bool> read = read_nodes(tape);
  formulas.begin(tape, table, shared, sheet.name, row);
  each_cell_of(sheet, table, tape, [&](std::uint32_t i, const Label& label, std::uint16_t column) {
    const TapeNode& node = tape.nodes[i];
    const std::uint32_t in_row = row + label.row;
    const Shown as = shown_in(shared.terms, *label.figure);
    if (node.op != Op::input) {
      sheet.cells.push_back({in_row, column, Formula{formulas.formula(i, as.unit), shown_number(node.value, as.unit)},
                             Look::figure, number_format(as.decimals)});
    } else if (!read[i]) {  // said by the job, used by no formula
      put_number(sheet, in_row, column, shown_number(node.value, as.unit), as.decimals);
    } else if (const LeafText* home = shared.home(label.source, row)) {
      put_link(sheet, *home, label, node.value, as, in_row, column);
    } else {
      put_own_input(sheet, shared, job, label, node.value, in_row, column);
    }
  });
}

void put_record_inputs(Sheet& sheet, const Table& table, const SharedCells& shared, const Job& job, const Tape& tape,
                       std::uint32_t row) {
  const std::vector<bool> read = read_nodes(tape);
  each_cell_of(sheet, table, tape, [&](std::uint32_t i, const Label& label, std::uint16_t column) {
    if (tape.nodes[i].op == Op::input && read[i] && shared.home(label.source, row) == nullptr)
      put_own_input(sheet, shared, job, label, tape.nodes[i].value, row + label.row, column);
  });
}

}  // namespace seambook
