// Composition and energy become carbon equivalents, a preheat temperature and a heat input.
// A composition holds mass shares as ratios (0.16 % is 0.0016); temperatures are kelvins above 0 °C.
// Sources: EN 1011-2, carbon equivalents and method B, as quoted by engineering pages (the wording of the standard was
// not seen); EN 1011-1, heat input, as quoted by SSAB; the Canadian form as in a worked example after CSA Z662.
#pragma once

#include "basics/composition.hpp"
#include "trade/consumption.hpp"

namespace seambook {

/// CE (IIW) = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15.
template <class N>
Ratio<N> carbon_equivalent(const Composition<N>& steel) {
  return steel.carbon + steel.manganese / 6 + (steel.chromium + steel.molybdenum + steel.vanadium) / 5 +
         (steel.nickel + steel.copper) / 15;
}

/// CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40 (EN 1011-2, method B). A form with (Cr + Cu)/10 circulates: a
/// misprint.
template <class N>
Ratio<N> carbon_equivalent_cet(const Composition<N>& steel) {
  return steel.carbon + (steel.manganese + steel.molybdenum) / 10 + (steel.chromium + steel.copper) / 20 +
         steel.nickel / 40;
}

/// Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B.
template <class N>
Ratio<N> crack_parameter(const Composition<N>& steel) {
  return steel.carbon + steel.silicon / 30 + (steel.manganese + steel.copper + steel.chromium) / 20 +
         steel.nickel / 60 + steel.molybdenum / 15 + steel.vanadium / 10 + 5 * steel.boron;
}

/// CE = C + F (Mn/6 + Si/24 + Cu/15 + Ni/20 + (Cr + Mo + V + Nb)/5 + 5 B) (after CSA Z662); the compliance factor F
/// depends on the carbon and comes from that standard's table.
template <class N>
Ratio<N> carbon_equivalent_csa(const Composition<N>& steel, Ratio<N> compliance) {
  return steel.carbon +
         compliance * (steel.manganese / 6 + steel.silicon / 24 + steel.copper / 15 + steel.nickel / 20 +
                       (steel.chromium + steel.molybdenum + steel.vanadium + steel.niobium) / 5 + 5 * steel.boron);
}

/// Where method B holds (EN 1011-2, from memory): outside it the formula says nothing.
namespace method_b {
inline constexpr Ratio<> least_cet{0.002}, largest_cet{0.005};
inline constexpr Length<> least_thickness{0.010}, largest_thickness{0.090};
inline constexpr VolumePerMass<> least_hydrogen{1 * unit::ml_per_100g.si}, largest_hydrogen{20 * unit::ml_per_100g.si};
inline constexpr LineEnergy<> least_heat{0.5 * unit::kJ_per_mm.si}, largest_heat{4.0 * unit::kJ_per_mm.si};
}  // namespace method_b

/// Least preheat of EN 1011-2, method B: Tp = 697 CET + 160 tanh(d/35) + 62 HD^0.35 + (53 CET - 32) Q - 328 in °C, with
/// CET in %, thickness d (of the plate, not combined) in mm, hydrogen HD in ml/100 g, heat input Q in kJ/mm. Below room
/// temperature it means no preheat. A form with tanh(35/d) circulates: a misprint, 115 K too high at 10 mm.
template <class N>
Temperature<N> preheat_method_b(Ratio<N> cet, Length<N> thickness, VolumePerMass<N> hydrogen, LineEnergy<N> heat) {
  const Ratio<N> cet_percent = cet / unit::percent.si;
  const Ratio<N> d = thickness / constant<N>(Length<>{unit::mm.si});
  const Ratio<N> hd = hydrogen / constant<N>(VolumePerMass<>{unit::ml_per_100g.si});
  const Ratio<N> q = heat / constant<N>(LineEnergy<>{unit::kJ_per_mm.si});
  const Ratio<N> degrees = 697 * cet_percent + 160 * tanh(d / 35) + 62 * pow(hd, 0.35) +
                           (53 * cet_percent - number<N>(32)) * q - number<N>(328);
  return degrees * constant<N>(Temperature<>{1});
}

/// Thickness that draws the heat away from a butt: both parts (EN 1011-2, method A, from memory).
template <class N>
Length<N> combined_thickness(Length<N> one, Length<N> other) {
  return one + other;
}

/// The same at a tee, where the through part leads the heat away to both sides.
template <class N>
Length<N> combined_thickness_tee(Length<N> through, Length<N> branch) {
  return 2 * through + branch;
}

/// Heat input as American practice states it, with no thermal efficiency: 60 V I / v in J/in, v in in/min. It is the
/// arc energy of ISO/TR 18491, and larger than the heat input of EN 1011-1 (`heat_input`) by the thermal efficiency.
template <class N>
LineEnergy<N> heat_input_without_efficiency(Voltage<N> voltage, Current<N> current, Speed<N> travel) {
  return arc_energy(voltage, current, travel);
}

}  // namespace seambook
