// Units as the shop reads them: every figure has a metric unit; a shop that prints AWS terms gets the US customary
// twin. Holds: a twin is of the same dimension, and exact where the inch and the pound are.
#pragma once

#include "basics/units.hpp"

namespace seambook {

enum class Terms : std::uint8_t { iso, aws };

/// How a figure is printed: in which unit, with how many decimals.
struct Shown {
  Unit unit;
  int decimals = 2;
};

/// The unit in which `terms` print a metric unit; the same one where it has no twin (ampere, minute, kilowatt hour).
Shown shown_in(Terms terms, const Unit& metric, int decimals = 2);

}  // namespace seambook
