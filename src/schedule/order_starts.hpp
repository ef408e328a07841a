// A list to begin a search from in which the tasks of an order stay together at one station.
#pragma once

#include "schedule/timeline.hpp"

namespace seambook {

/// One order after the other by due date, each at the station where it adds least lateness and then ends earliest,
/// set-up counted as more or less than its time; within an order always next what takes the least change. What cannot
/// be done at the order's station goes where it ends first. Of several such lists the best; empty where orders are too
/// large.
TaskList list_by_whole_orders(ShopNet&);

}  // namespace seambook
