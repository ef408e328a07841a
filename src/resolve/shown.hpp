// Quantities in the shop's units, for messages and assumptions.
#pragma once

#include <string>

#include "basics/units.hpp"
#include "read/written.hpp"

namespace seambook {

/// `8 mm`, `60°`, `18 %`; at most three decimals.
std::string shown(double si, const Unit&);
template <Dim D>
std::string shown(Quantity<D> quantity, const Unit& unit) {
  return shown(quantity.si, unit);
}
/// `common practice`.
std::string_view basis_in_words(Basis);

}  // namespace seambook
