// Less lateness where stations are apart: simulated annealing on their lists. A task goes to the place that costs least
// at another station, two of two stations change places in the same way, or runs at one station change places.
#pragma once

#include "schedule/improve_plan.hpp"
#include "schedule/lanes.hpp"

namespace seambook {

/// Requires: stations_apart, tasks. Stops when lateness comes down to `floor`.
Improved improved_lanes(ShopNet&, const Improved& from, std::int64_t floor, const MoveBudget&);

}  // namespace seambook
