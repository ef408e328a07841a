// A shop's plan with all that it was made from: what its pages, its text and its JSON are written from. The parts are
// looked at, not kept.
#pragma once

#include <span>

#include "schedule/shop_work.hpp"

namespace seambook {

/// What would help where more is asked than the shop has hours: `Sat 16 May, 6 h overtime at ST-1`.
struct Remedy {
  std::string what;
  std::int64_t late_before = 0, late_after = 0;  // seconds, all orders together
  std::optional<Money<>> price;
};

struct PlannedShop {
  const RateBook& book;
  std::span<const Job> jobs;
  std::span<const Estimate> estimates;  // parallel to jobs
  const ShopWork& work;
  const Plan& plan;
  Date date{};
  std::span<const Remedy> remedies{};
  Time<> traveller_from{3600};  // a weldment with less planned labour has no traveller
};

}  // namespace seambook
