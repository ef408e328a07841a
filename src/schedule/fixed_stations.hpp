// Lists for which every task has its station already: then each station's order of least set-up can be found by itself.
#pragma once

#include "schedule/starts.hpp"

namespace seambook {

/// A station for each task, none for what goes away or cannot be done.
using StationOfTask = std::vector<std::optional<std::size_t>>;

/// The tasks of an order stay together: each goes to the station that can do most of its order's work, of those that
/// can do it; between equals to the first.
StationOfTask stations_by_order(const ShopProblem&);
/// The stations of a list.
StationOfTask stations_of(const ShopProblem&, const TaskList&);
/// Least set-up at each of these stations, the ways that end first; empty where the stations' orders wait for each
/// other in a ring.
TaskList list_with_stations(const ShopProblem&, const StationOfTask&, const std::vector<bool>& possible,
                            const SearchBudget&);

}  // namespace seambook
