#include "estimate/inputs.hpp"

namespace seambook {
namespace {

const Process& process_of(const RateBook& book, const PassGroup& group) {
  return book.processes[book.procedures[group.procedure].process];
}

/// Thinner members get their tacks closer together.
Known<dim::length> tack_pitch_for(const Process& process, const Joint& joint) {
  const double thinner = least(joint.thickness.si.value, joint.thickness_second.si.value);
  return thinner < process.thin_below.si ? process.tack_pitch_thin : process.tack_pitch;
}

/// A finish may have less to do after one process than after another.
Known<dim::pace> finish_pace_for(const RateBook& book, const Joint& joint) {
  const Finish& finish = book.finishes[joint.finish];
  const std::size_t process = book.procedures[joint.passes.front().procedure].process;
  for (const FinishAfter& after : finish.after)
    if (after.process == process) return after.time;
  return finish.time;
}

JointShape shape_of(const RateBook& book, const Joint& joint) {
  JointShape shape;
  shape.weld = joint.weld;
  shape.tube = joint.outside_diameter.si.source != no_source;
  shape.intermittent = joint.element.si.source != no_source;
  shape.from_throat = joint.throat.si.source != no_source;
  shape.width_given = joint.excess_width.si.source != no_source;
  shape.labour = {joint.purge, joint.access.si.source != no_source,
                  process_of(book, joint.passes.front()).fit_up_extra.si.source != no_source};
  shape.sizes = weld_shape(joint);
  shape.labour.fitted = is_fitted(joint.weld);
  shape.speed_follows = joint.choice.made_by_program;
  return shape;
}

LabourInputs<Sourced> labour_inputs(const RateBook& book, const Joint& joint, const Process& process) {
  LabourInputs<Sourced> in;
  in.fit_up_per_joint = book.allowances.fit_up_per_joint;
  in.fit_up_per_metre = book.allowances.fit_up_per_metre;
  in.tack_time = process.tack;
  in.tack_pitch = tack_pitch_for(process, joint);
  in.fit_up_extra = process.fit_up_extra;
  in.finish_pace = finish_pace_for(book, joint);
  if (joint.purge) in.purge_per_joint = book.allowances.purge_per_joint;
  in.access = joint.access;
  in.personal = book.allowances.personal;
  return in;
}

JointInputs<Sourced> joint_inputs(const RateBook& book, const Job& job, const Joint& joint) {
  const Process& process = process_of(book, joint.passes.front());
  JointInputs<Sourced> in;
  in.weldments = job.weldments[joint.weldment].count;
  in.count = joint.count;
  in.sides = joint.sides;
  in.outside_diameter = joint.outside_diameter;
  in.line = joint.line;
  in.element = joint.element;
  in.pitch = joint.pitch;
  in.throat = joint.throat;
  in.leg = joint.leg;
  in.convexity = joint.convexity;
  in.thickness = joint.thickness;
  in.thickness_second = joint.thickness_second;
  in.gap = joint.gap;
  in.root_face = joint.root_face;
  in.groove_angle = joint.groove_angle;
  in.excess_width = joint.excess_width;
  in.excess_height = joint.excess_height;
  in.weld = weld_inputs(joint);
  if (joint.weld != WeldKind::edge && in.excess_height.si.source != no_source &&
      joint.excess_width.si.source == no_source)
    in.excess_overlap = book.allowances.excess_overlap;
  if (joint.purge) {
    in.purge_flow = book.allowances.purge_flow;
    in.purge_gas_price = book.gases[book.allowances.purge_gas.value()].price;
  }
  in.labour = labour_inputs(book, joint, process);
  // Weld metal is the filler's; without filler nothing is deposited.
  in.density = book.base_metals[joint.base_metal].density;
  for (const PassGroup& group : joint.passes) {
    const auto& filler = book.procedures[group.procedure].filler;
    if (filler) {
      in.density = book.fillers[*filler].density;
      break;
    }
  }
  return in;
}

PassShape pass_shape(const RateBook& book, const Procedure& procedure, const Process& process) {
  PassShape shape;
  shape.filler = procedure.filler.has_value();
  shape.wire = procedure.wire_feed.si.source != no_source;
  shape.area_given = procedure.area_per_pass.si.source != no_source;
  shape.beam = procedure.beam_power.si.source != no_source;
  shape.gas = procedure.gas.has_value();
  shape.loaded_rate = book.labour[process.grade].loaded;
  return shape;
}

PassInputs<Sourced> pass_inputs(const RateBook& book, const PassGroup& group) {
  const Procedure& procedure = book.procedures[group.procedure];
  const Process& process = process_of(book, group);
  const Labour& labour = book.labour[process.grade];
  PassInputs<Sourced> in;
  if (group.count) in.given_passes = *group.count;
  in.wire_feed = procedure.wire_feed;
  in.book_travel = procedure.travel_speed;
  in.travel_low = procedure.travel_low;
  in.travel_high = procedure.travel_high;
  in.area_per_pass = procedure.area_per_pass;
  in.current = procedure.current;
  in.voltage = procedure.voltage;
  in.beam_power = procedure.beam_power;
  in.gas_flow = procedure.gas_flow;
  in.deposition_efficiency = process.deposition_efficiency;
  in.source_efficiency = process.source_efficiency;
  in.thermal_efficiency = process.thermal_efficiency;
  in.gas_loss = process.gas_loss;
  in.auxiliary_power = process.auxiliary_power;
  in.gas_before_and_after = process.gas_before_and_after;
  in.equipment_rate = process.equipment;
  in.wear_rate = process.wear;
  in.labour = {process.start, process.interpass_cleaning, labour.rate, labour.wage, labour.burden};
  if (procedure.filler) {
    in.filler_price = book.fillers[*procedure.filler].price;
    in.wire_diameter = book.fillers[*procedure.filler].diameter;
  }
  if (procedure.gas) in.gas_price = book.gases[*procedure.gas].price;
  in.electricity = book.prices.electricity;
  return in;
}

}  // namespace

Row<Sourced> gather_row(const RateBook& book, const Job& job, const Joint& joint) {
  Row<Sourced> row{shape_of(book, joint),    joint_inputs(book, job, joint), {}, {},
                   gouge_shape(book, joint), gouge_inputs(book, joint)};
  for (const PassGroup& group : joint.passes) {
    row.pass_shapes.push_back(pass_shape(book, book.procedures[group.procedure], process_of(book, group)));
    row.pass_shapes.back().metal = metal_shape(book, joint, group);
    row.pass_shapes.back().wear = wear_lives(book, group);
    row.passes.push_back(pass_inputs(book, group));
    row.passes.back().metal = metal_inputs(book, joint, group);
    row.passes.back().wear_parts = wear_parts(book, group);
  }
  return row;
}

WeldmentRow gather_weldment(const RateBook& book, const Job& job, const Weldment& weldment) {
  // Fitting and turning occupy the station of the weldment's first joint.
  const Process& process = process_of(book, job.joints[weldment.first_joint].passes.front());
  const Labour& labour = book.labour[process.grade];
  const BaseMetal& metal = book.base_metals[weldment.base_metal];
  WeldmentRow row;
  row.shape.loaded_rate = labour.loaded;
  row.shape.metal_by_mass = weldment.metal_by_mass;
  row.inputs.weldments = weldment.count;
  row.inputs.parts = weldment.parts;
  row.inputs.turns = weldment.turns;
  row.inputs.personal = book.allowances.personal;
  row.inputs.fit_up_per_part = book.allowances.fit_up_per_part;
  row.inputs.time_per_turn = book.handling[weldment.handling].turn;
  row.inputs.mass = weldment.mass;
  row.inputs.labour_rate = labour.rate;
  row.inputs.wage = labour.wage;
  row.inputs.burden = labour.burden;
  row.inputs.equipment_rate = process.equipment;
  if (weldment.metal_by_mass) {
    row.inputs.metal_price = metal.price;
    row.inputs.yield = metal.yield;
  }
  return row;
}

}  // namespace seambook
