// From job and rate book to the inputs of hardening and preheat.
#include "estimate/heat_inputs.hpp"

namespace seambook {
namespace {

template <Dim D>
bool is_there(const Known<D>& known) {
  return known.si.source != no_source;
}

}  // namespace

Known<dim::volume_per_mass> hydrogen_of(const RateBook& book, const PassGroup& group) {
  const Procedure& procedure = book.procedures[group.procedure];
  if (is_there(procedure.hydrogen) || !procedure.filler) return procedure.hydrogen;
  return book.fillers[*procedure.filler].hydrogen;
}

HeatShape heat_shape(const RateBook& book, const Joint& joint) {
  const BaseMetal& metal = book.base_metals[joint.base_metal];
  HeatShape shape;
  shape.hardens = hardens(metal.group);
  shape.tee = joint.heat.tee;
  shape.second_goes = is_one_flank(joint.weld) || is_there(joint.path.branch_on);
  shape.composition = metal.hardening.composition;
  shape.equivalent_stated = is_there(metal.hardening.carbon_equivalent);
  shape.cet_stated = is_there(metal.hardening.cet);
  shape.method_b = suits_method_b(metal.group) && shape.has_cet();
  shape.heated = is_there(joint.heat.preheat) && book.preheating.has_value();
  shape.charged = shape.heated && !book.method.covered(WorkKind::preheat);
  if (!shape.charged) return shape;
  const Preheating& preheating = *book.preheating;
  shape.partly_attended = is_there(preheating.attended);
  shape.check_per_joint = is_there(preheating.check_per_joint);
  shape.check_per_pass = is_there(preheating.check_per_pass);
  return shape;
}

HeatInputs<Sourced> heat_inputs(const RateBook& book, const Joint& joint) {
  const BaseMetal& metal = book.base_metals[joint.base_metal];
  HeatInputs<Sourced> in;
  in.preheat = joint.heat.preheat;
  in.interpass_max = joint.heat.interpass_max;
  in.heat_input_max = joint.heat.heat_input_max;
  in.steel = metal.hardening.shares;
  in.carbon_equivalent = metal.hardening.carbon_equivalent;
  in.cet = metal.hardening.cet;
  in.density = metal.density;
  if (!is_there(in.preheat) || !book.preheating) return in;
  const Preheating& preheating = *book.preheating;
  in.room = preheating.room;
  in.soak_width = preheating.soak_width;
  in.specific_heat = is_there(metal.specific_heat) ? metal.specific_heat : preheating.specific_heat;
  in.burner = preheating.burner;
  in.burner_efficiency = preheating.burner_efficiency;
  in.attended = preheating.attended;
  in.fuel = preheating.fuel;
  in.check_per_joint = preheating.check_per_joint;
  in.check_per_pass = preheating.check_per_pass;
  return in;
}

}  // namespace seambook
