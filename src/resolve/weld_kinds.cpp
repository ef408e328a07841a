#include "resolve/weld_kinds.hpp"

#include <array>

namespace seambook {
namespace {

struct WeldWords {
  std::string_view key, words;
};
// As WeldKind.
constexpr std::array<WeldWords, weld_kinds> weld_words = {{{"fillet", "fillet"},
                                                           {"square", "square"},
                                                           {"single_v", "single V"},
                                                           {"double_v", "double V"},
                                                           {"single_bevel", "single bevel"},
                                                           {"double_bevel", "double bevel"},
                                                           {"single_u", "single U"},
                                                           {"double_u", "double U"},
                                                           {"single_j", "single J"},
                                                           {"double_j", "double J"},
                                                           {"flare_bevel", "flare bevel"},
                                                           {"flare_v", "flare V"},
                                                           {"edge", "edge"},
                                                           {"plug", "plug"},
                                                           {"slot", "slot"},
                                                           {"overlay", "overlay"},
                                                           {"gouged", "gouged"}}};

}  // namespace

std::string_view weld_word(WeldKind weld) { return weld_words[static_cast<std::size_t>(weld)].words; }
std::string_view weld_key(WeldKind weld) { return weld_words[static_cast<std::size_t>(weld)].key; }

}  // namespace seambook
