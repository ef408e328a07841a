#include "quote/piece_totals.hpp"

namespace seambook {
namespace {

double& of_kind(std::array<double, cost_kinds>& cost, CostKind kind) { return cost[static_cast<std::size_t>(kind)]; }

}  // namespace

std::array<double, cost_kinds> welding_kinds(const Totals& welding) {
  std::array<double, cost_kinds> cost{};
  of_kind(cost, CostKind::labour) = welding.labour.si;
  of_kind(cost, CostKind::equipment) = welding.equipment.si;
  of_kind(cost, CostKind::filler) = welding.filler_cost.si;
  of_kind(cost, CostKind::gas) = welding.gas_cost.si;
  of_kind(cost, CostKind::power) = welding.power.si;
  of_kind(cost, CostKind::wear) = welding.wear.si;
  return cost;
}

PieceTotals weldment_totals(const Job& job, const Estimate& estimate, std::size_t weldment) {
  const Weldment& w = job.weldments[weldment];
  const WeldmentFigures<double>& own = estimate.weldments[weldment];
  PieceTotals out;
  for (std::size_t j = w.first_joint; j < w.first_joint + w.joint_count; ++j) {
    out.welding += joint_totals(estimate.joints[j]);
  }
  out.floor = out.welding.floor + own.floor;
  out.waiting = out.welding.waiting + own.elements.waiting;
  out.cost = welding_kinds(out.welding);
  of_kind(out.cost, CostKind::labour) += own.labour_cost.si;
  of_kind(out.cost, CostKind::equipment) += own.equipment_cost.si;
  of_kind(out.cost, CostKind::free_issue) = own.free_issue_cost.si;
  if (w.metal_by_mass) of_kind(out.cost, CostKind::base_metal) = own.metal_cost.si;
  for (const Bought& line : w.bought) {
    if (line.scaling == Scaling::each)
      of_kind(out.cost, cost_kind(line.kind)) += line.price.si.value * w.count.si.value;
  }
  return out;
}

PieceTotals piece_totals(const Job& job, const Estimate& estimate, const Quote& quote) {
  PieceTotals out;
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const PieceTotals part = weldment_totals(job, estimate, w);
    out.welding += part.welding;
    out.floor = out.floor + part.floor;
    out.waiting = out.waiting + part.waiting;
  }
  out.cost = plain_money(quote.inputs.each);
  return out;
}

double sum_of_kinds(const std::array<double, cost_kinds>& cost) {
  double sum = 0;
  for (const double money : cost) sum += money;
  return sum;
}

std::array<double, cost_kinds> plain_money(const std::array<Money<>, cost_kinds>& cost) {
  std::array<double, cost_kinds> out{};
  for (std::size_t k = 0; k < cost_kinds; ++k) out[k] = cost[k].si;
  return out;
}

}  // namespace seambook
