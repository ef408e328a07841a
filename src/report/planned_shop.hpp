// A shop's plan with all that it was made from: what its pages, its text and its JSON are written from. The parts are
// looked at, not kept.
#pragma once

#include <span>

#include "schedule/capacity.hpp"
#include "schedule/past_plan.hpp"
#include "schedule/remedies.hpp"

namespace seambook {

struct PlannedShop {
  const RateBook& book;
  std::span<const Job> jobs;
  std::span<const Estimate> estimates;  // parallel to jobs
  const ShopWork& work;
  const Plan& plan;
  Date date{};
  std::span<const Remedy> remedies{};
  std::span<const Moved> moved{};  // against the plan that this one follows
  Time<> traveller_from{3600};     // a weldment with less planned labour has no traveller
};

}  // namespace seambook
