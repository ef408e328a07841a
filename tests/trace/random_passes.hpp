// The part of a random row that says what its passes lay and use up: roles, limits, electrodes, flux, wear, gouging.
#pragma once

#include "estimate/row.hpp"

namespace random_row {

using namespace seambook;

template <class Dice>
void give_gouge(Dice& dice, Row<Sourced>& row) {
  row.gouge_shape.gouged = dice.one_in(4);
  if (!row.gouge_shape.gouged) return;
  row.gouge_shape.group = static_cast<std::uint32_t>(row.passes.size() - 1);
  row.gouge_shape.carbons = dice.one_in(2);
  dice.give(row.gouge.depth, 2, 8, unit::mm), dice.give(row.gouge.width, 6, 13, unit::mm);
  dice.give(row.gouge.pace, 2, 9, unit::min_per_m);
  if (row.gouge_shape.carbons) dice.give(row.gouge.carbon_price, 0.5, 3, unit::money_per_m);
}

template <class Dice>
void give_wear_parts(Dice& dice, PassShape& shape, PassInputs<Sourced>& in) {
  const int parts = dice.one_in(2) ? 0 : dice.whole(1, 3);
  for (int p = 0; p < parts; ++p) {
    shape.wear.push_back(static_cast<WearLife>(dice.whole(0, 2)));
    WearPartInputs<Sourced>& part = in.wear_parts.emplace_back();
    dice.give(part.price, 0.3, 20, unit::money);
    if (shape.wear.back() == WearLife::arc) dice.give(part.arc, 2, 60, unit::h);
    if (shape.wear.back() == WearLife::length) dice.give(part.length, 200, 5000, unit::m);
    if (shape.wear.back() == WearLife::starts) dice.count(part.starts, 20, 400);
  }
}

template <class Dice>
void give_metal(Dice& dice, PassShape& shape, PassInputs<Sourced>& in) {
  MetalShape& metal = shape.metal;
  MetalInputs<Sourced>& given = in.metal;
  if (!shape.filler) return;
  metal.by_rate = shape.wire && dice.one_in(4);
  metal.tubular = shape.wire && !metal.by_rate && dice.one_in(3);
  if (metal.by_rate) in.wire_feed = {}, in.wire_diameter = {}, dice.give(given.deposition_rate, 0.5, 6, unit::kg_per_h);
  if (metal.tubular) in.wire_diameter = {}, dice.give(given.linear_mass, 4, 12, unit::g_per_m);
  metal.leg_limited = dice.one_in(5), metal.area_limited = dice.one_in(5);
  if (metal.leg_limited) dice.give(given.largest_leg, 3, 9, unit::mm);
  if (metal.area_limited) dice.give(given.largest_area, 10, 50, unit::mm2);
  metal.stub = dice.one_in(4);
  if (metal.stub) dice.give(given.electrode_length, 300, 450, unit::mm), dice.give(given.stub, 30, 80, unit::mm);
  metal.pieces = dice.one_in(4);
  if (metal.pieces) dice.give(given.piece_mass, 15, 70, unit::g);
  metal.changes = metal.pieces && dice.one_in(2);
  if (metal.changes) dice.give(given.electrode_change, 0.2, 1, unit::min);
  metal.flux = dice.one_in(4), metal.flux_per_wire = metal.flux && dice.one_in(2);
  if (metal.flux)
    dice.give(given.flux_ratio, 80, 150, unit::percent), dice.give(given.flux_price, 1, 4, unit::money_per_kg);
}

/// One group's passes may be left to compute, and beside others those that fill what was gouged.
template <class Dice>
void give_counts(Dice& dice, Row<Sourced>& row) {
  std::vector<std::size_t> with_filler;
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    if (row.pass_shapes[g].filler) with_filler.push_back(g);
  }
  const auto compute = [&](std::size_t g, PassRole role, PassCount count) {
    row.pass_shapes[g].metal.role = role;
    row.pass_shapes[g].metal.count = count;
    row.passes[g].given_passes = {};
  };
  if (row.passes.size() == 1 && dice.one_in(2)) compute(0, PassRole::fill, PassCount::from_section);
  if (row.passes.size() == 1 || with_filler.empty()) return;
  if (with_filler.size() > 1 && row.gouge_shape.gouged && dice.one_in(2))
    compute(with_filler.back(), PassRole::back, PassCount::from_gouge);
  if (dice.one_in(2)) compute(with_filler.front(), PassRole::fill, PassCount::from_section);
}

template <class Dice>
void give_uses(Dice& dice, Row<Sourced>& row) {
  give_gouge(dice, row);
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    give_metal(dice, row.pass_shapes[g], row.passes[g]);
    give_wear_parts(dice, row.pass_shapes[g], row.passes[g]);
  }
  give_counts(dice, row);
}

}  // namespace random_row
