// The passes of a joint: which part of its section each group of passes lays, in how many passes, at what speed.
// Holds afterwards: the sections of the groups with filler add up to the joint's section, what was gouged included.
#pragma once

#include "estimate/inputs.hpp"
#include "estimate/labour_figures.hpp"
#include "trade/consumption.hpp"
#include "trade/passes.hpp"
#include "trade/section.hpp"

namespace seambook {

/// Figures of one pass group. The first group carries the labour of the joint as a whole.
template <class N>
struct PassFigures {
  Area<N> section, lays;
  Flow<N> volume_rate;
  Ratio<N> passes, deposition_difference, pieces;
  Speed<N> travel;
  Time<N> arc, arc_by_deposition;
  PassLabour<N> labour;
  LineEnergy<N> line_energy, heat_input;
  Temperature<N> preheat_asked;  // by method B, inside its range: see estimate/preheat.hpp
  Mass<N> deposit, filler, flux;
  Volume<N> gas, purge_gas;
  Energy<N> energy;
  Money<N> labour_cost, filler_cost, flux_cost, gas_cost, power_cost, wear_cost, equipment_cost, cost, difference_cost;
};

/// What one pass of the procedure lays in a unit of time: from the stated area, a deposition rate, or the wire.
template <class N>
Flow<N> volume_rate_of(const PassShape& shape, const PassInputs<N>& in, Density<N> density) {
  if (shape.area_given) return in.area_per_pass * in.book_travel;
  if (shape.metal.by_rate) return tabled_volume_rate(in.metal.deposition_rate, density);
  if (shape.metal.tubular)
    return tubular_volume_rate(in.wire_feed, in.metal.linear_mass, in.deposition_efficiency, density);
  return deposition_volume_rate(in.wire_feed, in.wire_diameter, in.deposition_efficiency);
}

/// The most that one pass may lay: what it lays at the lowest speed, and no more than the limits of the rate book. A
/// limit by leg is that of a fillet as full as the joint's.
template <class N>
Area<N> largest_pass(const PassShape& shape, const PassInputs<N>& in, Ratio<N> convexity, Flow<N> volume_rate) {
  Area<N> largest = area_per_pass(volume_rate, in.travel_low);
  if (shape.metal.leg_limited) largest = min(largest, fillet_section(in.metal.largest_leg, convexity));
  if (shape.metal.area_limited) largest = min(largest, in.metal.largest_area);
  return largest;
}

/// What each group lays: a deposition for every filler, and where others share the section, what given passes lay.
template <class N>
void lay_given_passes(const Row<N>& row, std::vector<PassFigures<N>>& groups) {
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const auto g = static_cast<std::uint32_t>(i);
    const PassShape& shape = row.pass_shapes[i];
    const PassInputs<N>& in = row.passes[i];
    if (!shape.filler) continue;
    groups[i].volume_rate = name(volume_rate_of(shape, in, row.joint.density), fig::volume_rate, g);
    if (groups.size() == 1 || shape.metal.count != PassCount::given) continue;
    groups[i].lays = name(in.given_passes * area_per_pass(groups[i].volume_rate, in.book_travel), fig::lays, g);
  }
}

/// How a joint's section is shared among its groups with filler.
template <class N>
struct SectionShares {
  Area<N> left, laid;  // for given and computed passes together; by given passes
  bool some_given = false, rest_computed = false;
};

template <class N>
SectionShares<N> shares_of(const Row<N>& row, Area<N> section, Area<N> gouged,
                           const std::vector<PassFigures<N>>& groups) {
  SectionShares<N> shares{section, {}};
  for (std::size_t g = 0; g < groups.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    if (!shape.filler) continue;
    if (shape.metal.count == PassCount::from_gouge) shares.left = section - gouged;
    if (shape.metal.count == PassCount::from_section) shares.rest_computed = true;
    if (shape.metal.count != PassCount::given) continue;
    shares.laid = shares.laid + groups[g].lays;
    shares.some_given = true;
  }
  return shares;
}

/// The section of each group. One group lays all of it. Given passes lay what their procedures lay and leave the rest
/// to the group whose passes are computed; where all are given they share the section in proportion to what they lay.
/// Where given passes lay more than there is they share what there is, and nothing is left.
template <class N>
void share_section(const Row<N>& row, Area<N> section, Area<N> gouged, std::vector<PassFigures<N>>& groups) {
  lay_given_passes(row, groups);
  if (groups.size() == 1) {
    if (row.pass_shapes[0].filler) groups[0].section = name(section, fig::group_section);
    return;
  }
  const SectionShares<N> shares = shares_of(row, section, gouged, groups);
  for (std::size_t g = 0; g < groups.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    if (!shape.filler) continue;
    Area<N> share = gouged;
    if (shape.metal.count == PassCount::from_section)
      share = shares.some_given ? max(shares.left - shares.laid, Area<N>{N(0)}) : shares.left;
    if (shape.metal.count == PassCount::given)
      share = shares.rest_computed ? groups[g].lays * min(number<N>(1), shares.left / shares.laid)
                                   : shares.left * groups[g].lays / shares.laid;
    groups[g].section = name(share, fig::group_section, static_cast<std::uint32_t>(g));
  }
}

/// Passes and travel speed of group g, whose share of the section is known.
template <class N>
void count_passes(const Row<N>& row, std::uint32_t g, PassFigures<N>& out) {
  const PassShape& shape = row.pass_shapes[g];
  const PassInputs<N>& in = row.passes[g];
  const bool computed = shape.metal.count != PassCount::given;
  const bool may_be_nothing = computed && row.passes.size() > 1;
  out.passes = in.given_passes;
  if (computed) {
    out.passes = shape.filler ? passes_for(out.section, largest_pass(shape, in, row.joint.convexity, out.volume_rate))
                              : number<N>(1);
    if (may_be_nothing) out.passes = max(out.passes, number<N>(1));
  }
  out.passes = name(out.passes, fig::passes, g);
  out.travel = in.book_travel;
  if (shape.filler && (computed || row.shape.speed_follows)) {
    const Area<N> pass = out.section / out.passes;
    out.travel = may_be_nothing ? travel_for_what_is_left(out.volume_rate, pass, in.travel_low, in.travel_high)
                                : travel_for(out.volume_rate, pass, in.travel_low, in.travel_high);
  }
  out.travel = name(out.travel, fig::travel, g);
}

/// Passes, speed, arc time and energy of group g.
template <class N>
void weld_passes(const Row<N>& row, Length<N> weld_length, std::uint32_t g, PassFigures<N>& out) {
  const PassShape& shape = row.pass_shapes[g];
  const PassInputs<N>& in = row.passes[g];
  count_passes(row, g, out);
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

}  // namespace seambook
