// Jobs become a shop's work: the steps of each joint that are done in one go are a task, with the ways in which
// stations and welders of the rate book can do it, its minutes from the estimate, its waits and its order's due date.
#pragma once

#include "estimate/estimate.hpp"
#include "resolve/day.hpp"
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
  std::string hold;       // hold or witness points after it, in words; of outside work what is done; else empty
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
  bool gate = false;  // a rule that keeps it from the floor; else it is blocked, or follows what is
  std::string why, hint;
};

/// Work done or under way when the plan begins; what is under way ends where it began, and the plan goes around it.
struct Begun {
  std::string name;
  std::optional<std::size_t> station;  // of the problem; absent: away from the shop
  std::optional<std::size_t> person;   // of the problem
  Instant start{}, finish{};
};

struct ShopWork {
  ShopProblem problem;
  std::vector<TaskRef> refs;              // parallel to problem.tasks
  std::vector<std::size_t> stations;      // of the rate book, parallel to problem.stations
  std::vector<std::size_t> welders;       // of the rate book, parallel to problem.people
  std::vector<std::size_t> job_of_order;  // parallel to problem.orders
  std::vector<Withheld> withheld;
  std::vector<Begun> done, begun;
};

/// What is to be planned, and how.
struct WorkToPlan {
  const RateBook& book;
  std::span<const Job> jobs;
  std::span<const Estimate> estimates;  // parallel to jobs; for one piece, and the first quantity is made
  const Day* day = nullptr;
  Instant start{};             // nothing begins before
  bool overtime = false;       // after all shifts that allow it; else on the days that the day file names
  bool anybody_fits = false;   // fit-up and tacks by every welder, qualified or not: a remedy to price
  bool anybody_welds = false;  // the same of welding
};

/// Nothing, and the reasons in `diagnostics`, when the rate book states no shifts or the day file names work that there
/// is not.
std::optional<ShopWork> shop_work(const WorkToPlan&, Diagnostics&);

}  // namespace seambook
