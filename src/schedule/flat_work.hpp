// One station's work in which a task's time follows from the task before it alone, as plain numbers in few arrays.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "schedule/shop_net.hpp"

namespace seambook {

/// One second late counts as much as so many of set-up, which then only break ties.
inline constexpr std::int64_t set_ups_in_one_late = 500;

/// Work that goes on without a pause, one task after the other. Tasks are counted from 1; 0 is the start and the end,
/// which takes no time.
struct FlatWork {
  std::size_t tasks = 0;
  std::vector<std::int32_t> steps;    // [before * (tasks + 1) + task]: seconds of set-up and work
  std::vector<std::int64_t> due;      // seconds from the start, by task
  std::vector<std::int64_t> weights;  // of a second late, in seconds of set-up, by task
  std::int32_t step(std::size_t before, std::size_t task) const { return steps[before * (tasks + 1) + task]; }
};

/// Requires: stations_apart, in_one_lane. Nothing where a task may have to wait or be interrupted, an order has several
/// tasks, set-up depends on more than the task before, some change is never made, or sums may not fit.
std::optional<FlatWork> flat_work(ShopNet&);

}  // namespace seambook
