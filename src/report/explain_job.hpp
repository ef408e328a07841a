// Where each figure of a job comes from: joints, weldments, set-ups and price worked step by step, and the inputs that
// move the price most.
#pragma once

#include <optional>
#include <string>

#include "quote/quote.hpp"

namespace seambook {

/// A job with all that was made of it; the parts are looked at, not kept.
struct ExplainedJob {
  const RateBook& book;
  const Job& job;
  const Estimate& estimate;
  const std::vector<StationWork>& work;
  const Quote& quote;
  const Diagnostics& diagnostics;  // its files are where the numbers were written
};

std::string explain_joint(const ExplainedJob&, std::size_t joint);
std::string explain_weldment(const ExplainedJob&, std::size_t weldment);
/// Work for the job as a whole.
std::string explain_job_work(const ExplainedJob&);
std::string explain_setups(const ExplainedJob&);
std::string explain_price(const ExplainedJob&);
/// At most `count` inputs, the strongest first.
std::string explain_sensitivities(const ExplainedJob&, std::size_t count);

}  // namespace seambook
