// Joints that cost the same however some inputs move: large jobs repeat the same seams, and are estimated many times to
// tell how far a price may lie off.
#pragma once

#include "estimate/inputs.hpp"

namespace seambook {

struct LikeRows {
  Row<Sourced> row;  // sources of numbers that stay are forgotten
  double count = 1;  // joints of this kind
};

/// All joints by their rows, in the order of the first of each kind. `moving`: the inputs that may be multiplied,
/// ascending; joints of one kind have the same numbers, and those that move from the same sources.
std::vector<LikeRows> like_rows(const RateBook&, const Job&, const std::vector<SourceId>& moving);

}  // namespace seambook
