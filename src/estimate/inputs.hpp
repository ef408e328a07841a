// The numbers that a row of the estimate is computed from, gathered from the job and the rate book into flat structs.
// With N = Sourced they remember where they were written; lift_inputs turns them into doubles or traced inputs.
// Absent numbers are 0 without a source; the flags say which formulas apply.
#pragma once

#include "estimate/heat_inputs.hpp"
#include "estimate/labour_inputs.hpp"
#include "estimate/pass_inputs.hpp"
#include "estimate/weld_inputs.hpp"

namespace seambook {

/// What a joint pays once, whatever its passes.
template <class N>
struct JointInputs {
  Ratio<N> weldments, count, sides;
  Length<N> outside_diameter, line, element, pitch, throat, leg, thickness, thickness_second, gap, root_face,
      excess_overlap, excess_width, excess_height;
  Ratio<N> convexity;
  Angle<N> groove_angle;
  Density<N> density;
  Flow<N> purge_flow;
  MoneyPerVolume<N> purge_gas_price;
  WeldInputs<N> weld;
  LabourInputs<N> labour;
  friend bool operator==(const JointInputs&, const JointInputs&) = default;
};

/// What a group of passes by one procedure takes.
template <class N>
struct PassInputs {
  Ratio<N> given_passes;
  Speed<N> wire_feed, book_travel, travel_low, travel_high;
  Length<N> wire_diameter;
  Area<N> area_per_pass;
  Ratio<N> deposition_efficiency, source_efficiency, thermal_efficiency, gas_loss;
  Current<N> current;
  Voltage<N> voltage;
  Power<N> beam_power, auxiliary_power;
  Flow<N> gas_flow;
  Time<N> gas_before_and_after;
  MoneyPerTime<N> equipment_rate, wear_rate;
  MoneyPerMass<N> filler_price;
  MoneyPerVolume<N> gas_price;
  MoneyPerEnergy<N> electricity;
  VolumePerMass<N> hydrogen;
  PassLabourInputs<N> labour;
  MetalInputs<N> metal;
  std::vector<WearPartInputs<N>> wear_parts;  // parallel to PassShape::wear
  friend bool operator==(const PassInputs&, const PassInputs&) = default;
};

/// Which formulas a joint and its pass groups ask for; decided when the job was resolved.
struct PassShape {
  bool filler = false, wire = false, area_given = false, beam = false, loaded_rate = true, gas = false;
  bool hydrogen = false;  // its level is known
  MetalShape metal;
  std::vector<WearLife> wear;
  friend bool operator==(const PassShape&, const PassShape&) = default;
};
struct JointShape {
  WeldKind weld = WeldKind::fillet;
  bool tube = false, intermittent = false, from_throat = false, width_given = false;
  bool speed_follows = false;  // from deposition, in all groups; else only where the passes are computed
  WeldShape sizes;
  LabourShape labour;
  friend bool operator==(const JointShape&, const JointShape&) = default;
};

template <class N>
struct Row {
  JointShape shape;
  JointInputs<N> joint;
  std::vector<PassShape> pass_shapes;
  std::vector<PassInputs<N>> passes;  // parallel to pass_shapes
  GougeShape gouge_shape;
  GougeInputs<N> gouge;
  HeatShape heat_shape;
  HeatInputs<N> heat;
  friend bool operator==(const Row&, const Row&) = default;
};

/// Calls f(figure, a.member, b.member) for every input of a joint.
template <class A, class B, class F>
void each_joint_input(A& a, B& b, F f) {
  f(fig::weldments, a.weldments, b.weldments), f(fig::count, a.count, b.count), f(fig::sides, a.sides, b.sides);
  f(fig::outside_diameter, a.outside_diameter, b.outside_diameter), f(fig::line, a.line, b.line);
  f(fig::element, a.element, b.element), f(fig::pitch, a.pitch, b.pitch), f(fig::throat, a.throat, b.throat);
  f(fig::leg, a.leg, b.leg), f(fig::thickness, a.thickness, b.thickness);
  f(fig::thickness_second, a.thickness_second, b.thickness_second), f(fig::gap, a.gap, b.gap);
  f(fig::root_face, a.root_face, b.root_face), f(fig::excess_overlap, a.excess_overlap, b.excess_overlap);
  f(fig::excess_width, a.excess_width, b.excess_width), f(fig::excess_height, a.excess_height, b.excess_height);
  f(fig::convexity, a.convexity, b.convexity), f(fig::groove_angle, a.groove_angle, b.groove_angle);
  f(fig::density, a.density, b.density), f(fig::purge_flow, a.purge_flow, b.purge_flow);
  f(fig::purge_gas_price, a.purge_gas_price, b.purge_gas_price);
  each_weld_input(a.weld, b.weld, f);
  each_labour_input(a.labour, b.labour, f);
}

template <class A, class B, class F>
void each_pass_input(A& a, B& b, F f) {
  f(fig::given_passes, a.given_passes, b.given_passes), f(fig::wire_feed, a.wire_feed, b.wire_feed);
  f(fig::book_travel, a.book_travel, b.book_travel), f(fig::travel_low, a.travel_low, b.travel_low);
  f(fig::travel_high, a.travel_high, b.travel_high), f(fig::wire_diameter, a.wire_diameter, b.wire_diameter);
  f(fig::area_per_pass, a.area_per_pass, b.area_per_pass);
  f(fig::deposition_efficiency, a.deposition_efficiency, b.deposition_efficiency);
  f(fig::source_efficiency, a.source_efficiency, b.source_efficiency);
  f(fig::thermal_efficiency, a.thermal_efficiency, b.thermal_efficiency), f(fig::gas_loss, a.gas_loss, b.gas_loss);
  f(fig::current, a.current, b.current), f(fig::voltage, a.voltage, b.voltage);
  f(fig::beam_power, a.beam_power, b.beam_power), f(fig::auxiliary_power, a.auxiliary_power, b.auxiliary_power);
  f(fig::gas_flow, a.gas_flow, b.gas_flow),
      f(fig::gas_before_and_after, a.gas_before_and_after, b.gas_before_and_after);
  f(fig::equipment_rate, a.equipment_rate, b.equipment_rate), f(fig::wear_rate, a.wear_rate, b.wear_rate);
  f(fig::filler_price, a.filler_price, b.filler_price);
  f(fig::gas_price, a.gas_price, b.gas_price), f(fig::electricity, a.electricity, b.electricity);
  f(fig::hydrogen, a.hydrogen, b.hydrogen);
  each_pass_labour_input(a.labour, b.labour, f);
}

/// Calls f(figure, row, from.member, to.member) for every input of the joint but its labour terms.
template <class A, class B, class F>
void each_input_of_joint(A& from, B& to, F f) {
  const auto in_first_row = [&](const Figure& figure, auto& a, auto& b) { f(figure, 0U, a, b); };
  each_joint_input(from.joint, to.joint, in_first_row);
  each_gouge_input(from.gouge, to.gouge, in_first_row);
  each_heat_input(from.heat, to.heat, in_first_row);
}

/// The same for its pass groups, group g being row g. `to` has as many groups and parts that wear as `from`.
template <class A, class B, class F>
void each_input_of_passes(A& from, B& to, F f) {
  for (std::size_t g = 0; g < from.passes.size(); ++g) {
    const auto in_row = [&](const Figure& figure, auto& a, auto& b) { f(figure, static_cast<std::uint32_t>(g), a, b); };
    each_pass_input(from.passes[g], to.passes[g], in_row);
    each_metal_input(from.passes[g].metal, to.passes[g].metal, in_row);
    for (std::size_t p = 0; p < from.passes[g].wear_parts.size(); ++p)
      each_wear_part_input(from.passes[g].wear_parts[p], to.passes[g].wear_parts[p], in_row);
  }
}

/// The row as numbers of type N. With Traced, a tape records each input; pass group g is row g of the labels.
template <class N>
Row<N> lift_row(const Row<Sourced>& from, const Lifting& by = {}) {
  Row<N> to{from.shape,       {}, from.pass_shapes, std::vector<PassInputs<N>>(from.passes.size()),
            from.gouge_shape, {}, from.heat_shape,  {}};
  for (std::size_t g = 0; g < from.passes.size(); ++g) to.passes[g].wear_parts.resize(from.passes[g].wear_parts.size());
  const auto up = [&](const Figure& figure, std::uint32_t row, const auto& a, auto& b) {
    b = lift<N>(a, figure, row, by);
  };
  each_input_of_joint(from, to, up);
  to.joint.labour.terms = lift_terms<N>(from.joint.labour.terms, 0, by);
  each_input_of_passes(from, to, up);
  return to;
}

Row<Sourced> gather_row(const RateBook&, const Job&, const Joint&);

}  // namespace seambook
