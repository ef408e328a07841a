// Timing and checking of orders that anyone may have made. Shares nothing with the searches, so that it can judge them.
#include <fmt/format.h>

#include <optional>

#include "sequence/sequence.hpp"

namespace seambook {

Sequence time_order(const SequenceProblem& problem, std::span<const std::size_t> order) {
  Sequence result;
  Attributes mounted = problem.start;
  for (const std::size_t operation : order) {
    const Attributes& needs = problem.operations[operation].needs;
    result.steps.push_back({operation, change(problem.model, mounted, needs), {}});
    result.change_total = result.change_total + result.steps.back().change.duration;
    mounted = mounted_after(mounted, needs);
  }

  std::vector<std::size_t> in_file(problem.operations.size());
  for (std::size_t i = 0; i < in_file.size(); ++i) in_file[i] = i;
  for (const auto& [before, after] : problem.precedence) result.file_order_allowed &= before < after;
  if (!result.file_order_allowed) in_file = topological_order(in_file.size(), problem.precedence);
  mounted = problem.start;
  for (const std::size_t operation : in_file) {
    const Attributes& needs = problem.operations[operation].needs;
    result.file_order_total = result.file_order_total + change(problem.model, mounted, needs).duration;
    mounted = mounted_after(mounted, needs);
  }
  return result;
}

std::vector<std::string> violations(const SequenceProblem& problem, std::span<const std::size_t> order) {
  std::vector<std::string> faults;
  const auto& operations = problem.operations;
  std::vector<std::optional<std::size_t>> first(operations.size());
  for (std::size_t position = 0; position < order.size(); ++position) {
    const std::size_t operation = order[position];
    if (operation >= operations.size())
      faults.push_back(fmt::format("position {}: there is no operation {}", position + 1, operation));
    else if (first[operation])
      faults.push_back(fmt::format("position {}: {} stands at position {} already", position + 1,
                                   operations[operation].name, *first[operation] + 1));
    else
      first[operation] = position;
  }
  for (std::size_t operation = 0; operation < operations.size(); ++operation)
    if (!first[operation]) faults.push_back(fmt::format("{} is missing", operations[operation].name));
  for (const auto& [before, after] : problem.precedence)
    if (first[before] && first[after] && *first[after] <= *first[before])
      faults.push_back(fmt::format("position {}: {} stands before {}, which must come first", *first[after] + 1,
                                   operations[after].name, operations[before].name));
  return faults;
}

}  // namespace seambook
