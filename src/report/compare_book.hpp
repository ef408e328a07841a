// A comparison as a workbook: the decision first, the saving by scenario, the families by process, the crossover, the
// joints behind them, the rates, the notes.
#pragma once

#include "compare/comparison.hpp"
#include "report/workbook.hpp"

namespace seambook {

Workbook compare_workbook(const RateBook&, const Job&, const Comparison&, Date date);

}  // namespace seambook
