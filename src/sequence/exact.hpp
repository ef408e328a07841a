// The order that takes least change time, by best-first search (A*; Hart, Nilsson and Raphael 1968) over states of
// (units done, what is mounted). Free work is done at once, so a step is one change of set-up.
#pragma once

#include <optional>
#include <vector>

#include "sequence/bound.hpp"
#include "sequence/free_work.hpp"
#include "sequence/work_net.hpp"

namespace seambook {

struct Floors {
  AttributeWalks walks;
  UnitChain chain;
};

struct ExactResult {
  std::optional<Order> order;  // cheaper than the known order; absent when none was found
  Time<> bound{};              // no order takes less; when the search was cut short, what it had shown by then
  bool proved = false;         // `order`, or else the known order, is a cheapest one
};

/// Looks for an order of units cheaper than `known`, which some order attains. `states` bounds the work: a state counts
/// once for every 64 units; building its closer floor counts by the square of the units left.
ExactResult cheapest_order(const std::vector<AttributeGroup>&, const Floors&, MountedStates&, const WorkNet&,
                           Time<> known, std::size_t states);

}  // namespace seambook
