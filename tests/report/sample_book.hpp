// A workbook that uses every look, rule and chart the report layer offers; its figures are invented.
// The office suite recalculates it in the tests, so every formula's cached value is worked out beside it.
#pragma once

#include "report/workbook.hpp"

namespace seambook {

Workbook sample_book();

}  // namespace seambook
