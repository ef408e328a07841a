// A plan that was made before, or by somebody else, read back against the work as it stands: to check it, to stay close
// to it, to time a foreman's own order.
#pragma once

#include "schedule/shop_work.hpp"

namespace seambook {

struct PastStep {
  std::string operation, station;   // no station: away from the shop
  std::vector<std::string> people;  // stamps, the one who welds first
  std::optional<Instant> set_up;    // absent: as soon as station and people are free
  Instant start{}, finish{};
};
struct PastPlan {
  std::vector<PastStep> steps;
  std::vector<PastStep> before;     // done or under way when it began
  std::vector<std::string> undone;  // operations that it says cannot be done
};

/// The plan with its own instants. What names no work, station or person of the problem, or no way to do it, is said in
/// `wrong` and left out.
Plan plan_of_steps(const ShopWork&, const PastPlan&, std::vector<std::string>& wrong);
/// Where each task stood; nothing for those that are new.
std::vector<std::optional<Earlier>> earlier_places(const ShopWork&, const PastPlan&);
/// What was planned to be done or under way by now and is not spoken of in the day counts as done or under way.
void as_planned(const PastPlan&, Instant now, const RateBook&, Day&);
/// Names in the order in which somebody wants them done, each in the way that ends it first. Unknown, repeated or left
/// out names and work that stands before what it follows are said in `wrong`; then nothing is timed.
std::optional<TaskList> list_of_names(const ShopProblem&, const std::vector<std::string>& names,
                                      std::vector<std::string>& wrong);

struct Moved {
  std::size_t task = 0;
  std::string from, to;  // `ST-1 Q1 Mon 11 May 07:15`
  std::string why;       // as the plan gives it: why it stands where it stands now
};
/// Tasks that stand at another station, with another person, or after other work than before.
std::vector<Moved> moved_tasks(const ShopWork&, const Plan&);

}  // namespace seambook
