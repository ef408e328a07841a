// Working time as windows: what two things have in common, and where work that takes so long ends.
#pragma once

#include "schedule/shop.hpp"

namespace seambook {

/// Windows sorted, empty ones dropped, those that meet or overlap joined.
WorkingTime tidy(WorkingTime);
/// Time in both.
WorkingTime both(const WorkingTime&, const WorkingTime&);
/// Time in the first that is not in the second.
WorkingTime without(const WorkingTime&, const WorkingTime&);

/// `Instant::max()` stands for never in all of these.
/// The first instant not before `t` at which work can go on.
Instant first_open(const WorkingTime&, Instant t);
/// When `length` of work that begins at `t` or at the next opening is done; `t` itself when nothing is to be done.
Instant done_by(const WorkingTime&, Instant t, Seconds length);
/// The first instant not before `t` from which `length` of work goes on without a pause longer than `longest_pause`.
Instant open_for(const WorkingTime&, Instant t, Seconds length, Seconds longest_pause);
/// Working time between two instants.
Seconds working_between(const WorkingTime&, Instant from, Instant to);

}  // namespace seambook
