// Units of the handbooks that print in inches and pounds, and the weld metal of a stretch of seam in the unit a table
// prints. Sizes are exact: 1 in = 25.4 mm, 1 lb = 0.45359237 kg.
#pragma once

#include <doctest/doctest.h>

#include "trade/consumption.hpp"
#include "trade/labour.hpp"
#include "trade/passes.hpp"
#include "trade/section_fills.hpp"

namespace tables {

using namespace seambook;

inline constexpr double inch = 0.0254, foot = 12 * inch, pound = 0.45359237, cubic_foot = foot * foot * foot;
inline constexpr double hour = 3600, minute = 60, degree = unit::degree.si;

inline Length<> inches(double x) { return {x * inch}; }
inline Length<> mm(double x) { return {x * 1e-3}; }
inline Area<> mm2(double x) { return {x * 1e-6}; }
inline Angle<> degrees(double x) { return {x * degree}; }
inline Density<> lb_per_in3(double x) { return {x * pound / (inch * inch * inch)}; }
inline Density<> g_per_cm3(double x) { return {x * 1e3}; }

inline double lb_per_ft(Area<> section, Density<> metal) {
  return deposit_mass(section, Length<>{foot}, metal).si / pound;
}
inline double kg_per_m(Area<> section, Density<> metal) { return deposit_mass(section, Length<>{1}, metal).si; }
inline bool within(double found, double expected, double tolerance) {
  return found >= expected - tolerance && found <= expected + tolerance;
}

}  // namespace tables
