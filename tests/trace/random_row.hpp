// Rows of the estimate with random but possible inputs: every weld, plates and tubes, continuous and intermittent,
// one or several pass groups, arc and beam, with and without filler, gas, purge, access. Absent numbers stay absent.
#pragma once

#include <random>

#include "random_heat.hpp"

namespace random_row {

using namespace seambook;

class Dice {
 public:
  explicit Dice(std::uint32_t seed) : random_(seed) {}
  /// The same numbers with every standard library.
  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(random_()) / 4294967296.0);
  }
  int whole(int low, int high) { return low + static_cast<int>(random_() % static_cast<unsigned>(high - low + 1)); }
  bool one_in(int n) { return random_() % static_cast<unsigned>(n) == 0; }

  /// A number with a source, `low` to `high` in this unit; half of them as round as people write them.
  template <Dim D>
  void give(Quantity<D, Sourced>& out, double low, double high, Unit unit) {
    double x = between(low, high);
    if (one_in(2)) x = std::strtod(std::to_string(x).substr(0, 4).c_str(), nullptr);
    out.si = {greatest(x, low) * unit.si, ++last_};
  }
  void count(Quantity<dim::ratio, Sourced>& out, int low, int high) {
    out.si = {static_cast<double>(whole(low, high)), ++last_};
  }

 private:
  std::mt19937 random_;
  SourceId last_ = 0;
};

/// Sides, and lines that are no plain length.
inline void give_line(Dice& dice, Row<Sourced>& row) {
  WeldShape& sizes = row.shape.sizes;
  WeldInputs<Sourced>& weld = row.joint.weld;
  if (row.shape.weld == WeldKind::slot) dice.give(weld.slot, 30, 80, unit::mm);
  if (is_hole(row.shape.weld)) row.shape.intermittent = false;
  sizes.staggered = row.shape.intermittent && dice.one_in(2);
  sizes.rectangle = !row.shape.tube && dice.one_in(3);
  if (!sizes.rectangle) return;
  dice.give(weld.side, 150, 400, unit::mm), dice.give(weld.side_second, 150, 400, unit::mm);
  if (dice.one_in(2)) dice.give(weld.corner_radius, 1, 20, unit::mm);
}

inline void give_fillet(Dice& dice, Row<Sourced>& row) {
  JointInputs<Sourced>& in = row.joint;
  row.shape.sizes.unequal = dice.one_in(3);
  row.shape.sizes.gapped = dice.one_in(3);
  if (row.shape.sizes.unequal) dice.give(in.weld.leg_second, 3, 12, unit::mm), row.shape.from_throat = false;
  row.shape.from_throat ? dice.give(in.throat, 2, 8, unit::mm) : dice.give(in.leg, 3, 12, unit::mm);
  if (row.shape.sizes.gapped) dice.give(in.gap, 0.5, 2, unit::mm);
  if (!dice.one_in(3)) dice.give(in.convexity, 1, 20, unit::percent);
}

/// Holes, surfaces and gouges.
inline void give_fill(Dice& dice, Row<Sourced>& row) {
  WeldInputs<Sourced>& weld = row.joint.weld;
  row.shape.sizes.capped = false;
  row.shape.sizes.depth_given = row.shape.weld == WeldKind::gouged || dice.one_in(2);
  if (row.shape.sizes.depth_given) dice.give(weld.depth, 2, 5, unit::mm);
  if (row.shape.weld == WeldKind::plug) return dice.give(weld.diameter, 8, 30, unit::mm);
  dice.give(weld.width, 11, 25, unit::mm);
  row.shape.sizes.deep_gouge = weld.depth.si.value > weld.width.si.value / 2;
  if (row.shape.weld != WeldKind::overlay) return;
  dice.count(weld.layers, 1, 3), dice.give(weld.layer_height, 2, 4, unit::mm);
}

