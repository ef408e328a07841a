// Jobs become a shop's work: the steps of each joint that are done in one go are a task, with the ways in which
// stations and welders of the rate book can do it, its minutes from the estimate, its waits and its order's due date.
#pragma once

#include "estimate/estimate.hpp"
#include "schedule/plan.hpp"

namespace seambook {

/// What is done to a joint, in turn.
enum class StepKind : std::uint8_t { fit, preheat, passes, gouge, finish, inspect, outside };
std::string_view step_word(StepKind);  // `fit and tack`

/// One step of a task, for all pieces of its lot.
struct TaskStep {
  StepKind kind = StepKind::passes;
  std::size_t group = 0;  // of passes, for those
  Time<> labour{};        // of all people together
  Time<> arc{};           // in it
  std::string hold;       // hold or witness points after it, in words; empty: none
  bool stops = false;     // one of them is a hold point
};

/// Where a task of the problem comes from.
struct TaskRef {
  std::size_t job = 0, weldment = 0;
  std::optional<std::size_t> joint;          // absent: work on the weldment as a whole
  std::int64_t first_piece = 1, pieces = 1;  // of the lot: pieces of the job times the count of the weldment
  std::vector<TaskStep> steps;               // at least one
};

/// Work that may be priced but is not sent to the floor, or that has to wait.
struct Withheld {
  std::size_t job = 0, weldment = 0;
  std::optional<std::size_t> joint;
  bool gate = false;  // a rule that keeps it from the floor; else it is blocked or not ready
  std::string why, hint;
};

struct ShopWork {
  ShopProblem problem;
  std::vector<TaskRef> refs;              // parallel to problem.tasks
  std::vector<std::size_t> stations;      // of the rate book, parallel to problem.stations
  std::vector<std::size_t> welders;       // of the rate book, parallel to problem.people
  std::vector<std::size_t> job_of_order;  // parallel to problem.orders
  std::vector<Withheld> withheld;
};

}  // namespace seambook
