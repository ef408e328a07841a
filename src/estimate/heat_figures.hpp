// Hardening and preheat of a joint, written once for plain and for traced numbers; the formulas are in trade/heat.hpp
// and trade/preheating.hpp. What method B gives is worth something only inside its range: method_b_lacks
// (estimate/preheat.hpp) says whether it is, and what is lacking; without it the number is not to be shown.
#pragma once

#include "estimate/inputs.hpp"
#include "estimate/labour_figures.hpp"
#include "trade/heat.hpp"
#include "trade/preheating.hpp"

namespace seambook {

/// Figures of a joint as a whole; those that the shape leaves out stay 0.
template <class N>
struct HeatFigures {
  Ratio<N> carbon_equivalent, cet, crack_parameter;
  Length<N> combined_thickness, thicker;
  Mass<N> heated;
  Energy<N> needed;
  Time<N> burner, waiting;  // waiting: what nobody attends of the burner's time
  Money<N> fuel;
};

template <class N>
Length<N> combined_thickness_of(const HeatShape& shape, Length<N> first, Length<N> second) {
  if (!shape.tee) return combined_thickness(first, second);
  if (shape.second_goes) return combined_thickness_tee(second, first);
  return combined_thickness_tee(max(first, second), min(first, second));
}

template <class N>
HeatFigures<N> heat_figures(const HeatShape& shape, const HeatInputs<N>& in, Length<N> first, Length<N> second) {
  HeatFigures<N> out;
  if (shape.hardens || shape.heated)
    out.combined_thickness = name(combined_thickness_of(shape, first, second), fig::combined_thickness);
  if (!shape.hardens) return out;
  if (shape.has_equivalent())
    out.carbon_equivalent =
        name(shape.equivalent_stated ? in.carbon_equivalent : carbon_equivalent(in.steel), fig::carbon_equivalent);
  if (shape.has_cet()) out.cet = name(shape.cet_stated ? in.cet : carbon_equivalent_cet(in.steel), fig::cet);
  if (shape.composition) out.crack_parameter = name(crack_parameter(in.steel), fig::crack_parameter);
  if (shape.method_b) out.thicker = name(max(first, second), fig::plate_thickness);
  return out;
}

/// Heat, burner and fuel; then the labour that goes with them. `passes` counts those of all groups.
template <class N>
void preheat_effort(const HeatShape& shape, const HeatInputs<N>& in, const LabourDrivers<N>& drivers, Ratio<N> passes,
                    HeatFigures<N>& out, JointLabour<N>& labour) {
  if (!shape.heated) return;
  const Length<N> line = drivers.line * drivers.joints_made;
  out.heated = name(heated_mass(in.density, out.combined_thickness, in.soak_width, line), fig::heated);
  out.needed = name(heat_needed(out.heated, in.specific_heat, in.preheat, in.room), fig::preheat_energy);
  out.burner = name(burner_time(out.needed, in.burner, in.burner_efficiency), fig::burner_min);
  out.fuel = name(fuel_cost(out.needed, in.burner_efficiency, in.fuel), fig::fuel_money);
  if (!shape.charged) return;
  Time<N> minutes = out.burner;
  if (shape.partly_attended) {
    minutes = out.burner * in.attended;
    out.waiting = out.burner * (number<N>(1) - in.attended);
  }
  if (shape.check_per_joint) minutes = minutes + drivers.joints_made * in.check_per_joint;
  if (shape.check_per_pass) minutes = minutes + drivers.joints_made * drivers.sides * passes * in.check_per_pass;
  labour.preheat = name(minutes, fig::preheat_min);
}

/// What method B asks for before the passes of group g. See above.
template <class N>
Temperature<N> asked_by_method_b(const Row<N>& row, const HeatFigures<N>& joint, LineEnergy<N> heat, std::uint32_t g) {
  if (!row.heat_shape.method_b || !row.pass_shapes[g].hydrogen) return {};
  return name(preheat_method_b(joint.cet, joint.thicker, row.passes[g].hydrogen, heat), fig::preheat_asked, g);
}

}  // namespace seambook
