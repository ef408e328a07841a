// The first end of one order's work at stations that never wait for each other, with proof: what each set of tasks
// takes at each station (Held and Karp 1962), then sets given to one station after the other.
#pragma once

#include "schedule/timeline.hpp"

namespace seambook {

struct EarliestEnd {
  std::optional<TaskList> list;  // of all tasks, ends before the known plan; absent when there is none
  std::optional<Instant> end;    // no plan of all tasks ends before; absent when none of them can be done together
};

/// Whether it can be asked for: stations_apart, at most 16 tasks, all of one order.
bool has_one_order_apart(const ShopNet&);

/// Requires: has_one_order_apart. `known`: of some plan.
EarliestEnd earliest_end(ShopNet&, const Levels& known);

/// Where an order of that kind is late, looks for the earliest end: a better list takes the place of the one given, and
/// the floor rises to it.
void seek_earliest_end(ShopNet&, TaskList&, Levels& of_list, Levels& floor);

}  // namespace seambook
