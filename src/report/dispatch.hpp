// The plan as lists that a welder can follow: one for each station and shift, in turn, with short pieces of one set-up
// and one weldment in one row. Holds: every planned task stands in the lists of its station, its minutes shared among
// the shifts over which it goes, so that the lists together hold the plan's minutes.
#pragma once

#include "report/planned_shop.hpp"

namespace seambook {

/// Working time without a long pause; a night ends it.
struct PlanShift {
  Window span;
  std::string name;  // `Mon 11 May`; with its first hour where a day has two
};
/// Those of the plan's stations, up to the end of the plan, in turn.
std::vector<PlanShift> shifts_of(const PlannedShop&);

/// What one shift does of a task.
struct TaskPart {
  std::size_t at = 0;      // in Plan::tasks
  Instant from{}, to{};    // with its set-up
  double share = 1;        // of the task's work
  Time<> change{};         // the set-up stands where it begins
  bool goes_on = false;    // into a later shift
  bool continued = false;  // from an earlier one
};

struct DispatchRow {
  std::vector<TaskPart> parts;  // at least one, of one station, one welder, one set-up and one weldment
};

struct DispatchList {
  std::size_t station = 0, shift = 0;  // of the problem, of shifts_of
  std::vector<DispatchRow> rows;       // at least one
};

/// By station, then by shift.
std::vector<DispatchList> dispatch_lists(const PlannedShop&, const std::vector<PlanShift>&);

Time<> change_of(const DispatchRow&);
Time<> labour_of(const PlannedShop&, const DispatchRow&);
Time<> arc_of(const PlannedShop&, const DispatchRow&);

}  // namespace seambook
