// The estimate of one joint and its pass groups, written once for plain and for traced numbers.
// All figures are for one piece of the job: counts of joints and weldments are in them.
#pragma once

#include "estimate/consumption_figures.hpp"
#include "estimate/heat_figures.hpp"
#include "estimate/line_figures.hpp"
#include "estimate/section_figures.hpp"
#include "trade/gouge.hpp"

namespace seambook {

/// Figures of a joint as a whole.
template <class N>
struct JointFigures : LineFigures<N> {
  Area<N> section, gouged, laid;  // as drawn, gouged from the back, both together
  JointLabour<N> labour;
  HeatFigures<N> heat;
};

template <class N>
struct RowFigures {
  JointFigures<N> joint;
  std::vector<PassFigures<N>> passes;
};

template <class N>
LabourDrivers<N> drivers_of(const JointFigures<N>& joint, Ratio<N> sides) {
  return {joint.line, joint.weld_length, joint.joints_made, joint.weld_elements, sides};
}

template <class N>
JointFigures<N> joint_figures(const JointShape& shape, const JointInputs<N>& in) {
  JointFigures<N> out{line_figures(shape, in), {}, {}, {}, {}, {}};
  out.section = name(section_of(shape, in), fig::section);
  out.labour = joint_labour(shape.labour, in.labour, drivers_of(out, in.sides));
  return out;
}

/// Section gouged from the back, and what has to be laid with it.
template <class N>
void gouge_root(const Row<N>& row, JointFigures<N>& out) {
  out.laid = out.section;
  if (!row.gouge_shape.gouged || row.gouge_shape.own_groove) return;
  out.gouged = name(gouged_section(row.gouge.depth, row.gouge.width), fig::gouged);
  out.laid = name(out.section + out.gouged, fig::section_laid);
}

/// Labour of group g: its elements, and where they arise electrode changes and the gouging. Who covers starts by a
/// factor covers the changes.
template <class N>
PassLabour<N> labour_of_group(const Row<N>& row, const JointFigures<N>& whole, const LabourDrivers<N>& drivers,
                              std::uint32_t g, const PassFigures<N>& out) {
  const bool last = g + 1 == row.passes.size();
  PassLabour<N> labour = pass_labour(row.shape.labour, row.passes[g].labour, drivers, out.passes, out.arc, last, g);
  if (row.pass_shapes[g].metal.changes && row.shape.labour.starts)
    labour.electrode_change = name(out.pieces * row.passes[g].metal.electrode_change, fig::change_min, g);
  if (row.gouge_shape.gouged && row.gouge_shape.group == g)
    labour.gouge = name(whole.weld_length * row.gouge.pace, fig::gouge_min, g);
  return labour;
}

template <class N>
void materials_and_money(const Row<N>& row, const JointFigures<N>& whole, const PassShape& shape,
                         const PassInputs<N>& in, std::uint32_t g, PassFigures<N>& out) {
  const MoneyPerTime<N> labour = labour_rate_of(in.labour, shape.loaded_rate);
  out.labour_cost =
      name(labour_money(row.shape.labour, row.joint.labour, whole.labour.elements, g, out.labour.floor, labour),
           fig::labour_cost, g);
  Money<N> cost = out.labour_cost;
  if (shape.filler) {
    const Time<N> floor_difference =
        floor_of_arc(row.shape.labour, row.joint.labour, in.labour, out.arc_by_deposition - out.arc);
    out.difference_cost = name(floor_difference * (labour + in.equipment_rate), fig::difference_cost, g);
    cost = cost + out.filler_cost;
    if (shape.metal.flux) cost = cost + out.flux_cost;
  }
  Money<N> gas_cost{};
  if (shape.gas) {
    out.gas =
        name(gas_volume(in.gas_flow, out.arc, out.labour.starts, in.gas_before_and_after, in.gas_loss), fig::gas, g);
    gas_cost = out.gas * in.gas_price;
  }
  if (row.shape.labour.purge) {
    const Time<N> purged = g == 0 ? whole.labour.purge + out.arc : out.arc;
    out.purge_gas = name(row.joint.purge_flow * purged * in.gas_loss, fig::purge_gas, g);
    gas_cost = gas_cost + out.purge_gas * row.joint.purge_gas_price;
  }
  out.gas_cost = name(gas_cost, fig::gas_cost, g);
  cost = cost + out.gas_cost;
  out.energy =
      name(shape.beam ? beam_electricity(in.beam_power, in.source_efficiency, in.auxiliary_power, out.arc)
                      : arc_electricity(in.voltage, in.current, in.source_efficiency, in.auxiliary_power, out.arc),
           fig::energy, g);
  const Money<N> electricity = out.energy * in.electricity;
  out.power_cost = name(g == 0 ? electricity + whole.heat.fuel : electricity, fig::power_cost, g);
  out.wear_cost = name(wear_of(row, whole.weld_length, g, out), fig::wear_cost, g);
  out.equipment_cost = name(out.labour.floor * in.equipment_rate, fig::equipment_cost, g);
  out.cost = name(cost + out.power_cost + out.wear_cost + out.equipment_cost, fig::joint_cost, g);
}

/// Hardening, preheat and what it takes, when the passes are known.
template <class N>
void heat_the_joint(const Row<N>& row, const LabourDrivers<N>& drivers, RowFigures<N>& out) {
  HeatFigures<N>& heat = out.joint.heat;
  heat = heat_figures(row.heat_shape, row.heat, row.joint.thickness, row.joint.thickness_second);
  Ratio<N> passes{};
  for (std::size_t g = 0; g < out.passes.size(); ++g) {
    passes = passes + out.passes[g].passes;
    out.passes[g].preheat_asked = asked_by_method_b(row, heat, out.passes[g].heat_input, static_cast<std::uint32_t>(g));
  }
  preheat_effort(row.heat_shape, row.heat, drivers, passes, heat, out.joint.labour);
}

template <class N>
RowFigures<N> row_figures(const Row<N>& row) {
  RowFigures<N> out{joint_figures(row.shape, row.joint), std::vector<PassFigures<N>>(row.passes.size())};
  gouge_root(row, out.joint);
  const LabourDrivers<N> drivers = drivers_of(out.joint, row.joint.sides);
  share_section(row, out.joint.laid, out.joint.gouged, out.passes);
  for (std::size_t i = 0; i < row.passes.size(); ++i) {
    const auto g = static_cast<std::uint32_t>(i);
    weld_passes(row, out.joint.weld_length, g, out.passes[i]);
    filler_used(row, out.joint.weld_length, g, out.passes[i]);
    out.passes[i].labour = labour_of_group(row, out.joint, drivers, g, out.passes[i]);
  }
  heat_the_joint(row, drivers, out);
  if (!row.joint.labour.terms.empty() || row.heat_shape.partly_attended)
    out.joint.labour.elements = element_times(
        row.joint.labour.terms, joint_counts(drivers, out.joint.labour, out.passes), 0, out.joint.heat.waiting);
  for (std::size_t i = 0; i < row.passes.size(); ++i) {
    const auto g = static_cast<std::uint32_t>(i);
    floor_times(row.shape.labour, row.joint.labour, out.joint.labour, g, out.passes[i].labour);
    materials_and_money(row, out.joint, row.pass_shapes[i], row.passes[i], g, out.passes[i]);
  }
  return out;
}

}  // namespace seambook
