// Less lateness at a single station whose work can be done in one way: descents in which a run goes elsewhere or two
// tasks change places, again and again from an order changed a little, now and then from a new start (iterated local
// search: Lourenço, Martin and Stützle 2003; these neighbourhoods in random order: Subramanian, Battarra and Potts
// 2014). Most moves are refused by a bound on what they cost.
#pragma once

#include "schedule/improve_plan.hpp"
#include "schedule/lanes.hpp"

namespace seambook {

/// Whether all work is at one station and can be done in one way there.
bool in_one_lane(const ShopNet&);

/// Requires: stations_apart, in_one_lane, more than one task. Stops when lateness comes down to `floor`.
Improved lane_descents(ShopNet&, const Improved& from, std::int64_t floor, const MoveBudget&);

}  // namespace seambook
