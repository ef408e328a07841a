#include "report/explain.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "report/terminal.hpp"
#include "trace/formula.hpp"

namespace seambook {
namespace {

/// What is left of two equal numbers after subtraction is nothing.
constexpr double rounding_residue = 1e-12;

std::string ten_digits(double x) { return std::fabs(x) < rounding_residue ? "0" : fmt::format("{:.10g}", x); }

std::string unit_text(const Unit& unit, std::string_view currency) {
  std::string word = unit.word;
  constexpr std::string_view sign = "¤";
  if (const auto at = word.find(sign); at != word.npos) word.replace(at, sign.size(), currency);
  return word;
}

/// What a figure's number in a formula counts: percentages stand there as ratios.
Unit formula_unit(const Figure& figure, Terms terms) {
  return std::string_view(figure.unit.word) == unit::percent.word ? unit::none : shown_in(terms, figure.unit).unit;
}

/// The name of each label, by its number. A figure that stands in several rows has the row in its name; inputs that
/// would still be alike are numbered.
std::vector<std::string> label_names(const Tape& tape, const WorkingWords& words) {
  std::map<const Figure*, std::set<std::uint32_t>> rows;
  for (const Label& label : tape.labels) rows[label.figure].insert(label.row);
  std::vector<std::string> names;
  std::map<std::string, std::vector<std::size_t>> inputs;
  for (std::size_t l = 0; l < tape.labels.size(); ++l) {
    const Label& label = tape.labels[l];
    std::string name = label.figure != nullptr ? label.figure->key : "";
    if (rows[label.figure].size() > 1) {
      name += "_" + (words.row ? words.row(label) : std::to_string(label.row + 1));
    }
    if (label.source != no_source) inputs[name].push_back(l);
    names.push_back(std::move(name));
  }
  for (const auto& [name, alike] : inputs) {
    for (std::size_t k = 0; alike.size() > 1 && k < alike.size(); ++k) names[alike[k]] += fmt::format("_{}", k + 1);
  }
  return names;
}

/// Numbers in formulas; a negative one keeps its sign to itself.
std::string number_in_formula(double x) {
  const std::string text = ten_digits(x);
  return text.starts_with('-') ? "(" + text + ")" : text;
}

WorkedStep worked_step(const Tape& tape, std::uint32_t node, const std::vector<std::string>& names,
                       const WorkingWords& words) {
  const TapeNode& n = tape.nodes[node];
  const Figure& figure = *tape.labels[n.label].figure;
  const Unit shown = shown_in(words.terms, figure.unit).unit;
  const auto of_label = [&](const Tape& t, std::uint32_t i) -> const Figure& {
    return *t.labels[t.nodes[i].label].figure;
  };
  const LeafFinder by_name = [&](const Tape& t, std::uint32_t i) {
    return shown_leaf(names[t.nodes[i].label], formula_unit(of_label(t, i), words.terms));
  };
  const LeafFinder by_number = [&](const Tape& t, std::uint32_t i) {
    const Unit in = formula_unit(of_label(t, i), words.terms);
    return shown_leaf(number_in_formula(shown_number(t.nodes[i].value, in)), in);
  };
  return {names[n.label],
          figure.words,
          formula(tape, node, shown, by_name),
          formula(tape, node, shown, by_number),
          ten_digits(shown_number(n.value, shown)),
          unit_text(shown, words.currency),
          figure.source};
}

/// `text` in lines that are no longer than `columns`, broken behind operators, all but the first further in.
std::string broken_formula(std::string_view text, std::size_t columns, std::size_t indent) {
  constexpr std::size_t least = 20;
  std::string out;
  std::size_t used = indent;
  while (used + display_width(text) > columns) {
    const std::size_t room = std::max(columns, used + least) - used;
    std::size_t at = text.find_last_of("+-*/^,()", room - 1);
    if (at == text.npos || at == 0) at = text.find_first_of("+-*/^,()", 1);
    if (at == text.npos || at + 1 >= text.size()) break;
    out.append(text.substr(0, at + 1)).append("\n").append(indent, ' ');
    text.remove_prefix(at + 1);
  }
  return out.append(text);
}

/// `leg = a*b = 2*3 = 6 mm`, in one line or, where that is too long, in one for each form.
std::string step_lines(const WorkedStep& step, std::size_t columns) {
  std::vector<std::string> forms = {step.formula};
  if (step.numbers != step.formula && step.numbers != step.result) forms.push_back(step.numbers);
  forms.push_back(step.result + (step.unit.empty() ? "" : " " + step.unit));
  std::string line = "  " + step.name;
  for (const std::string& form : forms) line.append(" = ").append(form);
  if (display_width(line) > columns) {
    constexpr std::size_t indent = 8;
    line = "  " + step.name;
    for (const std::string& form : forms)
      line.append("\n").append(indent - 2, ' ').append("= ").append(broken_formula(form, columns, indent));
  }
  const std::string source = step.source.empty() ? "" : " [" + step.source + "]";
  return line + "\n" + wrapped("      " + step.words + source, columns, 8);
}

}  // namespace

Working working(const Tape& tape, const WorkingWords& words, std::size_t first, std::size_t last) {
  const std::vector<std::string> names = label_names(tape, words);
  last = std::min(last, tape.nodes.size());
  std::vector<bool> read(tape.nodes.size(), false);
  for (std::size_t i = first; i < last; ++i) {
    const TapeNode& node = tape.nodes[i];
    for (int k = 0; k < operand_count(node.op); ++k) read[node.operands[k]] = true;
  }
  Working out;
  for (std::size_t i = 0; i < last; ++i) {
    const TapeNode& node = tape.nodes[i];
    if (node.op == Op::input && read[i]) {
      const Label& label = tape.labels[node.label];
      const Unit unit = shown_in(words.terms, label.figure->unit).unit;
      out.inputs.push_back({names[node.label], label.figure->words, ten_digits(shown_number(node.value, unit)),
                            unit_text(unit, words.currency), words.origin(label.source)});
    }
    if (node.op == Op::named && i >= first && !(words.left_out && words.left_out(tape.labels[node.label])))
      out.steps.push_back(worked_step(tape, static_cast<std::uint32_t>(i), names, words));
  }
  return out;
}

std::string render(const Working& working, std::size_t columns) {
  TextTable inputs;
  for (const WorkedInput& input : working.inputs) {
    inputs.rows.push_back({"  " + input.name, input.value, input.unit, input.words + ", " + input.origin});
  }
  inputs.right_aligned = {false, true};
  std::string out = render(inputs, columns);
  for (const WorkedStep& step : working.steps) out += step_lines(step, columns);
  return out;
}

}  // namespace seambook
