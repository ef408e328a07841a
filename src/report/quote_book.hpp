// The quote as a workbook: customer page, cost page, joints, labour, materials, weldments, sequence, rates, notes.
// Every figure downstream of an input is a live formula with the value it shows; what a change could reselect or
// reorder is locked and says "run again".
#pragma once

#include <span>

#include "quote/changes.hpp"
#include "quote/quote.hpp"
#include "report/workbook.hpp"

namespace seambook {

Workbook quote_workbook(const RateBook&, const Job&, const Estimate&, const std::vector<StationWork>&, const Quote&,
                        const Diagnostics& places, const Changes* = nullptr);

}  // namespace seambook
