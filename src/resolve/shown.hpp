// Quantities in the shop's units, for messages and assumptions.
#pragma once

#include <string>

#include "basics/shown_units.hpp"
#include "read/written.hpp"

namespace seambook {

/// `8 mm`, `60°`, `18 %`; at most three decimals.
std::string shown(double si, const Unit&);
template <Dim D>
std::string shown(Quantity<D> quantity, const Unit& unit) {
  return shown(quantity.si, unit);
}
/// The same in the unit in which the shop's terms print a metric one: `0.197 in`.
std::string shown(double si, const Unit& metric, Terms);
template <Dim D>
std::string shown(Quantity<D> quantity, const Unit& metric, Terms terms) {
  return shown(quantity.si, metric, terms);
}
/// With as many decimals as the terms' unit takes for so many of the metric one: `12.50 mm²`, `0.0194 in²`.
std::string shown_fixed(double si, const Unit& metric, int decimals, Terms);
/// `common practice`.
std::string_view basis_in_words(Basis);

}  // namespace seambook
