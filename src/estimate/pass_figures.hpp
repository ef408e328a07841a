// The passes of a joint: which part of its section each group of passes lays, in how many passes, at what speed.
// Holds afterwards: the sections of the groups with filler add up to the joint's section.
#pragma once

#include "estimate/inputs.hpp"
#include "estimate/labour_figures.hpp"
#include "trade/consumption.hpp"
#include "trade/passes.hpp"

namespace seambook {

/// Figures of one pass group. The first group carries the labour of the joint as a whole.
template <class N>
struct PassFigures {
  Area<N> section;
  Flow<N> volume_rate;
  Ratio<N> passes, deposition_difference;
  Speed<N> travel;
  Time<N> arc, arc_by_deposition;
  PassLabour<N> labour;
  LineEnergy<N> line_energy, heat_input;
  Mass<N> deposit, filler;
  Volume<N> gas, purge_gas;
  Energy<N> energy;
  Money<N> labour_cost, filler_cost, gas_cost, power_cost, wear_cost, equipment_cost, cost, difference_cost;
};

/// What one pass of the procedure lays in a unit of time, from the wire or from the stated area.
template <class N>
Flow<N> volume_rate_of(const PassShape& shape, const PassInputs<N>& in) {
  if (shape.area_given) return in.area_per_pass * in.book_travel;
  return deposition_volume_rate(in.wire_feed, in.wire_diameter, in.deposition_efficiency);
}

/// Section, passes, speed and arc time of group g, whose share of the section is given.
template <class N>
void weld_passes(const JointShape& joint, Length<N> weld_length, const PassShape& shape, const PassInputs<N>& in,
                 std::uint32_t g, PassFigures<N>& out) {
  out.passes = in.given_passes;
  out.travel = in.book_travel;
  if (joint.passes_computed) {
    out.passes = shape.filler ? passes_for(out.section, area_per_pass(out.volume_rate, in.travel_low)) : number<N>(1);
  }
  out.passes = name(out.passes, fig::passes, g);
  if (joint.speed_follows && shape.filler) {
    out.travel = travel_for(out.volume_rate, out.section / out.passes, in.travel_low, in.travel_high);
  }
  out.travel = name(out.travel, fig::travel, g);
  out.arc = name(arc_time(weld_length, out.passes, out.travel), fig::arc, g);
  out.arc_by_deposition = out.arc;
  if (shape.filler) {
    out.arc_by_deposition =
        name(arc_time_by_deposition(out.section, weld_length, out.volume_rate), fig::arc_by_deposition, g);
    out.deposition_difference = name(out.arc_by_deposition / out.arc - number<N>(1), fig::deposition_difference, g);
  }
  out.line_energy =
      name(shape.beam ? beam_line_energy(in.beam_power, out.travel) : arc_energy(in.voltage, in.current, out.travel),
           fig::line_energy, g);
  out.heat_input = name(heat_input(out.line_energy, in.thermal_efficiency), fig::heat_input, g);
}

/// The section of each group: all of it for one, else shared by what each group's given passes lay.
template <class N>
void share_section(const Row<N>& row, Area<N> whole, std::vector<PassFigures<N>>& groups) {
  for (std::size_t g = 0; g < groups.size(); ++g) {
    if (!row.pass_shapes[g].filler) continue;
    groups[g].volume_rate =
        name(volume_rate_of(row.pass_shapes[g], row.passes[g]), fig::volume_rate, static_cast<std::uint32_t>(g));
  }
  if (groups.size() == 1) {
    if (row.pass_shapes[0].filler) groups[0].section = name(whole, fig::group_section);
    return;
  }
  Area<N> laid{};
  const auto lays = [&](std::size_t g) {
    return row.passes[g].given_passes * area_per_pass(groups[g].volume_rate, row.passes[g].book_travel);
  };
  for (std::size_t g = 0; g < groups.size(); ++g) {
    if (row.pass_shapes[g].filler) laid = laid + lays(g);
  }
  for (std::size_t g = 0; g < groups.size(); ++g) {
    if (row.pass_shapes[g].filler)
      groups[g].section = name(whole * lays(g) / laid, fig::group_section, static_cast<std::uint32_t>(g));
  }
}

}  // namespace seambook
