// What a group of passes uses up beside gas and power: filler with its electrodes, flux, parts that wear.
#pragma once

#include "estimate/pass_figures.hpp"
#include "trade/consumables.hpp"

namespace seambook {

/// Weld metal, filler, electrodes and flux of group g, with their money.
template <class N>
void filler_used(const Row<N>& row, Length<N> weld_length, std::uint32_t g, PassFigures<N>& out) {
  const PassShape& shape = row.pass_shapes[g];
  const PassInputs<N>& in = row.passes[g];
  if (!shape.filler) return;
  const Ratio<N> efficiency =
      shape.metal.stub ? efficiency_after_stub(in.deposition_efficiency, in.metal.electrode_length, in.metal.stub)
                       : in.deposition_efficiency;
  out.deposit = name(deposit_mass(out.section, weld_length, row.joint.density), fig::deposit, g);
  out.filler = name(filler_mass(out.deposit, efficiency), fig::filler, g);
  out.filler_cost = name(out.filler * in.filler_price, fig::filler_cost, g);
  if (shape.metal.pieces) out.pieces = name(pieces_for(out.filler, in.metal.piece_mass), fig::pieces, g);
  if (!shape.metal.flux) return;
  out.flux = name(flux_mass(shape.metal.flux_per_wire ? out.filler : out.deposit, in.metal.flux_ratio), fig::flux, g);
  out.flux_cost = name(out.flux * in.metal.flux_price, fig::flux_cost, g);
}

/// Money of the parts that group g wears: by the hour, by part, and the carbons where it gouges.
template <class N>
Money<N> wear_of(const Row<N>& row, Length<N> weld_length, std::uint32_t g, const PassFigures<N>& out) {
  const PassInputs<N>& in = row.passes[g];
  Money<N> money = out.arc * in.wear_rate;
  for (std::size_t p = 0; p < in.wear_parts.size(); ++p) {
    const WearPartInputs<N>& part = in.wear_parts[p];
    switch (row.pass_shapes[g].wear[p]) {
      case WearLife::arc:
        money = money + wear_of_part(part.price, out.arc, part.arc);
        break;
      case WearLife::length:
        money = money + wear_of_part(part.price, weld_length * out.passes, part.length);
        break;
      case WearLife::starts:
        money = money + wear_of_part(part.price, out.labour.starts, part.starts);
        break;
    }
  }
  const bool gouges = row.gouge_shape.gouged && row.gouge_shape.carbons && row.gouge_shape.group == g;
  return gouges ? money + weld_length * row.gouge.carbon_price : money;
}

}  // namespace seambook
