// Names of the figures of sizes that only some welds have, and of the lines that are no plain length.
#pragma once

#include "trace/figure.hpp"

namespace seambook::fig {

inline constexpr Figure leg_second{"leg_second", "leg z, second member", unit::mm, 2};
inline constexpr Figure deep_throat{"deep_throat", "deep throat s", unit::mm, 2};
inline constexpr Figure radius{"radius", "radius", unit::mm, 2};
inline constexpr Figure depth{"depth", "depth", unit::mm, 2};
inline constexpr Figure depth_second{"depth_second", "depth, second side", unit::mm, 2};
inline constexpr Figure reinforce{"reinforce", "leg of the fillet over it", unit::mm, 2};
inline constexpr Figure excess_share{"excess_share", "excess, share of the groove", unit::percent, 0};
inline constexpr Figure back_width{"back_width", "cap width, second side", unit::mm, 2,
                                   "groove face + twice the overlap, or as given"};
inline constexpr Figure back_height{"back_height", "cap height, second side", unit::mm, 2};
inline constexpr Figure diameter{"diameter", "diameter of the hole", unit::mm, 2};
inline constexpr Figure width{"width", "width", unit::mm, 2};
inline constexpr Figure slot{"slot", "length of the slot", unit::mm, 1};
inline constexpr Figure layers{"layers", "layers", unit::none, 0};
inline constexpr Figure layer_height{"layer_height", "height of a layer", unit::mm, 2};
inline constexpr Figure gap_e{"gap_e", "gap e, end to start", unit::mm, 1};
inline constexpr Figure branch_on{"branch_on", "set on a tube of", unit::mm, 1};
inline constexpr Figure branch_angle{"branch_angle", "angle between the tubes", unit::degree, 1};
inline constexpr Figure side{"side", "side", unit::mm, 1};
inline constexpr Figure side_second{"side_second", "other side", unit::mm, 1};
inline constexpr Figure corner_radius{"corner_radius", "corner radius", unit::mm, 1};

// Named where they would stand several times in a formula.
inline constexpr Figure arc_depth{"arc_depth", "depth of the root arc", unit::mm, 2, "radius × (1 - sin bevel)"};
inline constexpr Figure cut_depth{"cut_depth", "depth of the preparation", unit::mm, 2,
                                  "thickness - root face, half of it on each side of a double groove"};

inline constexpr Figure elements_second{"elements_second", "elements, second side", unit::none, 0,
                                        "floor((line - pitch/2 - element)/pitch) + 1"};
inline constexpr Figure unwelded{"unwelded", "line left unwelded", unit::m, 3, "line × joints × sides - weld length"};

}  // namespace seambook::fig
