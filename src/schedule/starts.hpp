// Lists to begin a search from: tasks one after the other by a rule, each in the way that ends it first.
#pragma once

#include <functional>

#include "schedule/timeline.hpp"

namespace seambook {

/// What the next task is chosen by; the least goes first, the input order decides between equals.
enum class Rule : std::uint8_t {
  input_order,  // put right where it breaks precedence
  due_date,     // of its order, or of the most urgent one that waits for it
  start,        // what can begin first, then the due date
  set_up        // what takes the least change, then what can begin first
};
TaskList list_by(ShopNet&, Rule);
/// Tasks in a given order, each in the way that ends it first.
TaskList list_of(ShopNet&, const std::vector<std::uint32_t>& order);
/// As near to the earlier plan as precedence allows: its order, its stations and people. Requires: there is one.
TaskList list_as_before(ShopNet&);
/// The way that ends a task first, then with the least change; the first one when none is possible.
std::uint32_t quickest_way(ShopNet&, const Timeline&, const Finishes&, std::uint32_t task);

}  // namespace seambook
