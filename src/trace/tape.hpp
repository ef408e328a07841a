// The record of a calculation: one small node for each operation, in order. What wrote it is trace/traced.hpp; the
// spreadsheet formula, the working in words and the sensitivities are read off it. Cleared and reused row by row.
#pragma once

#include <cstdint>
#include <vector>

#include "trace/figure.hpp"

namespace seambook {

enum class Op : std::uint8_t {
  constant,
  input,  // a leaf that stands in a cell
  named,  // the same value as operand 0, under a name: becomes a cell
  add,
  subtract,
  multiply,
  divide,
  least,
  greatest,
  select_less,  // operands: a, b, then, otherwise
  whole_up,
  whole_down,
  round_decimal,  // `digits`
  root,
  power,  // operand 1 is a constant
  exponential,
  logarithm,
  sine,
  cosine,
  tangent,
  hyperbolic_tangent,
  arc_sine,
};

using SourceId = std::uint32_t;
inline constexpr SourceId no_source = 0;
/// Numbers of the job; those of the rate book come before.
inline constexpr SourceId first_job_source = 1u << 24;
/// The source of a number that is a sum over other records, or over a sheet's pages.
inline constexpr SourceId summed = 1u << 30;

/// Name of an input or a named result: which figure, of which row, and (inputs) where its number was written.
struct Label {
  const Figure* figure = nullptr;
  std::uint32_t row = 0;
  SourceId source = no_source;
};

struct TapeNode {
  double value = 0;
  std::uint32_t operands[4] = {0, 0, 0, 0};
  std::uint32_t label = 0;  // 0: anonymous
  Op op = Op::constant;
  std::int8_t digits = 0;
};

struct Tape {
  std::vector<TapeNode> nodes;
  std::vector<Label> labels{1};

  void clear();
  std::uint32_t add(const TapeNode& node) {
    nodes.push_back(node);
    return static_cast<std::uint32_t>(nodes.size() - 1);
  }
};

/// How many of `operands` an operation uses.
int operand_count(Op);
/// For each node, whether some operation reads it.
std::vector<bool> read_nodes(const Tape&);

/// Derivative of one result, or of a weighted sum of results, by every node: one backward sweep. Whole-number steps and
/// rounding count as flat and exact respectively: whole_up and whole_down have no gradient, round_decimal passes it on.
struct Seed {
  std::uint32_t node = 0;
  double weight = 1;
};
std::vector<double> sweep(const Tape&, const std::vector<Seed>& seeds);

}  // namespace seambook
