// A list to begin a search from in which the tasks of an order stay together at one station.
#pragma once

#include "schedule/improve_plan.hpp"
#include "schedule/plan.hpp"

namespace seambook {

/// Whether some order has several tasks, and none too many to look at all pairs of them.
bool has_whole_orders(const ShopNet&);

/// One order after the other by due date, each at the station where it adds least lateness and then ends earliest,
/// set-up counted as more or less than its time; within an order always next what takes the least change. What cannot
/// be done at the order's station goes where it ends first. From the best of several such lists orders then change
/// places and stations as long as the budget allows and the levels are above `floor`. Requires: has_whole_orders.
TaskList list_by_whole_orders(ShopNet&, const Levels& floor, const PlanBudget&);

}  // namespace seambook
