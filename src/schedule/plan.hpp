// The plan of a shop: who does what, where and when, with the set-up before it and the reason, how it is judged and how
// much better any plan could be.
#pragma once

#include <atomic>

#include "schedule/shop.hpp"

namespace seambook {

/// What a task had to wait for, the last to come free.
enum class Waited : std::uint8_t { nothing, station, person, earlier_work, ready_date, working_time };

struct PlannedTask {
  std::size_t task = 0, way = 0;
  Instant set_up{};           // when its set-up begins; equal to `start` without one
  Instant start{}, finish{};  // of the work
  Change change;              // of set-up before it
  Waited waited = Waited::nothing;
  std::optional<std::size_t> waited_for;  // the task whose end it waited for
  std::string reason;
};

struct UnplacedTask {
  std::size_t task = 0;
  std::string why;
};

struct LateOrder {
  std::size_t order = 0;
  Instant finish{};
  Seconds late{};  // behind the due date, tolerance and all
};

struct PlanLevel {
  std::string name;  // `late minutes`
  std::int64_t value = 0, bound = 0;
  bool proved = false;
};

/// Another plan of the same work, to compare with.
struct OtherPlan {
  std::string name;  // `order in the files`, `due-date order`, `least set-up, whatever is late`
  Levels levels;
};

struct Plan {
  std::vector<PlannedTask> tasks;      // by start, then by station
  std::vector<UnplacedTask> unplaced;  // in the order of the problem's tasks
  std::vector<LateOrder> late;         // in the order of the problem's orders; within the tolerance too
  Levels levels;
  std::vector<PlanLevel> judged;  // level by level up to the first that is open
  std::vector<OtherPlan> others;
};

/// Counted, not timed, so that the same input gives the same bytes.
struct PlanBudget {
  std::size_t placements = 60'000'000;        // of the improvement search: a move places every task anew, at most
  std::size_t states = 60'000;                // of the exact search
  double seconds = 0;                         // of processor time, in place of placements when not 0
  SearchBudget stations = {100'000, 50'000};  // of the order at each station by itself
  const std::atomic<bool>* stop = nullptr;    // when it turns true, the best plan found so far is given
};

inline bool is_stopped(const PlanBudget& budget) { return budget.stop != nullptr && *budget.stop; }

/// The best plan found: the levels in turn, the first first.
Plan plan(const ShopProblem&, const PlanBudget& = {});
/// A given list, timed; without reasons and bounds. Tasks that are left out of the list are unplaced.
Plan timed_plan(const ShopProblem&, const TaskList&);
/// Every rule that a plan breaks, in words. Written apart from the search.
std::vector<std::string> plan_violations(const ShopProblem&, const Plan&);
/// The levels of a plan from its instants, apart from the search too.
Levels checked_levels(const ShopProblem&, const Plan&);

}  // namespace seambook
