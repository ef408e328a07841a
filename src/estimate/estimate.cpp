#include "estimate/estimate.hpp"

namespace seambook {

Estimate estimate(const RateBook& book, const Job& job) {
  Estimate out;
  out.joints.reserve(job.joints.size());
  for (const Joint& joint : job.joints)
    out.joints.push_back(row_figures(lift_row<double>(gather_row(book, job, joint))));
  for (const Weldment& weldment : job.weldments) {
    const WeldmentRow row = gather_weldment(book, job, weldment);
    out.weldments.push_back(weldment_figures(row.shape, lift_weldment<double>(row.inputs, 0), 0));
  }
  return out;
}

Totals joint_totals(const RowFigures<double>& row) {
  Totals t;
  t.weld_length = row.joint.weld_length;
  t.unwelded = row.joint.unwelded;
  t.weld_elements = row.joint.weld_elements.si;
  t.waiting = row.joint.labour.elements.waiting;
  for (const PassFigures<double>& g : row.passes) {
    t.passes += g.passes.si;
    t.deposit = t.deposit + g.deposit;
    t.filler = t.filler + g.filler;
    t.flux = t.flux + g.flux;
    t.pieces += g.pieces.si;
    t.arc = t.arc + g.arc;
    t.floor = t.floor + g.labour.floor;
    t.gas = t.gas + g.gas + g.purge_gas;
    t.energy = t.energy + g.energy;
    t.labour = t.labour + g.labour_cost;
    t.filler_cost = t.filler_cost + g.filler_cost + g.flux_cost;
    t.gas_cost = t.gas_cost + g.gas_cost;
    t.power = t.power + g.power_cost;
    t.equipment = t.equipment + g.equipment_cost;
    t.wear = t.wear + g.wear_cost;
  }
  return t;
}

Totals& operator+=(Totals& a, const Totals& b) {
  a.weld_length = a.weld_length + b.weld_length;
  a.unwelded = a.unwelded + b.unwelded;
  a.weld_elements += b.weld_elements;
  a.passes += b.passes;
  a.deposit = a.deposit + b.deposit;
  a.filler = a.filler + b.filler;
  a.flux = a.flux + b.flux;
  a.pieces += b.pieces;
  a.arc = a.arc + b.arc;
  a.floor = a.floor + b.floor;
  a.waiting = a.waiting + b.waiting;
  a.gas = a.gas + b.gas;
  a.energy = a.energy + b.energy;
  a.labour = a.labour + b.labour;
  a.filler_cost = a.filler_cost + b.filler_cost;
  a.gas_cost = a.gas_cost + b.gas_cost;
  a.power = a.power + b.power;
  a.equipment = a.equipment + b.equipment;
  a.wear = a.wear + b.wear;
  return a;
}

Money<> welding_cost(const Totals& t) { return t.labour + t.filler_cost + t.gas_cost + t.power + t.equipment + t.wear; }

}  // namespace seambook
