#include "resolve/weld_kinds.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/names.hpp"

namespace seambook {
namespace {

constexpr std::string_view built_welds[] = {"fillet", "square", "single_v", "single_bevel", "edge"};  // as WeldKind

// Welds of ISO 2553 and AWS A2.4 that authors may rightly ask for.
constexpr std::string_view welds_to_come[] = {
    "double_v",    "double_bevel",   "single_u",       "double_u",  "u",       "single_j",  "double_j", "j",
    "flare_bevel", "flare_v",        "plug",           "slot",      "overlay", "spot",      "seam",     "stud",
    "corner",      "fillet_unequal", "unequal_fillet", "surfacing", "lap",     "projection"};

}  // namespace

std::optional<WeldKind> find_weld_kind(Diagnostics& diagnostics, const Word& word) {
  for (std::size_t i = 0; i < std::size(built_welds); ++i)
    if (built_welds[i] == word.text) return static_cast<WeldKind>(i);
  if (std::find(std::begin(welds_to_come), std::end(welds_to_come), word.text) != std::end(welds_to_come)) {
    diagnostics.error(word.place, fmt::format("weld '{}' is not built yet", word.text),
                      fmt::format("these are: {}", listed({std::begin(built_welds), std::end(built_welds)})));
  } else {
    refuse_unknown(diagnostics, word, "weld", {std::begin(built_welds), std::end(built_welds)});
  }
  return std::nullopt;
}

std::string_view weld_key(WeldKind weld) { return built_welds[static_cast<std::size_t>(weld)]; }

}  // namespace seambook
