#include "quote/job_work.hpp"
#include "quote/lift.hpp"
#include "quote/piece_totals.hpp"
#include "quote/quote.hpp"

namespace seambook {
namespace {

std::size_t kind_index(CostKind kind) { return static_cast<std::size_t>(kind); }

void add(Money<Sourced>& sum, double money) { sum = {{sum.si.value + money, summed}}; }

/// A bought line in its column: what every piece takes counts with the weldments in a piece.
void add_bought(const Bought& line, double weldments, const Lifting& by, QuoteInputs<Sourced>& in) {
  const double price = by.moved(line.price.si);
  switch (line.scaling) {
    case Scaling::each:
      add(in.each[kind_index(cost_kind(line.kind))], price * weldments);
      break;
    case Scaling::per_lot:
      add(in.lot[kind_index(cost_kind(line.kind))], price);
      break;
    case Scaling::once:
      add(in.once[kind_index(cost_kind(line.kind))], price);
      break;
  }
}

OrderTerms<Sourced> order_terms(const RateBook& book, const Job& job) {
  OrderTerms<Sourced> in;
  if (job.order.learning) {
    in.learning = true;
    in.unit_model = book.learning->model == LearningModel::unit;
    in.learning_rate = book.learning->rate;
    in.learning_holds_at = book.learning->holds_at;
    in.holds_at_first = in.learning_holds_at.si.source == no_source;
    if (in.holds_at_first) in.learning_holds_at = {{1, no_source}};
  }
  in.expedite_asked = job.order.expedite;
  in.expedite = book.prices.expedite;
  if (const std::optional<JobFreight>& freight = job.order.freight) {
    in.has_freight = true;
    in.freight_with_margin = book.freight->with_margin;
    in.freight_each = freight->scaling == Scaling::each;
    in.freight = freight->price;
    if (freight->by_mass)
      for (const FreightClass& one : book.freight->by_mass) in.freight_by_mass.push_back({one.up_to, one.price});
  }
  if (!job.of_option.empty()) return in;  // tax and the price list's step are the order's
  in.list_rounded = book.prices.list_rounding.si.source != no_source;
  in.list_step = book.prices.list_rounding;
  in.taxed = book.prices.tax_rate.si.source != no_source && job.order.untaxed.empty();
  in.tax_rate = book.prices.tax_rate;
  return in;
}

}  // namespace

QuoteInputs<Sourced> policy_inputs(const RateBook& book, const Job& job) {
  QuoteInputs<Sourced> in;
  in.overhead_added = book.overhead_added.has_value();
  if (book.overhead_added) in.overhead = *book.overhead_added;
  in.contingency = job.order.risk ? book.risk_classes[*job.order.risk].contingency : book.prices.contingency;
  in.margin = book.prices.margin;
  in.markup = book.prices.markup;
  in.by_margin = book.prices.by_margin;
  in.minimum_charge = book.prices.minimum_charge;
  in.has_minimum = book.prices.minimum_charge.si.source != no_source && job.of_option.empty();
  in.digits = book.minor_digits;
  in.order = order_terms(book, job);
  return in;
}

QuoteInputs<Sourced> quote_inputs(const RateBook& book, const Job& job, const Estimate& estimate,
                                  const std::vector<SetupRow>& setups) {
  Totals welding;
  for (const RowFigures<double>& row : estimate.joints) welding += joint_totals(row);
  return quote_inputs(book, job, welding_kinds(welding), estimate.weldments, setups, {});
}

QuoteInputs<Sourced> quote_inputs(const RateBook& book, const Job& job, const std::array<double, cost_kinds>& welding,
                                  const std::vector<WeldmentFigures<double>>& weldments,
                                  const std::vector<SetupRow>& setups, const Lifting& by) {
  QuoteInputs<Sourced> in = policy_inputs(book, job);
  for (const CostKind kind :
       {CostKind::labour, CostKind::equipment, CostKind::filler, CostKind::gas, CostKind::power, CostKind::wear})
    add(in.each[kind_index(kind)], welding[kind_index(kind)]);
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const WeldmentFigures<double>& figures = weldments[w];
    add(in.each[kind_index(CostKind::labour)], figures.labour_cost.si);
    add(in.each[kind_index(CostKind::equipment)], figures.equipment_cost.si);
    add(in.each[kind_index(CostKind::free_issue)], figures.free_issue_cost.si);
    if (in.order.has_freight) in.order.piece_mass = {{in.order.piece_mass.si.value + figures.mass.si, summed}};
    if (job.weldments[w].metal_by_mass) add(in.each[kind_index(CostKind::base_metal)], figures.metal_cost.si);
    for (const Bought& line : job.weldments[w].bought) add_bought(line, job.weldments[w].count.si.value, by, in);
  }
  for (const Bought& line : job.bought) add_bought(line, 1, by, in);
  for (const JobWork& work : job.work) {
    if (!work.attended) continue;
    auto& of = work.once ? in.once : in.lot;
    const Money<> labour = job_work_figures(lift_job_work<double>(gather_job_work(book, work), 0, by), 0).labour_cost;
    add(of[kind_index(CostKind::labour)], labour.si);
  }
  for (const SetupRow& row : setups) {
    const SetupFigures<double> figures = setup_figures(lift_setup<double>(row.inputs, 0, by), 0);
    add(in.lot[kind_index(CostKind::set_up)], figures.labour_cost.si);
    add(in.lot[kind_index(CostKind::equipment)], figures.equipment_cost.si);
  }
  return in;
}

}  // namespace seambook
