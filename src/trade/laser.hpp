// What a laser beam can do at most: a plausibility gate on claimed speeds, thicknesses and gaps. The shares and rules
// are data of the rate book and are passed in. Sources beside each formula.
#pragma once

#include "trace/vocabulary.hpp"

namespace seambook {

/// Travel speed that the energy of the beam allows: v = a m P / (A H), with `absorbed` a the share of the beam that the
/// metal takes, `melting` m the share of that which melts the seam, H the heat that melts a volume. Source: energy
/// balance; the shares are of the trade (common practice, no source).
template <class N>
Speed<N> speed_ceiling(Ratio<N> absorbed, Ratio<N> melting, Power<N> beam, Area<N> melted,
                       EnergyPerVolume<N> heat_to_melt) {
  return absorbed * melting * beam / (melted * heat_to_melt);
}

/// Thickness that a beam welds from one side (rule of the trade: so many millimetres a kilowatt, from the rate book).
template <class N>
Length<N> thickness_within_reach(Power<N> beam, Quantity<dim::length - dim::power, N> reach) {
  return beam * reach;
}

/// Largest gap without filler: a share of the thinner part, a tenth by "Gap tolerance during high-speed fiber laser
/// welding of thin metal", EWI.
template <class N>
Length<N> gap_limit(Length<N> thinner, Ratio<N> share) {
  return thinner * share;
}

/// The stricter of that and a share of the beam diameter, a half by "Laser's Edge", part 3, Gear Solutions.
template <class N>
Length<N> gap_limit_with_beam(Length<N> thinner, Ratio<N> share, Length<N> beam_diameter, Ratio<N> beam_share) {
  return min(gap_limit(thinner, share), beam_diameter * beam_share);
}

}  // namespace seambook
