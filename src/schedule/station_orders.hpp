// Each station by itself: the order of its work that takes least set-up, whatever the clock says, and under which no
// plan's set-ups can be.
#pragma once

#include "schedule/shop_net.hpp"

namespace seambook {

struct StationOrders {
  std::vector<std::uint32_t>
      order;               // of all tasks, precedence and the stations' orders in one; empty where they cannot
                           // be: they wait for each other in a ring, or a task may go to several stations
  std::int64_t floor = 0;  // seconds of set-up that every plan takes that leaves only impossible tasks undone
};

/// Requires: durations of the model in whole seconds.
StationOrders station_orders(const ShopProblem&, const std::vector<bool>& possible, const SearchBudget&);

}  // namespace seambook
