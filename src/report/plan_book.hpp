// The order of work of several jobs as a workbook: one sheet a station, with set-ups, minutes and reasons.
#pragma once

#include <span>

#include "estimate/estimate.hpp"
#include "report/workbook.hpp"
#include "sequence/work.hpp"

namespace seambook {

/// Floor time of one operation: its pass group's, for all pieces of the first quantity.
Time<> operation_time(std::span<const Job>, std::span<const Estimate>, const OperationRef&);
Workbook plan_workbook(const RateBook&, std::span<const Job>, std::span<const Estimate>,
                       const std::vector<StationWork>&, Date);

}  // namespace seambook
