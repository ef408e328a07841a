// Which stations and welders of the rate book can do a task, and until when.
#pragma once

#include "resolve/qualified.hpp"
#include "schedule/joint_steps.hpp"

namespace seambook {

/// Ways of a run of steps of a joint; none, and the reason in `why_not`, when nobody or no station can do it. Welding
/// is for those who are qualified on the first day; where nobody is and the joint does not demand it, for everybody.
std::vector<Way> run_ways(const WorkToPlan&, const Job&, std::size_t joint, const StepRun&, std::string& why_not);
/// Ways of work on a weldment before its joints: at a station that takes its joints, by anybody.
std::vector<Way> parts_ways(const RateBook&, const Job&, std::size_t weldment, Time<> labour, std::string& why_not);
/// Keeps the ways that a pin admits.
void keep_pinned(std::vector<Way>&, const Pin&);

}  // namespace seambook
