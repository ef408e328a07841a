// The sizes of a joint that only some welds have, and the flags by which its formulas are chosen. As in inputs.hpp,
// absent numbers are 0 without a source.
#pragma once

#include "estimate/weld_names.hpp"
#include "resolve/job.hpp"

namespace seambook {

template <class N>
struct WeldInputs {
  Length<N> leg_second, deep_throat, radius, depth, depth_second, reinforce, back_width, back_height;
  Ratio<N> excess_share, layers;
  Length<N> diameter, width, slot, layer_height;
  Length<N> branch_on, side, side_second, corner_radius, gap_e;
  Angle<N> branch_angle;
  friend bool operator==(const WeldInputs&, const WeldInputs&) = default;
};

/// Decided when the job was resolved.
struct WeldShape {
  bool unequal = false, gapped = false;                       // fillets; a gap of fillets and flares
  bool depth_given = false;                                   // welded partly through; flares not filled flush
  bool capped = true, share = false;                          // by width and height; as a share of the groove
  bool back_cap = false, reinforced = false;                  // a cap of its own on the second side; a fillet over it
  bool both_sides = false;                                    // square edges: each side lays half
  bool deep_gouge = false;                                    // deeper than half its width
  bool branch = false, rectangle = false, staggered = false;  // lines
  bool gap_e = false;                                         // weld elements by their gap
  friend bool operator==(const WeldShape&, const WeldShape&) = default;
};

/// Calls f(figure, a.member, b.member) for every input.
template <class A, class B, class F>
void each_weld_input(A& a, B& b, F f) {
  f(fig::leg_second, a.leg_second, b.leg_second), f(fig::deep_throat, a.deep_throat, b.deep_throat);
  f(fig::radius, a.radius, b.radius), f(fig::depth, a.depth, b.depth);
  f(fig::depth_second, a.depth_second, b.depth_second), f(fig::reinforce, a.reinforce, b.reinforce);
  f(fig::back_width, a.back_width, b.back_width), f(fig::back_height, a.back_height, b.back_height);
  f(fig::excess_share, a.excess_share, b.excess_share), f(fig::diameter, a.diameter, b.diameter);
  f(fig::width, a.width, b.width), f(fig::slot, a.slot, b.slot), f(fig::layers, a.layers, b.layers);
  f(fig::layer_height, a.layer_height, b.layer_height), f(fig::branch_on, a.branch_on, b.branch_on);
  f(fig::branch_angle, a.branch_angle, b.branch_angle), f(fig::side, a.side, b.side);
  f(fig::side_second, a.side_second, b.side_second), f(fig::corner_radius, a.corner_radius, b.corner_radius);
  f(fig::gap_e, a.gap_e, b.gap_e);
}

WeldInputs<Sourced> weld_inputs(const Joint&);
WeldShape weld_shape(const Joint&);

}  // namespace seambook
