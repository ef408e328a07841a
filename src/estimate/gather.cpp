#include "estimate/gather_labour.hpp"
#include "estimate/inputs.hpp"

namespace seambook {
namespace {

const Process& process_of(const RateBook& book, const PassGroup& group) {
  return book.processes[book.procedures[group.procedure].process];
}

JointShape shape_of(const RateBook& book, const Joint& joint) {
  JointShape shape;
  shape.weld = joint.weld;
  shape.tube = joint.outside_diameter.si.source != no_source;
  shape.intermittent = joint.element.si.source != no_source;
  shape.from_throat = joint.throat.si.source != no_source;
  shape.width_given = joint.excess_width.si.source != no_source;
  shape.sizes = weld_shape(joint);
  shape.labour = labour_shape(book, joint);
  shape.speed_follows = joint.choice.made_by_program;
  return shape;
}

JointInputs<Sourced> joint_inputs(const RateBook& book, const Job& job, const Joint& joint) {
  JointInputs<Sourced> in;
  in.weldments = job.weldments[joint.weldment].count;
  in.count = joint.count;
  in.sides = joint.sides;
  in.outside_diameter = joint.outside_diameter;
  in.line = joint.line;
  in.element = joint.element;
  if (joint.path.gap_e.si.source == no_source) in.pitch = joint.pitch;
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
  in.labour = labour_inputs(book, joint);
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

PassShape pass_shape(const RateBook& book, const Joint& joint, const PassGroup& group) {
  const Procedure& procedure = book.procedures[group.procedure];
  PassShape shape;
  shape.filler = procedure.filler.has_value();
  shape.wire = procedure.wire_feed.si.source != no_source;
  shape.area_given = procedure.area_per_pass.si.source != no_source;
  shape.beam = procedure.beam_power.si.source != no_source;
  shape.gas = procedure.gas.has_value();
  shape.loaded_rate = labour_of(book, joint, group).loaded;
  shape.hydrogen = hydrogen_of(book, group).si.source != no_source;
  return shape;
}

PassInputs<Sourced> pass_inputs(const RateBook& book, const Joint& joint, const PassGroup& group) {
  const Procedure& procedure = book.procedures[group.procedure];
  const Process& process = process_of(book, group);
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
  in.labour = pass_labour_inputs(book, joint, group);
  if (procedure.filler) {
    in.filler_price = book.fillers[*procedure.filler].price;
    in.wire_diameter = book.fillers[*procedure.filler].diameter;
  }
  if (procedure.gas) in.gas_price = book.gases[*procedure.gas].price;
  in.electricity = book.prices.electricity;
  in.hydrogen = hydrogen_of(book, group);
  return in;
}

}  // namespace

Row<Sourced> gather_row(const RateBook& book, const Job& job, const Joint& joint) {
  Row<Sourced> row{shape_of(book, joint),
                   joint_inputs(book, job, joint),
                   {},
                   {},
                   gouge_shape(book, joint),
                   gouge_inputs(book, joint),
                   heat_shape(book, joint),
                   heat_inputs(book, joint)};
  for (const PassGroup& group : joint.passes) {
    row.pass_shapes.push_back(pass_shape(book, joint, group));
    row.pass_shapes.back().metal = metal_shape(book, joint, group);
    row.pass_shapes.back().wear = wear_lives(book, group);
    row.passes.push_back(pass_inputs(book, joint, group));
    row.passes.back().metal = metal_inputs(book, joint, group);
    row.passes.back().wear_parts = wear_parts(book, group);
  }
  return row;
}

}  // namespace seambook
