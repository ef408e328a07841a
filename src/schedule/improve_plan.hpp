// A list made better by moving tasks and runs of tasks of one set-up to other places and other ways; simulated
// annealing (Kirkpatrick, Gelatt and Vecchi 1983) on the levels weighed together, the best list kept by the levels in
// turn.
#pragma once

#include <atomic>
#include <ctime>

#include "schedule/timeline.hpp"

namespace seambook {

struct Improved {
  TaskList list;
  Levels levels;
};

/// `allowed` is asked now and then; the search stops when it says no, or after `moves`.
struct MoveBudget {
  std::size_t moves = 0;
  double seconds = 0;  // of processor time, in place of moves when not 0
  std::uint32_t seed = 1;
  const std::atomic<bool>* stop = nullptr;  // ends it when true
};

/// The share of a budget that is used up.
struct UsedBudget {
  MoveBudget of;
  std::clock_t begin = std::clock();
  double share = 0;
  std::size_t looks = 0, looks_per_clock = 64;

  /// Whether there is some left after `done` moves.
  bool left(std::size_t done);
};

/// Stops early when the levels come down to `floor`.
Improved improved_list(ShopNet&, const TaskList& from, const Levels& floor, const MoveBudget&);

}  // namespace seambook
