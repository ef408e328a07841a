// The estimate of one joint and its pass groups, written once for plain and for traced numbers.
// All figures are for one piece of the job: counts of joints and weldments are in them.
#pragma once

#include "estimate/consumption_figures.hpp"
#include "estimate/line_figures.hpp"
#include "estimate/section_figures.hpp"
#include "trade/gouge.hpp"

namespace seambook {

/// Figures of a joint as a whole.
template <class N>
struct JointFigures : LineFigures<N> {
  Area<N> section, gouged, laid;  // as drawn, gouged from the back, both together
  JointLabour<N> labour;
};

template <class N>
struct RowFigures {
  JointFigures<N> joint;
  std::vector<PassFigures<N>> passes;
};

template <class N>
LabourDrivers<N> drivers_of(const JointFigures<N>& joint) {
  return {joint.line, joint.weld_length, joint.joints_made, joint.weld_elements};
}

template <class N>
JointFigures<N> joint_figures(const JointShape& shape, const JointInputs<N>& in) {
  JointFigures<N> out{line_figures(shape, in), {}, {}, {}, {}};
  out.section = name(section_of(shape, in), fig::section);
  out.labour = joint_labour(shape.labour, in.labour, drivers_of(out));
  return out;
}

/// Section gouged from the back, and what has to be laid with it.
template <class N>
void gouge_root(const Row<N>& row, JointFigures<N>& out) {
  out.laid = out.section;
  if (!row.gouge_shape.gouged) return;
  out.gouged = name(gouged_section(row.gouge.depth, row.gouge.width), fig::gouged);
  out.laid = name(out.section + out.gouged, fig::section_laid);
}

/// Labour of group g: its elements, and where they arise electrode changes and the gouging.
template <class N>
PassLabour<N> labour_of_group(const Row<N>& row, const JointFigures<N>& whole, std::uint32_t g,
                              const PassFigures<N>& out) {
  const bool last = g + 1 == row.passes.size();
  PassLabour<N> labour = pass_labour(row.passes[g].labour, drivers_of(whole), out.passes, last, g);
  if (row.pass_shapes[g].metal.changes)
    labour.electrode_change = name(out.pieces * row.passes[g].metal.electrode_change, fig::change_min, g);
  if (row.gouge_shape.gouged && row.gouge_shape.group == g)
    labour.gouge = name(whole.weld_length * row.gouge.pace, fig::gouge_min, g);
  floor_times(row.shape.labour, row.joint.labour, whole.labour, out.arc, g, labour);
  return labour;
}

template <class N>
void materials_and_money(const Row<N>& row, const JointFigures<N>& whole, const PassShape& shape,
                         const PassInputs<N>& in, std::uint32_t g, PassFigures<N>& out) {
  const MoneyPerTime<N> labour = labour_rate_of(in.labour, shape.loaded_rate);
  out.labour_cost = name(out.labour.floor * labour, fig::labour_cost, g);
  Money<N> cost = out.labour_cost;
  if (shape.filler) {
    out.difference_cost = name(
        (out.arc_by_deposition - out.arc) * (number<N>(1) + row.joint.labour.personal) * (labour + in.equipment_rate),
        fig::difference_cost, g);
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
  out.power_cost = name(out.energy * in.electricity, fig::power_cost, g);
  out.wear_cost = name(wear_of(row, whole.weld_length, g, out), fig::wear_cost, g);
  out.equipment_cost = name(out.labour.floor * in.equipment_rate, fig::equipment_cost, g);
  out.cost = name(cost + out.power_cost + out.wear_cost + out.equipment_cost, fig::joint_cost, g);
}

template <class N>
RowFigures<N> row_figures(const Row<N>& row) {
  RowFigures<N> out{joint_figures(row.shape, row.joint), std::vector<PassFigures<N>>(row.passes.size())};
  gouge_root(row, out.joint);
  share_section(row, out.joint.laid, out.joint.gouged, out.passes);
  for (std::size_t i = 0; i < row.passes.size(); ++i) {
    const auto g = static_cast<std::uint32_t>(i);
    weld_passes(row, out.joint.weld_length, g, out.passes[i]);
    filler_used(row, out.joint.weld_length, g, out.passes[i]);
    out.passes[i].labour = labour_of_group(row, out.joint, g, out.passes[i]);
    materials_and_money(row, out.joint, row.pass_shapes[i], row.passes[i], g, out.passes[i]);
  }
  return out;
}

/// Fit-up of parts, turning, and base metal by mass.
template <class N>
struct WeldmentFigures {
  Time<N> parts, turns, floor;
  Money<N> labour_cost, equipment_cost, metal_cost;
  Mass<N> mass;
};

template <class N>
WeldmentFigures<N> weldment_figures(const WeldmentShape& shape, const WeldmentInputs<N>& in, std::uint32_t row) {
  WeldmentFigures<N> out;
  out.parts = name(in.weldments * in.parts * in.fit_up_per_part, fig::parts_min, row);
  out.turns = name(in.weldments * in.turns * in.time_per_turn, fig::turns_min, row);
  out.floor = name(floor_time(out.parts + out.turns, in.personal), fig::weldment_floor, row);
  const MoneyPerTime<N> labour = shape.loaded_rate ? in.labour_rate : loaded_rate(in.wage, in.burden);
  out.labour_cost = name(out.floor * labour, fig::weldment_labour, row);
  out.equipment_cost = name(out.floor * in.equipment_rate, fig::weldment_equipment, row);
  out.mass = name(in.weldments * in.mass, fig::weldment_mass, row);
  if (shape.metal_by_mass) out.metal_cost = name(out.mass / in.yield * in.metal_price, fig::metal_cost, row);
  return out;
}

}  // namespace seambook