/// Grooves, square edges, flares and edges, with their caps.
inline void give_butt(Dice& dice, Row<Sourced>& row) {
  JointShape& s = row.shape;
  JointInputs<Sourced>& in = row.joint;
  const bool groove = is_groove(s.weld), flare = is_flare(s.weld);
  // Without a groove the gap or the cap is all the metal there is.
  if (!(groove || flare) || !dice.one_in(3)) dice.give(in.gap, 0.5, 3, unit::mm);
  s.sizes.gapped = in.gap.si.source != no_source;
  if (!dice.one_in(3)) dice.give(in.root_face, 0.5, 1, unit::mm);
  dice.give(in.groove_angle, 30, 70, unit::degree);
  if (is_curved(s.weld)) dice.give(in.weld.radius, 0.5, 1, unit::mm);
  if (flare) dice.give(in.weld.radius, 6, 12, unit::mm);
  s.sizes.depth_given = (groove || flare || s.weld == WeldKind::square) && dice.one_in(3);
  if (s.sizes.depth_given) dice.give(in.weld.depth, 2, 5, unit::mm);
  if (s.sizes.depth_given && is_double(s.weld)) dice.give(in.weld.depth_second, 2, 5, unit::mm);
  s.sizes.both_sides = s.weld == WeldKind::square && dice.one_in(3);
  s.sizes.share = groove && dice.one_in(4);
  s.sizes.reinforced = is_one_flank(s.weld) && dice.one_in(3);
  s.sizes.capped = !s.sizes.share && !s.sizes.reinforced;
  s.sizes.back_cap = groove && dice.one_in(4);
  if (s.sizes.share) dice.give(in.weld.excess_share, 2, 20, unit::percent);
  if (s.sizes.reinforced) dice.give(in.weld.reinforce, 3, 8, unit::mm);
  if (s.sizes.back_cap) dice.give(in.weld.back_width, 3, 8, unit::mm), dice.give(in.weld.back_height, 0.5, 2, unit::mm);
  if (!s.sizes.capped) return;
  if (!groove || !dice.one_in(4)) dice.give(in.excess_height, 0.5, 3, unit::mm);
  if (!dice.one_in(4)) dice.give(in.excess_overlap, 0.5, 2, unit::mm);
  if (s.width_given) dice.give(in.excess_width, 4, 20, unit::mm);
}

inline void give_shape(Dice& dice, Row<Sourced>& row) {
  JointShape& s = row.shape;
  JointInputs<Sourced>& in = row.joint;
  s.weld = static_cast<WeldKind>(dice.whole(0, static_cast<int>(weld_kinds) - 1));
  s.labour.fitted = is_fitted(s.weld);
  s.tube = dice.one_in(3);
  s.intermittent = dice.one_in(3);
  s.from_throat = dice.one_in(2);
  s.width_given = dice.one_in(3);
  s.labour.purge = dice.one_in(4);
  s.labour.access = dice.one_in(4);
  if (s.tube) dice.give(in.outside_diameter, 20, 600, unit::mm);
  if (!s.tube) dice.give(in.line, 100, 5000, unit::mm);
  if (s.intermittent) dice.give(in.element, 20, 60, unit::mm), dice.give(in.pitch, 60, 200, unit::mm);
  give_line(dice, row);
  if (s.weld == WeldKind::fillet) return give_fillet(dice, row);
  if (s.weld >= WeldKind::plug) return give_fill(dice, row);
  give_butt(dice, row);
}

inline void give_joint(Dice& dice, Row<Sourced>& row) {
  JointInputs<Sourced>& in = row.joint;
  dice.count(in.weldments, 1, 20), dice.count(in.count, 1, 8), dice.count(in.sides, 1, 2);
  dice.give(in.thickness, 3, 20, unit::mm), dice.give(in.thickness_second, 3, 20, unit::mm);
  dice.give(in.density, 2.6, 8.1, unit::g_per_cm3);
  dice.give(in.labour.fit_up_per_joint, 0.5, 5, unit::min), dice.give(in.labour.tack_time, 0.1, 0.6, unit::min);
  dice.give(in.labour.fit_up_per_metre, 0.5, 4, unit::min_per_m), dice.give(in.labour.tack_pitch, 80, 300, unit::mm);
  if (!dice.one_in(4)) dice.give(in.labour.finish_pace, 0.5, 6, unit::min_per_m);
  if (!dice.one_in(5)) dice.give(in.labour.personal, 5, 20, unit::percent);
  if (row.shape.labour.access) dice.give(in.labour.access, 110, 160, unit::percent);
  if (!row.shape.labour.purge) return;
  dice.give(in.labour.purge_per_joint, 1, 6, unit::min), dice.give(in.purge_flow, 5, 15, unit::l_per_min);
  dice.give(in.purge_gas_price, 5, 20, unit::money_per_m3);
}

