// The part of a random row that says how its steel hardens, and what preheating it takes.
#pragma once

#include "random_passes.hpp"

namespace random_row {

template <class Dice>
void give_steel(Dice& dice, HeatShape& shape, HeatInputs<Sourced>& in) {
  shape.composition = dice.one_in(2);
  shape.equivalent_stated = dice.one_in(3), shape.cet_stated = dice.one_in(3);
  if (shape.composition) {
    dice.give(in.steel.carbon, 0.05, 0.25, unit::percent), dice.give(in.steel.manganese, 0.3, 1.7, unit::percent);
    if (dice.one_in(2)) dice.give(in.steel.silicon, 0.1, 0.6, unit::percent);
    if (dice.one_in(2)) dice.give(in.steel.chromium, 0.02, 2, unit::percent);
    if (dice.one_in(2)) dice.give(in.steel.molybdenum, 0.02, 0.5, unit::percent);
    if (dice.one_in(3)) dice.give(in.steel.boron, 0.0005, 0.004, unit::percent);
  }
  if (shape.equivalent_stated) dice.give(in.carbon_equivalent, 0.3, 0.6, unit::percent);
  if (shape.cet_stated) dice.give(in.cet, 0.2, 0.5, unit::percent);
  shape.method_b = shape.has_cet();
}

template <class Dice>
void give_heat(Dice& dice, Row<Sourced>& row) {
  HeatShape& shape = row.heat_shape;
  HeatInputs<Sourced>& in = row.heat;
  shape.hardens = dice.one_in(2), shape.heated = dice.one_in(2);
  shape.tee = dice.one_in(2), shape.second_goes = dice.one_in(2);
  if (shape.hardens) give_steel(dice, shape, in);
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    row.pass_shapes[g].hydrogen = dice.one_in(2);
    if (row.pass_shapes[g].hydrogen) dice.give(row.passes[g].hydrogen, 2, 15, unit::ml_per_100g);
  }
  if (!shape.heated) return;
  dice.give(in.density, 7.7, 8, unit::g_per_cm3), dice.give(in.preheat, 80, 200, unit::celsius);
  dice.give(in.room, 5, 25, unit::celsius), dice.give(in.soak_width, 50, 150, unit::mm);
  dice.give(in.specific_heat, 450, 550, unit::J_per_kgK), dice.give(in.burner, 5, 40, unit::kW);
  dice.give(in.burner_efficiency, 20, 60, unit::percent), dice.give(in.fuel, 0.05, 0.3, unit::money_per_kWh);
  shape.charged = !dice.one_in(3);
  shape.partly_attended = shape.charged && dice.one_in(2);
  shape.check_per_joint = dice.one_in(2), shape.check_per_pass = dice.one_in(2);
  if (shape.partly_attended) dice.give(in.attended, 10, 90, unit::percent);
  if (shape.check_per_joint) dice.give(in.check_per_joint, 0.5, 4, unit::min);
  if (shape.check_per_pass) dice.give(in.check_per_pass, 0.1, 1, unit::min);
}

}  // namespace random_row
