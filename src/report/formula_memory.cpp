#include "report/formula_memory.hpp"

#include <fmt/format.h>

#include <bit>
#include <iterator>

namespace seambook {
namespace {

constexpr char gap = '\x01';  // followed by the label's row, from 1
constexpr std::uint32_t most_rows = 100;
constexpr std::size_t most_kinds = 1000;

template <class T>
void append(std::string& key, T x) {
  const auto bytes = std::bit_cast<std::array<char, sizeof(T)>>(x);
  key.append(bytes.data(), bytes.size());
}

/// All that a formula's text hangs on but the row: operations, names, the cells that inputs stand in, constants.
void append_record(std::string& key, const Tape& tape, const SharedCells& shared, std::uint32_t row) {
  for (const TapeNode& node : tape.nodes) {
    const Label& label = tape.labels[node.label];
    append(key, node.op), append(key, node.digits), append(key, node.label != 0);
    for (int k = 0; k < operand_count(node.op); ++k) append(key, node.operands[k]);
    append(key, std::bit_cast<std::uintptr_t>(label.figure)), append(key, label.row);
    append(key, shared.home(label.source, row) != nullptr ? label.source : no_source);
    if (node.op == Op::constant) append(key, node.value);
  }
}

std::string filled(const std::string& text, std::uint32_t row) {
  std::string out;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] != gap)
      out += text[at];
    else
      fmt::format_to(std::back_inserter(out), "{}", row + static_cast<std::uint32_t>(text[++at]));
  }
  return out;
}

}  // namespace

void FormulaMemory::begin(const Tape& tape, const Table& table, const SharedCells& shared, std::string sheet,
                          std::uint32_t row) {
  tape_ = &tape, table_ = &table, shared_ = &shared, sheet_ = std::move(sheet), row_ = row;
  key_.clear();
  append_record(key_, tape, shared, row);
  if (known_.size() >= most_kinds) known_.clear();
  at_ = &known_[key_];
  at_->texts.resize(tape.nodes.size());
}

std::string FormulaMemory::formula(std::uint32_t node, const Unit& unit) {
  std::optional<std::string>& kept = at_->texts[node];
  if (kept) return filled(*kept, row_);
  bool by_value = false;  // a number without a cell stands in the text itself
  const LeafFinder leaves = cells_of(*table_, *shared_, sheet_, row_, [](std::uint32_t row) {
    return std::string{gap, static_cast<char>(row + 1)};
  });
  std::string text = seambook::formula(*tape_, node, unit, [&](const Tape& tape, std::uint32_t leaf) {
    std::optional<LeafText> found = leaves(tape, leaf);
    const bool input = tape.nodes[leaf].op == Op::input;
    by_value = by_value || (input && !found) || tape.labels[tape.nodes[leaf].label].row > most_rows;
    return found;
  });
  if (by_value) return seambook::formula(*tape_, node, unit, cells_of(*table_, *shared_, sheet_, row_));
  kept = std::move(text);
  return filled(*kept, row_);
}

}  // namespace seambook
