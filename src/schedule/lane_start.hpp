// An order to begin from at one station, by due dates, weights and set-ups together.
#pragma once

#include "schedule/lanes.hpp"

namespace seambook {

/// Always next what weighs most for the time it takes, less the further off its due date is and the longer its set-up:
/// both in shares, `patience` and `set_up_patience`, of what is usual (apparent tardiness cost with set-ups: Lee,
/// Bhaskaran and Pinedo 1997). The pieces of the lane, in a new order.
std::vector<Piece> lane_start(ShopNet&, const Lane&, double patience, double set_up_patience);

}  // namespace seambook
