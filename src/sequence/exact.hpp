// The order that takes least change time, by best-first search (A*; Hart, Nilsson and Raphael 1968) over states of
// (work done, what is mounted). Free work is done at once, so a step is one change of set-up.
#pragma once

#include <optional>

#include "sequence/bound.hpp"
#include "sequence/free_work.hpp"
#include "sequence/work_net.hpp"

namespace seambook {

struct ExactResult {
  std::optional<Order> order;  // cheaper than the known order; absent when none was found
  Time<> bound{};              // no order takes less; when the search was cut short, what it had shown by then
  bool proved = false;         // `order`, or else the known order, is a cheapest one
};

/// Looks for an order cheaper than `known`, which some order attains, over at most `states` states.
ExactResult cheapest_order(const std::vector<AttributeGroup>&, const Floors&, MountedStates&, const WorkNet&,
                           Time<> known, std::size_t states);

}  // namespace seambook
