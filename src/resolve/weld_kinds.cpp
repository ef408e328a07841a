#include "resolve/weld_kinds.hpp"

#include <array>

#include "read/known_words.hpp"

namespace seambook {
namespace {

// As WeldKind.
constexpr std::array<std::string_view, weld_kinds> weld_words = {
    "fillet",   "square",   "single V", "double V", "single bevel", "double bevel",
    "single U", "double U", "single J", "double J", "flare bevel",  "flare V",
    "edge",     "plug",     "slot",     "overlay",  "gouged"};
static_assert(std::size(weld_keys) == weld_kinds);

}  // namespace

std::string_view weld_word(WeldKind weld) { return weld_words[static_cast<std::size_t>(weld)]; }
std::string_view weld_key(WeldKind weld) { return weld_keys[static_cast<std::size_t>(weld)]; }

}  // namespace seambook
