#include <fmt/format.h>

#include "quote/job_work.hpp"
#include "quote/lift.hpp"
#include "quote/quote.hpp"

namespace seambook {
namespace {

/// Money of the price per unit of each cost kind, from the sweep over the quote's own record.
struct Weights {
  std::array<double, cost_kinds> each{}, lot{}, once{};
};

double weight(const std::array<double, cost_kinds>& of, CostKind kind) { return of[static_cast<std::size_t>(kind)]; }

Weights sweep_quote(const RateBook& book, QuoteInputs<Sourced> inputs, std::int64_t quantity, SweptPrice swept,
                    Gradients& gradients) {
  Tape tape;
  inputs.has_minimum = false;  // where it binds nothing would move
  inputs.order.list_rounded = false;
  const QuoteInputs<Traced> in = lift_quote<Traced>(inputs, &tape);
  const PriceFigures<Traced> price =
      price_figures(in, cost_figures(in), number<Traced>(static_cast<double>(quantity)), 0);
  const Money<Traced>& of = swept == SweptPrice::unit ? price.exact_price : price.total;
  const std::vector<double> adjoint = sweep(tape, {{of.si.node, 1}});
  add_gradients(gradients, book, tape, adjoint, "");
  Weights weights;
  for (std::size_t k = 0; k < cost_kinds; ++k) {
    if (in.each[k].si.tape != nullptr) weights.each[k] = adjoint[in.each[k].si.node];
    if (in.lot[k].si.tape != nullptr) weights.lot[k] = adjoint[in.lot[k].si.node];
    if (in.once[k].si.tape != nullptr) weights.once[k] = adjoint[in.once[k].si.node];
  }
  return weights;
}

/// A joint's record swept from its costs, each seeded with what the quote makes of it.
void sweep_joint(const RateBook& book, const Job& job, const Joint& joint, const Weights& weights, Tape& tape,
                 Gradients& gradients) {
  tape.clear();
  const RowFigures<Traced> row = row_figures(lift_row<Traced>(gather_row(book, job, joint), &tape));
  std::vector<Seed> seeds;
  for (const PassFigures<Traced>& group : row.passes) {
    seed(seeds, group.labour_cost.si, weight(weights.each, CostKind::labour));
    seed(seeds, group.equipment_cost.si, weight(weights.each, CostKind::equipment));
    seed(seeds, group.filler_cost.si, weight(weights.each, CostKind::filler));
    seed(seeds, group.flux_cost.si, weight(weights.each, CostKind::filler));
    seed(seeds, group.gas_cost.si, weight(weights.each, CostKind::gas));
    seed(seeds, group.power_cost.si, weight(weights.each, CostKind::power));
    seed(seeds, group.wear_cost.si, weight(weights.each, CostKind::wear));
  }
  add_gradients(gradients, book, tape, sweep(tape, seeds), "joint " + joint.id + ", ");
}

void sweep_weldment(const RateBook& book, const Job& job, const Weldment& weldment, const Weights& weights, Tape& tape,
                    Gradients& gradients) {
  tape.clear();
  const WeldmentRow row = gather_weldment(book, job, weldment);
  const WeldmentFigures<Traced> figures = weldment_figures(row.shape, lift_weldment<Traced>(row.inputs, 0, &tape), 0);
  std::vector<Seed> seeds;
  seed(seeds, figures.labour_cost.si, weight(weights.each, CostKind::labour));
  seed(seeds, figures.equipment_cost.si, weight(weights.each, CostKind::equipment));
  seed(seeds, figures.metal_cost.si, weight(weights.each, CostKind::base_metal));
  seed(seeds, figures.free_issue_cost.si, weight(weights.each, CostKind::free_issue));
  add_gradients(gradients, book, tape, sweep(tape, seeds), "weldment " + weldment.name + ", ");
}

/// A bought line moves the price by its own money; a line paid once leaves the price of a piece alone.
void add_bought(const RateBook& book, const Bought& line, double weldments, const Weights& weights,
                Gradients& gradients) {
  const auto& of = line.scaling == Scaling::each      ? weights.each
                   : line.scaling == Scaling::per_lot ? weights.lot
                                                      : weights.once;
  const double count = line.scaling == Scaling::each ? weldments : 1;
  const double moved = weight(of, cost_kind(line.kind)) * line.price.si.value * count;
  if (moved != 0) add_gradient(gradients, book, line.price.si, unit::money, moved, "bought: " + line.what);
}

}  // namespace

std::vector<Sensitivity> sensitivities(const RateBook& book, const Job& job, const Estimate& estimate,
                                       const Quote& quote, SweptPrice swept) {
  Gradients gradients;
  const Weights weights =
      sweep_quote(book, quote_inputs(book, job, estimate, quote.setups), job.quantities.front(), swept, gradients);
  Tape tape;
  for (const Joint& joint : job.joints) sweep_joint(book, job, joint, weights, tape, gradients);
  for (const Weldment& weldment : job.weldments) {
    sweep_weldment(book, job, weldment, weights, tape, gradients);
    for (const Bought& line : weldment.bought) {
      add_bought(book, line, weldment.count.si.value, weights, gradients);
    }
  }
  for (const Bought& line : job.bought) add_bought(book, line, 1, weights, gradients);
  for (const JobWork& work : job.work) {
    if (!work.attended) continue;
    tape.clear();
    const auto figures = job_work_figures(lift_job_work<Traced>(gather_job_work(book, work), 0, &tape), 0);
    std::vector<Seed> seeds;
    seed(seeds, figures.labour_cost.si, weight(work.once ? weights.once : weights.lot, CostKind::labour));
    add_gradients(gradients, book, tape, sweep(tape, seeds), work.what + ", ");
  }
  for (const SetupRow& setup : quote.setups) {
    tape.clear();
    const SetupFigures<Traced> figures = setup_figures(lift_setup<Traced>(setup.inputs, 0, &tape), 0);
    std::vector<Seed> seeds;
    seed(seeds, figures.labour_cost.si, weight(weights.lot, CostKind::set_up));
    seed(seeds, figures.equipment_cost.si, weight(weights.lot, CostKind::equipment));
    add_gradients(gradients, book, tape, sweep(tape, seeds), "");
  }
  return sorted(gradients);
}

}  // namespace seambook
