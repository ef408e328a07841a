// The order of work at each station as tables for a terminal, and as JSON.
#pragma once

#include <span>
#include <string>

#include "estimate/estimate.hpp"
#include "sequence/work.hpp"

namespace seambook {

/// The work of all jobs; the parts are looked at, not kept.
struct PlannedWork {
  const RateBook& book;
  std::span<const Job> jobs;
  std::span<const Estimate> estimates;  // parallel to jobs
  const std::vector<StationWork>& work;
};

/// One table a station with its set-up total, then the totals of all.
std::string plan_text(const PlannedWork&);
/// JSON text of the member `stations`.
std::string stations_json(const PlannedWork&);
/// JSON text of the member `levels`: what the order was chosen by, most important first.
std::string levels_json(const PlannedWork&);

}  // namespace seambook