/// One labour element of the rate book, counted by anything a joint is counted by.
inline void give_term(Dice& dice, LabourInputs<Sourced>& in) {
  ElementTerm<Sourced> term;
  term.kind = static_cast<LabourKind>(dice.whole(0, labour_kinds - 1));
  term.per = static_cast<Driver>(dice.whole(0, static_cast<int>(Driver::share)));
  for (const ElementTerm<Sourced>& other : in.terms)
    if (other.kind == term.kind && other.per == term.per) return;
  term.attended = !dice.one_in(4);
  term.edges = dice.whole(1, 2);
  const bool length = term.per >= Driver::metre && term.per <= Driver::pass_metre;
  if (term.per == Driver::share) dice.give(term.share, 1, 20, unit::percent);
  if (length) dice.give(term.pace, 0.2, 8, unit::min_per_m);
  if (!length && term.per != Driver::share) dice.give(term.time, 0.05, 6, unit::min);
  term.has_multiple = term.kind == LabourKind::repair && dice.one_in(2);
  if (term.has_multiple) dice.give(term.multiple, 2, 8, unit::none);
  const bool test = term.kind >= LabourKind::visual_inspection && term.kind <= LabourKind::radiographic;
  term.has_extent = test && dice.one_in(2);
  if (term.has_extent) dice.give(term.extent, 5, 100, unit::percent);
  in.terms.push_back(term);
}

/// Labour by an operating factor that covers some of the elements.
inline void give_factor(Dice& dice, Row<Sourced>& row) {
  LabourShape& shape = row.shape.labour;
  shape.by_factor = true;
  row.joint.labour.personal = {};
  for (bool LabourShape::*charged : {&LabourShape::fit_up, &LabourShape::tacking, &LabourShape::starts,
                                     &LabourShape::interpass, &LabourShape::finish})
    shape.*charged = dice.one_in(2);
  if (!shape.fit_up) shape.fit_up_extra = false;
  for (PassInputs<Sourced>& pass : row.passes) dice.give(pass.labour.operating_factor, 10, 80, unit::percent);
}

inline void give_pass(Dice& dice, PassShape& shape, PassInputs<Sourced>& in) {
  shape.filler = !dice.one_in(4), shape.beam = dice.one_in(3);
  shape.loaded_rate = dice.one_in(2), shape.gas = !dice.one_in(4);
  shape.area_given = dice.one_in(3);
  shape.wire = !shape.area_given;
  dice.count(in.given_passes, 1, 4);
  dice.give(in.book_travel, 150, 900, unit::mm_per_min), dice.give(in.travel_low, 100, 300, unit::mm_per_min);
  dice.give(in.travel_high, 400, 900, unit::mm_per_min);
  if (shape.filler && shape.wire) {
    dice.give(in.wire_feed, 1, 12, unit::m_per_min), dice.give(in.wire_diameter, 0.8, 1.6, unit::mm);
  }
  if (shape.filler && shape.area_given) dice.give(in.area_per_pass, 3, 25, unit::mm2);
  dice.give(in.deposition_efficiency, 55, 99, unit::percent), dice.give(in.source_efficiency, 30, 90, unit::percent);
  dice.give(in.thermal_efficiency, 60, 100, unit::percent);
  if (shape.beam) dice.give(in.beam_power, 800, 6000, unit::W);
  if (!shape.beam) dice.give(in.current, 60, 350, unit::A), dice.give(in.voltage, 10, 34, unit::V);
  if (!dice.one_in(3)) dice.give(in.auxiliary_power, 0.1, 3, unit::kW);
  if (shape.gas) {
    dice.give(in.gas_flow, 6, 20, unit::l_per_min), dice.give(in.gas_loss, 100, 130, unit::percent);
    dice.give(in.gas_price, 4, 20, unit::money_per_m3);
    if (!dice.one_in(3)) dice.give(in.gas_before_and_after, 1, 12, unit::s);
  }
  dice.give(in.labour.start_time, 0.05, 0.5, unit::min);
  if (!dice.one_in(4)) dice.give(in.labour.interpass_pace, 0.2, 3, unit::min_per_m);
  if (shape.loaded_rate) dice.give(in.labour.labour_rate, 30, 80, unit::money_per_h);
  if (!shape.loaded_rate)
    dice.give(in.labour.wage, 15, 40, unit::money_per_h), dice.give(in.labour.burden, 20, 110, unit::percent);
  dice.give(in.equipment_rate, 2, 40, unit::money_per_h);
  if (!dice.one_in(3)) dice.give(in.wear_rate, 0.2, 5, unit::money_per_h);
  if (shape.filler) dice.give(in.filler_price, 2, 40, unit::money_per_kg);
  dice.give(in.electricity, 0.1, 0.4, unit::money_per_kWh);
}

