// Where each figure of a job comes from: joints, weldments, set-ups and price worked step by step, and the inputs that
// move the price most.
#pragma once

#include <string>
#include <vector>

#include "quote/quote.hpp"
#include "report/explain.hpp"

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

/// The working of one thing.
struct ExplainedPart {
  std::string kind;  // joint, weldment, job_work, set_up, cost or price
  std::string name;  // `frame/3`; of a price its quantity; empty for the cost
  std::string heading;
  std::vector<std::string> notes;
  Working working;
};
ExplainedPart explain_joint(const ExplainedJob&, std::size_t joint);
/// All of it: each weldment behind its joints, work for the job as a whole, set-ups, cost, and the price of each
/// quantity.
std::vector<ExplainedPart> explain_all(const ExplainedJob&);

/// An input that moves the price.
struct PriceMover {
  std::string words;
  double per_percent = 0;  // money, for one percent more of it
  std::string origin;
};
/// At most `count` of them, the strongest first.
std::vector<PriceMover> price_movers(const ExplainedJob&, std::size_t count);

}  // namespace seambook
