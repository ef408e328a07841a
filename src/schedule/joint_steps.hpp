// What is done to a joint in turn, with its minutes: the floor time of the estimate, split by labour element; and which
// steps are done in one go.
#pragma once

#include "schedule/shop_work.hpp"

namespace seambook {

/// Steps of a joint for one piece of the job. Their minutes add up to the joint's floor time.
std::vector<TaskStep> joint_steps(const RateBook&, const Job&, const Estimate&, std::size_t joint);

/// Steps that are done in one go: a row that somebody can follow.
struct StepRun {
  std::vector<TaskStep> steps;
  Time<> labour{};
  Time<> rest{};      // the part rests after it, unattended
  bool held = false;  // half of it must be done before it may be left
  std::string code;   // `fit`, `1`, `2.1`, `finish`, `inspect`: the last part of a task's name
};
/// Steps with a hold point between them, other set-ups, or a quarter of an hour each stay apart; passes between which
/// the part has to cool are cut into runs, each with its share of the rest. `pieces`: minutes are of so many.
std::vector<StepRun> step_runs(const Estimate&, std::size_t joint, std::vector<TaskStep>, double pieces);

}  // namespace seambook
