// Where more is asked than there is: work that only one station or person can do, against the time that it has before
// the due date.
#pragma once

#include "schedule/plan.hpp"

namespace seambook {

struct Overload {
  bool person = false;       // else a station
  std::size_t number = 0;    // of the problem
  Instant due{};             // work of all orders due by then counts
  std::size_t order = 0;     // the one that is due then
  Seconds needed{}, open{};  // needed: without set-ups
};

/// For each station and person the due date that is worst overrun; none where all fits.
std::vector<Overload> overloads(const ShopProblem&);

}  // namespace seambook
