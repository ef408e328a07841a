#include "estimate/gradients.hpp"

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

/// Counts are known, not doubtful, and do not move by a percent.
bool is_count(const Figure& figure) { return figure.decimals == 0 && std::string_view(figure.unit.word).empty(); }

}  // namespace

void add_gradient(Gradients& gradients, const RateBook& book, const Sourced& input, const Unit& unit, double scaled,
                  const std::string& words) {
  const SourceId source = input.source;
  if (source == no_source) return;
  auto [entry, added] = gradients.try_emplace(source);
  entry->second.per_percent.si += scaled / 100;
  if (!added) return;
  entry->second.source = source;
  entry->second.value = input.value;
  entry->second.unit = source < first_job_source ? book.sources[source].unit : unit;
  entry->second.words =
      source < first_job_source ? book.sources[source].entry + ", " + book.sources[source].field : words;
}

void add_gradients(Gradients& gradients, const RateBook& book, const Tape& tape, const std::vector<double>& adjoint,
                   const std::string& place) {
  for (std::size_t i = 0; i < tape.nodes.size(); ++i) {
    const TapeNode& node = tape.nodes[i];
    if (node.op != Op::input || adjoint[i] == 0) continue;
    const Label& label = tape.labels[node.label];
    if (label.source < summed && !is_count(*label.figure))
      add_gradient(gradients, book, {node.value, label.source}, label.figure->unit, adjoint[i] * node.value,
                   place + label.figure->words);
  }
}

std::vector<Sensitivity> sorted(const Gradients& gradients) {
  std::vector<Sensitivity> out;
  for (const auto& [source, s] : gradients) out.push_back(s);
  std::stable_sort(out.begin(), out.end(), [](const Sensitivity& a, const Sensitivity& b) {
    return std::fabs(a.per_percent.si) > std::fabs(b.per_percent.si);
  });
  return out;
}

void seed(std::vector<Seed>& seeds, const Traced& figure, double weight) {
  if (figure.tape != nullptr) seeds.push_back({figure.node, weight});
}

}  // namespace seambook
