#include "basics/shown_units.hpp"

#include <string_view>

namespace seambook {
namespace {

// International inch and pound (NIST Special Publication 811, appendix B: exact).
constexpr double inch = 0.0254, foot = 0.3048, pound = 0.45359237;
constexpr double cubic_foot = foot * foot * foot;

/// A twin, and the decimals to add so that it is printed about as finely.
struct Twin {
  Unit metric, customary;
  int finer = 0;
};
constexpr Twin twins[] = {
    {unit::mm, {"in", inch}, 2},
    {unit::m, {"ft", foot}, -1},
    {unit::mm2, {"in²", inch* inch}, 3},
    {unit::g, {"lb", pound}, 2},
    {unit::kg, {"lb", pound}, 0},
    {unit::g_per_m, {"lb/ft", pound / foot}, 3},
    {unit::g_per_cm3, {"lb/in³", pound / (inch * inch * inch)}, 2},
    {unit::mm_per_min, {"in/min", inch / 60}, 1},
    {unit::m_per_min, {"in/min", inch / 60}, -1},
    {unit::cm3_per_min, {"in³/min", inch* inch* inch / 60}, 1},
    {unit::kg_per_h, {"lb/h", pound / 3600}, 0},
    {unit::l, {"ft³", cubic_foot}, 1},
    {unit::m3, {"ft³", cubic_foot}, -1},
    {unit::l_per_min, {"ft³/h", cubic_foot / 3600}, 0},
    {unit::kJ_per_mm, {"kJ/in", 1e3 / inch}, -1},
    {unit::min_per_m, {"min/ft", 60 / foot}, 1},
    {unit::celsius, {"°F", 5.0 / 9, 32}, 0},
    {unit::money_per_kg, {"¤/lb", 1 / pound}, 0},
    {unit::money_per_m3, {"¤/ft³", 1 / cubic_foot}, 2},
    {unit::money_per_m, {"¤/ft", 1 / foot}, 0},
};

}  // namespace

Shown shown_in(Terms terms, const Unit& metric, int decimals) {
  if (terms == Terms::iso) return {metric, decimals};
  for (const Twin& twin : twins) {
    if (std::string_view(twin.metric.word) != metric.word) continue;
    return {twin.customary, decimals + twin.finer < 0 ? 0 : decimals + twin.finer};
  }
  return {metric, decimals};
}

}  // namespace seambook
