#include "estimate/weld_inputs.hpp"

namespace seambook {
namespace {

template <Dim D>
bool is_given(const Known<D>& number) {
  return number.si.source != no_source;
}

}  // namespace

WeldInputs<Sourced> weld_inputs(const Joint& joint) {
  WeldInputs<Sourced> in;
  in.leg_second = joint.fillet.leg_second;
  in.deep_throat = joint.fillet.deep_throat;
  in.radius = joint.groove.radius;
  in.depth = joint.groove.depth;
  in.depth_second = joint.groove.depth_second;
  in.reinforce = joint.groove.reinforce;
  in.back_width = joint.groove.back_width;
  in.back_height = joint.groove.back_height;
  in.excess_share = joint.groove.excess_share;
  in.diameter = joint.fill.diameter;
  in.width = joint.fill.width;
  in.slot = joint.fill.slot;
  in.layers = joint.fill.layers;
  in.layer_height = joint.fill.layer_height;
  in.branch_on = joint.path.branch_on;
  in.branch_angle = joint.path.branch_angle;
  in.side = joint.path.side;
  in.side_second = joint.path.side_second;
  in.corner_radius = joint.path.corner_radius;
  in.gap_e = joint.path.gap_e;
  return in;
}

WeldShape weld_shape(const Joint& joint) {
  WeldShape shape;
  shape.unequal = is_given(joint.fillet.leg_second);
  shape.gapped = is_given(joint.gap);
  shape.depth_given = is_given(joint.groove.depth);
  shape.capped = is_given(joint.excess_height);
  shape.share = is_given(joint.groove.excess_share);
  shape.back_cap = is_given(joint.groove.back_height);
  shape.reinforced = is_given(joint.groove.reinforce);
  shape.both_sides = joint.weld == WeldKind::square && joint.sides.si.value == 2;
  shape.deep_gouge = joint.groove.depth.si.value > joint.fill.width.si.value / 2;
  shape.branch = is_given(joint.path.branch_on);
  shape.rectangle = is_given(joint.path.side);
  shape.staggered = joint.path.staggered;
  shape.gap_e = is_given(joint.path.gap_e);
  return shape;
}

}  // namespace seambook
