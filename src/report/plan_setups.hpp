// The set-ups of a plan: runs of tasks at a station without another set-up between them.
#pragma once

#include "report/planned_shop.hpp"

namespace seambook {

/// The first one of a station may begin with what stands mounted.
struct PlannedSetUp {
  std::size_t station = 0;         // of the problem
  std::vector<std::size_t> tasks;  // in Plan::tasks, by time; at least one
};
/// By station, then by time.
std::vector<PlannedSetUp> set_ups_of(const PlannedShop&);

}  // namespace seambook
