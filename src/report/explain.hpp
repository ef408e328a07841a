// A record of a calculation as working that a person can check: each input with its value and where it was written,
// then each named figure as formula, formula with numbers, result, and the source of the formula.
// Holds afterwards: evaluating a step's numbers gives its result, up to the ten digits that are printed.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "basics/shown_units.hpp"
#include "trace/tape.hpp"

namespace seambook {

struct WorkedInput {
  std::string name, words;
  std::string value, unit;  // `5`, `mm`; percentages stand in formulas as ratios
  std::string origin;       // where it was written
};
struct WorkedStep {
  std::string name, words;
  std::string formula, numbers;  // the same over names and over numbers
  std::string result, unit;
  std::string source;  // of the formula
};
struct Working {
  std::vector<WorkedInput> inputs;
  std::vector<WorkedStep> steps;
};

/// How a tape's labels are put in words.
struct WorkingWords {
  std::function<std::string(SourceId)> origin;
  std::function<std::string(const Label&)> row;  // tells rows of one figure apart; empty: by number, from 1
  std::string currency;
  Terms terms = Terms::iso;                         // whose units are printed
  std::function<bool(const Label&)> left_out = {};  // results that say nothing; empty: none
};

/// Nodes [first, last) of the tape; `last` is cut at its end. Inputs that nothing there reads are left away.
Working working(const Tape&, const WorkingWords&, std::size_t first = 0, std::size_t last = SIZE_MAX);
/// Indented lines of at most `columns`; empty when there are no steps. Where a step is longer, each form of it begins a
/// line, and a formula goes on after an operator.
std::string render(const Working&, std::size_t columns);

}  // namespace seambook
