// What a figure of the estimate is called, the unit it is shown in, and where its formula comes from.
// One table of figures serves the sheets, the working in words and JSON, so that a thing has one name everywhere.
#pragma once

#include "basics/units.hpp"

namespace seambook {

struct Figure {
  const char* key = "";    // name in the working and in JSON, without unit
  const char* words = "";  // heading
  Unit unit;
  int decimals = 2;
  const char* source = "";  // of the formula; empty for an input
};

}  // namespace seambook