inline Row<Sourced> any(Dice& dice) {
  Row<Sourced> row;
  give_shape(dice, row);
  give_joint(dice, row);
  const std::size_t groups = dice.one_in(2) ? 1 : static_cast<std::size_t>(dice.whole(1, 3));
  row.pass_shapes.resize(groups);
  row.passes.resize(groups);
  for (std::size_t g = 0; g < groups; ++g) give_pass(dice, row.pass_shapes[g], row.passes[g]);
  give_uses(dice, row);
  row.shape.speed_follows = dice.one_in(3);
  if (dice.one_in(2))
    for (int t = dice.whole(1, 6); t > 0; --t) give_term(dice, row.joint.labour);
  if (dice.one_in(4)) give_factor(dice, row);
  give_heat(dice, row);
  return row;
}

/// Every figure of a row with its name, in a fixed order.
template <class N>
struct Reading {
  std::string words;
  N number;
};
template <class N>
std::vector<Reading<N>> readings(const RowFigures<N>& row) {
  std::vector<Reading<N>> all;
  const auto add = [&](const Figure& figure, const auto& quantity) { all.push_back({figure.key, quantity.si}); };
  const JointFigures<N>& j = row.joint;
  add(fig::line, j.line), add(fig::weld_length, j.weld_length), add(fig::elements_on_line, j.elements_on_line);
  add(fig::joints_made, j.joints_made), add(fig::weld_elements, j.weld_elements), add(fig::tacks, j.labour.tacks);
  add(fig::section, j.section), add(fig::fit_up_min, j.labour.fit_up), add(fig::tack_min, j.labour.tack);
  add(fig::finish_min, j.labour.finish), add(fig::purge_min, j.labour.purge);
  add(fig::gouged, j.gouged), add(fig::section_laid, j.laid);
  add(fig::carbon_equivalent, j.heat.carbon_equivalent), add(fig::cet, j.heat.cet);
  add(fig::crack_parameter, j.heat.crack_parameter), add(fig::combined_thickness, j.heat.combined_thickness);
  add(fig::plate_thickness, j.heat.thicker), add(fig::heated, j.heat.heated), add(fig::preheat_energy, j.heat.needed);
  add(fig::burner_min, j.heat.burner), add(fig::fuel_money, j.heat.fuel), add(fig::preheat_min, j.labour.preheat);
  for (std::size_t k = 0; k < labour_kinds; ++k) add(fig::element_min[k], j.labour.elements.of[k]);
  add(fig::waiting_min, j.labour.elements.waiting);
  for (const PassFigures<N>& p : row.passes) {
    add(fig::group_section, p.section), add(fig::volume_rate, p.volume_rate), add(fig::passes, p.passes);
    add(fig::starts, p.labour.starts), add(fig::deposition_difference, p.deposition_difference),
        add(fig::travel, p.travel);
    add(fig::arc, p.arc), add(fig::arc_by_deposition, p.arc_by_deposition), add(fig::start_min, p.labour.start);
    add(fig::interpass_min, p.labour.interpass), add(fig::attended, p.labour.attended), add(fig::floor, p.labour.floor);
    add(fig::lays, p.lays), add(fig::pieces, p.pieces), add(fig::flux, p.flux), add(fig::flux_cost, p.flux_cost);
    add(fig::change_min, p.labour.electrode_change), add(fig::gouge_min, p.labour.gouge);
    add(fig::line_energy, p.line_energy), add(fig::heat_input, p.heat_input), add(fig::deposit, p.deposit);
    add(fig::preheat_asked, p.preheat_asked);
    add(fig::filler, p.filler), add(fig::gas, p.gas), add(fig::purge_gas, p.purge_gas), add(fig::energy, p.energy);
    add(fig::labour_cost, p.labour_cost), add(fig::filler_cost, p.filler_cost), add(fig::gas_cost, p.gas_cost);
    add(fig::power_cost, p.power_cost), add(fig::wear_cost, p.wear_cost), add(fig::equipment_cost, p.equipment_cost);
    add(fig::joint_cost, p.cost), add(fig::difference_cost, p.difference_cost);
  }
  return all;
}

}  // namespace random_row
