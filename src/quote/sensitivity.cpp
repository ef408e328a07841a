#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "quote/lift.hpp"
#include "quote/quote.hpp"

namespace seambook {
namespace {

/// Counts are known, not doubtful, and do not move by a percent.
bool is_count(const Figure& figure) { return figure.decimals == 0 && std::string_view(figure.unit.word).empty(); }

/// Money of the unit price per unit of each cost kind, from the sweep over the quote's own record.
struct Weights {
  std::array<double, cost_kinds> each{}, lot{};
};

class Gradients {
 public:
  explicit Gradients(const RateBook& book) : book_(book) {}

  /// Adds what the inputs on a tape contribute: derivative × value, so that a hundredth of it is the effect of one
  /// percent.
  void add_tape(const Tape& tape, const std::vector<double>& adjoint, const std::string& place) {
    for (std::size_t i = 0; i < tape.nodes.size(); ++i) {
      const TapeNode& node = tape.nodes[i];
      if (node.op != Op::input || adjoint[i] == 0) continue;
      const Label& label = tape.labels[node.label];
      if (label.source != summed && !is_count(*label.figure))
        add(label.source, adjoint[i] * node.value, place + label.figure->words);
    }
  }
  void add(SourceId source, double scaled, const std::string& words) {
    if (source == no_source) return;
    auto [entry, added] = found_.try_emplace(source);
    entry->second.per_percent.si += scaled / 100;
    if (!added) return;
    entry->second.source = source;
    entry->second.words =
        source < first_job_source ? book_.sources[source].entry + ", " + book_.sources[source].field : words;
  }
  std::vector<Sensitivity> sorted() const {
    std::vector<Sensitivity> out;
    for (const auto& [source, s] : found_) out.push_back(s);
    std::stable_sort(out.begin(), out.end(), [](const Sensitivity& a, const Sensitivity& b) {
      return std::fabs(a.per_percent.si) > std::fabs(b.per_percent.si);
    });
    return out;
  }

 private:
  const RateBook& book_;
  std::map<SourceId, Sensitivity> found_;
};

double weight(const std::array<double, cost_kinds>& of, CostKind kind) { return of[static_cast<std::size_t>(kind)]; }

Weights sweep_quote(const QuoteInputs<Sourced>& inputs, std::int64_t quantity, Gradients& gradients) {
  Tape tape;
  const QuoteInputs<Traced> in = lift_quote<Traced>(inputs, &tape);
  const PriceFigures<Traced> price =
      price_figures(in, cost_figures(in), number<Traced>(static_cast<double>(quantity)), 0);
  const std::vector<double> adjoint = sweep(tape, {{price.exact_price.si.node, 1}});
  gradients.add_tape(tape, adjoint, "");
  Weights weights;
  for (std::size_t k = 0; k < cost_kinds; ++k) {
    if (in.each[k].si.tape != nullptr) weights.each[k] = adjoint[in.each[k].si.node];
    if (in.lot[k].si.tape != nullptr) weights.lot[k] = adjoint[in.lot[k].si.node];
  }
  return weights;
}

void seed(std::vector<Seed>& seeds, const Money<Traced>& figure, double by) {
  if (figure.si.tape != nullptr) seeds.push_back({figure.si.node, by});
}

/// A joint's record swept from its costs, each seeded with what the quote makes of it.
void sweep_joint(const RateBook& book, const Job& job, const Joint& joint, const Weights& weights, Tape& tape,
                 Gradients& gradients) {
  tape.clear();
  const RowFigures<Traced> row = row_figures(lift_row<Traced>(gather_row(book, job, joint), &tape));
  std::vector<Seed> seeds;
  for (const PassFigures<Traced>& group : row.passes) {
    seed(seeds, group.labour_cost, weight(weights.each, CostKind::labour));
    seed(seeds, group.equipment_cost, weight(weights.each, CostKind::equipment));
    seed(seeds, group.filler_cost, weight(weights.each, CostKind::filler));
    seed(seeds, group.gas_cost, weight(weights.each, CostKind::gas));
    seed(seeds, group.power_cost, weight(weights.each, CostKind::power));
    seed(seeds, group.wear_cost, weight(weights.each, CostKind::wear));
  }
  gradients.add_tape(tape, sweep(tape, seeds), "joint " + joint.id + ", ");
}

void sweep_weldment(const RateBook& book, const Job& job, const Weldment& weldment, const Weights& weights, Tape& tape,
                    Gradients& gradients) {
  tape.clear();
  const WeldmentRow row = gather_weldment(book, job, weldment);
  const WeldmentFigures<Traced> figures = weldment_figures(row.shape, lift_weldment<Traced>(row.inputs, 0, &tape), 0);
  std::vector<Seed> seeds;
  seed(seeds, figures.labour_cost, weight(weights.each, CostKind::labour));
  seed(seeds, figures.equipment_cost, weight(weights.each, CostKind::equipment));
  seed(seeds, figures.metal_cost, weight(weights.each, CostKind::base_metal));
  gradients.add_tape(tape, sweep(tape, seeds), "weldment " + weldment.name + ", ");
}

/// A bought line moves the price by its own money; a line paid once is quoted apart and leaves the unit price alone.
void add_bought(const Bought& line, double weldments, const Weights& weights, Gradients& gradients) {
  if (line.scaling == Scaling::once) return;
  const auto& of = line.scaling == Scaling::each ? weights.each : weights.lot;
  const double count = line.scaling == Scaling::each ? weldments : 1;
  const double moved = weight(of, cost_kind(line.kind)) * line.price.si.value * count;
  gradients.add(line.price.si.source, moved, "bought: " + line.what);
}

}  // namespace

std::vector<Sensitivity> sensitivities(const RateBook& book, const Job& job, const Estimate& estimate,
                                       const Quote& quote) {
  Gradients gradients(book);
  const Weights weights =
      sweep_quote(quote_inputs(book, job, estimate, quote.setups), job.quantities.front(), gradients);
  Tape tape;
  for (const Joint& joint : job.joints) sweep_joint(book, job, joint, weights, tape, gradients);
  for (const Weldment& weldment : job.weldments) {
    sweep_weldment(book, job, weldment, weights, tape, gradients);
    for (const Bought& line : weldment.bought) {
      add_bought(line, weldment.count.si.value, weights, gradients);
    }
  }
  for (const Bought& line : job.bought) add_bought(line, 1, weights, gradients);
  for (const SetupRow& setup : quote.setups) {
    tape.clear();
    const SetupFigures<Traced> figures = setup_figures(lift_setup<Traced>(setup.inputs, 0, &tape), 0);
    std::vector<Seed> seeds;
    seed(seeds, figures.labour_cost, weight(weights.lot, CostKind::set_up));
    seed(seeds, figures.equipment_cost, weight(weights.lot, CostKind::equipment));
    gradients.add_tape(tape, sweep(tape, seeds), "");
  }
  return gradients.sorted();
}

}  // namespace seambook
