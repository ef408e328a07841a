// Words of the trade that are understood where names become meanings (resolve), here for the tables of fields.
#pragma once

#include <string_view>

namespace seambook {

/// As WeldKind (resolve/weld_kinds.hpp).
inline constexpr std::string_view weld_keys[] = {"fillet",       "square",   "single_v", "double_v", "single_bevel",
                                                 "double_bevel", "single_u", "double_u", "single_j", "double_j",
                                                 "flare_bevel",  "flare_v",  "edge",     "plug",     "slot",
                                                 "overlay",      "gouged"};
/// As FillerForm (resolve/rate_book.hpp).
inline constexpr std::string_view filler_forms[] = {"solid_wire", "cored_wire", "rod", "covered_electrode"};
/// As set_up_attributes (resolve/set_up_names.hpp).
inline constexpr std::string_view set_up_words[] = {"process",     "filler",  "feed", "gas",
                                                    "cleanliness", "program", "job",  "weldment"};

}  // namespace seambook
