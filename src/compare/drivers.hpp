// What the answer hangs on: the investment's figures recorded, and one backward sweep through them to every input.
#pragma once

#include "compare/comparison.hpp"
#include "estimate/gradients.hpp"

namespace seambook {

/// The investment's record: every scenario's figures on one tape. Families' results have scenario × families + family
/// as row, yearly figures the scenario.
Tape investment_record(const RateBook&, const Job&, const Comparison&);

/// All inputs but counts that move what is left a year after the fixed cost, as stated; largest first.
std::vector<Sensitivity> drivers(const RateBook&, const Job&, const Comparison&);

}  // namespace seambook
