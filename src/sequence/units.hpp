// Operations that are best done together become one unit, so that the searches see set-up blocks, not operations.
#pragma once

#include <vector>

#include "sequence/free_work.hpp"
#include "sequence/work_net.hpp"

namespace seambook {

struct Units {
  WorkNet net;                 // of the units; the needs are those of the operations' net
  std::vector<Order> members;  // per unit its operations, in an order that respects precedence
};

/// Joins operations of one need that wait for the same operations of other needs, when work of that need is free
/// whenever its need is mounted (free_work.hpp): they become free at the same moment and are then done together, at no
/// cost. `file_order` is an order that respects precedence. Units are numbered by their first operation in it.
Units units_of(const WorkNet&, const std::vector<AttributeGroup>&, const Order& file_order);

/// The operations of an order of units.
Order operations_of(const Units&, const Order& units);

}  // namespace seambook
