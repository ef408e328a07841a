// Figures of what passes lay and use up beside filler and gas: shares of the section, gouging, electrodes, flux, wear.
#pragma once

#include "trace/figure.hpp"

namespace seambook::fig {

// Section and passes.
inline constexpr Figure groove_section{"groove_section", "section of the groove", unit::mm2, 2,
                                       "inside the faces: by the kind of weld"};
inline constexpr Figure caps_section{"caps_section", "section of the caps", unit::mm2, 2, "2/3 × width × height, each"};
inline constexpr Figure share_section{"share_section", "excess by share", unit::mm2, 2, "groove × share"};
inline constexpr Figure gouge_depth{"gouge_depth", "depth gouged", unit::mm, 2};
inline constexpr Figure gouge_width{"gouge_width", "width gouged", unit::mm, 2};
inline constexpr Figure gouged{"gouged", "section gouged and put back", unit::mm2, 2,
                               "half ellipse, π/4 × width × depth (plane geometry)"};
inline constexpr Figure section_laid{"section_laid", "section with what was gouged", unit::mm2, 2,
                                     "section + section gouged"};
inline constexpr Figure lays{"lays", "these passes lay", unit::mm2, 2, "passes × deposition / travel speed"};
inline constexpr Figure largest_leg{"largest_leg", "largest leg of one pass", unit::mm, 2};
inline constexpr Figure largest_area{"largest_area", "largest section of one pass", unit::mm2, 2};
inline constexpr Figure deposition_rate{"deposition_rate", "deposition rate", unit::kg_per_h, 2};
inline constexpr Figure linear_mass{"linear_mass", "mass of a metre of wire", unit::g_per_m, 2};

// Gouging.
inline constexpr Figure gouge_pace{"gouge_pace", "gouging", unit::min_per_m, 2};
inline constexpr Figure carbon_price{"carbon_price", "carbon electrodes", unit::money_per_m, 2};
inline constexpr Figure gouge_min{"gouge_time", "gouging", unit::min, 2, "weld length × minutes per metre"};

// Electrodes and rods.
inline constexpr Figure electrode_length{"electrode_length", "electrode length", unit::mm, 0};
inline constexpr Figure stub{"stub", "stub", unit::mm, 0};
inline constexpr Figure piece_mass{"piece_mass", "mass of an electrode or rod", unit::g, 2};
inline constexpr Figure electrode_change{"time_per_electrode", "time per electrode", unit::min, 2};
inline constexpr Figure pieces{"pieces", "electrodes or rods", unit::none, 0, "filler / mass of one, rounded up"};
inline constexpr Figure change_min{"electrode_time", "electrode changes", unit::min, 2, "electrodes × time per change"};

// Flux.
inline constexpr Figure flux_ratio{"flux_ratio", "flux ratio", unit::percent, 0};
inline constexpr Figure flux_price{"flux_price", "flux price", unit::money_per_kg, 2};
inline constexpr Figure flux{"flux", "flux", unit::g, 1, "weld metal or filler (by the flux' basis) × flux ratio"};
inline constexpr Figure flux_cost{"flux_cost", "flux", unit::money, 2, "flux × price"};

// Parts that wear.
inline constexpr Figure wear_part_price{"wear_part_price", "wear part price", unit::money, 2};
inline constexpr Figure wear_part_life{"wear_part_life", "wear part life", unit::h, 1};
inline constexpr Figure wear_part_length{"wear_part_length", "wear part life", unit::m, 0};
inline constexpr Figure wear_part_starts{"wear_part_starts", "wear part life in starts", unit::none, 0};

}  // namespace seambook::fig
