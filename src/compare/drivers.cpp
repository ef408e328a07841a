#include "compare/drivers.hpp"

namespace seambook {
namespace {

/// How much a unit of each sum of a family moves the result.
using FamilyWeights = std::map<std::pair<const Figure*, std::uint32_t>, double>;

std::uint32_t node_of(const Tape& tape, const Figure& figure, std::uint32_t row) {
  for (std::uint32_t i = 0; i < tape.nodes.size(); ++i) {
    const Label& label = tape.labels[tape.nodes[i].label];
    if (tape.nodes[i].op == Op::named && label.figure == &figure && label.row == row) return i;
  }
  return 0;
}

FamilyWeights weights_of(const Tape& tape, const std::vector<double>& adjoint) {
  FamilyWeights weights;
  for (std::size_t i = 0; i < tape.nodes.size(); ++i) {
    const Label& label = tape.labels[tape.nodes[i].label];
    if (tape.nodes[i].op == Op::input && label.source == summed) weights[{label.figure, label.row}] = adjoint[i];
  }
  return weights;
}

/// The figures of one way whose sums the weights are of; other costs are all less labour and equipment.
struct WayWeights {
  double metres = 0, floor = 0, labour = 0, other = 0, equipment = 0;
};

void sweep_way(const RateBook& book, const Comparison& comparison, const FamilyWay& way, const WayWeights& weights,
               Tape& tape, Gradients& gradients) {
  const Job& job = comparison.ways.job;
  for (const std::size_t j : way.rows) {
    tape.clear();
    const RowFigures<Traced> row = row_figures(lift_row<Traced>(gather_row(book, job, job.joints[j]), &tape));
    std::vector<Seed> seeds;
    seed(seeds, row.joint.weld_length.si, weights.metres);
    for (const PassFigures<Traced>& group : row.passes) {
      seed(seeds, group.labour.floor.si, weights.floor);
      seed(seeds, group.labour_cost.si, weights.labour - weights.other);
      seed(seeds, group.equipment_cost.si, weights.equipment - weights.other);
      seed(seeds, group.cost.si, weights.other);
    }
    add_gradients(gradients, book, tape, sweep(tape, seeds), "joint " + job.joints[j].id + ", ");
  }
}

}  // namespace

Tape investment_record(const RateBook& book, const Job& job, const Comparison& comparison) {
  Tape tape;
  const auto in = lift_investment<Traced>(investment_inputs(book, job), &tape);
  const Ratio<Traced> pieces = pieces_a_year(in);
  std::vector<FamilyInputs<Traced>> families;
  const auto count = static_cast<std::uint32_t>(comparison.both.size());
  for (std::uint32_t k = 0; k < count; ++k) {
    const std::size_t f = comparison.both[k];
    const Judged& judged = comparison.judged[f];
    families.push_back(lift_family<Traced>(
        family_inputs(comparison.sums[f][*judged.now], comparison.sums[f][*judged.next]), k, &tape));
  }
  std::uint32_t s = 0;
  for (const ScenarioInputs<Sourced>& written : scenario_inputs(*book.investment)) {
    const auto scenario = lift_scenario<Traced>(written, s, &tape);
    const YearlyCost<Traced> cost = yearly_cost(in, scenario, s);
    std::vector<FamilyWorth<Traced>> worths;
    for (std::uint32_t k = 0; k < count; ++k)
      worths.push_back(family_worth(in, families[k], pieces, scenario, s * count + k));
    investment_worth(in, cost, worths, s);
    ++s;
  }
  return tape;
}

std::vector<Sensitivity> drivers(const RateBook& book, const Job& job, const Comparison& comparison) {
  if (comparison.both.empty()) return {};
  const Tape record = investment_record(book, job, comparison);
  const std::vector<double> adjoint = sweep(record, {{node_of(record, fig::left_year, 0), 1}});
  Gradients gradients;
  add_gradients(gradients, book, record, adjoint, "");
  FamilyWeights weights = weights_of(record, adjoint);
  Tape tape;
  for (std::uint32_t k = 0; k < comparison.both.size(); ++k) {
    const std::size_t f = comparison.both[k];
    const Family& family = comparison.ways.families[f];
    const Judged& judged = comparison.judged[f];
    const auto of = [&](const Figure& figure) { return weights[{&figure, k}]; };
    sweep_way(
        book, comparison, family.ways[*judged.now],
        {of(fig::family_metres), of(fig::now_floor), of(fig::now_labour), of(fig::now_other), of(fig::now_equipment)},
        tape, gradients);
    sweep_way(book, comparison, family.ways[*judged.next],
              {0, of(fig::next_floor), of(fig::next_labour), of(fig::next_other), 0}, tape, gradients);
  }
  return sorted(gradients);
}

}  // namespace seambook
