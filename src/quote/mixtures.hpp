// Old and new files mixed: what a job costs when some of what it is made from is changed over and some is not.
#pragma once

#include <optional>

#include "quote/quote.hpp"
#include "read/written_inputs.hpp"

namespace seambook {

/// What was read from the files of a quote; places point into the diagnostics it was read with.
struct ReadInputs {
  JobText job;
  RateText rates;
  bool sound = true;  // read without errors
};
ReadInputs read_inputs(const WrittenInputs&, Diagnostics&);

/// The rate book with the other one's ways to weld: procedures, preparations, largest passes, gouging.
RateText with_ways_of(RateText rates, const RateText& ways);
/// The job with what the other one says of how its joints are welded: process, procedure, position, passes, gouging,
/// purge. Joints are matched by weldment and id.
JobText with_procedures_of(JobText job, const JobText& procedures);

struct ResolvedQuote {
  RateBook book;
  Job job;
  Quote quote;
};
/// Resolves and prices it; nothing when that cannot be done, and then the first reason.
std::optional<ResolvedQuote> resolve_quote(const JobText&, const RateText&, Date, Diagnostics&, std::string& reason);

}  // namespace seambook
