// One job after the other through the stages: read, resolve, estimate, sequence, quote.
// Holds afterwards: a job with faults has stopped nothing but itself; every fault was shown once, after its job; the
// batch's exit code is the worst that happened.
#pragma once

#include <functional>

#include "commands/arguments.hpp"
#include "commands/rates.hpp"
#include "quote/quote.hpp"

namespace seambook {

struct Batch {
  Diagnostics diagnostics;       // files of the whole run; the list holds what has not been shown yet
  std::vector<Diagnostic> told;  // what has
  std::vector<ShopRates> rates;  // rate books met so far
  int code = exit_code::done;
};

/// A job without faults and its estimate.
struct EstimatedJob {
  std::string file;        // as messages name it
  std::size_t rates = 0;   // index into Batch::rates
  std::string input_hash;  // over the job's files and the rate book
  WrittenInputs inputs;
  Job job;
  Estimate estimate;
};

/// What set-ups and prices a job has when it is made alone.
struct PricedJob {
  std::vector<StationWork> work;
  Quote quote;
};

/// Reads and estimates each job and hands it on; trouble with one is noted and the next one taken.
void for_each_job(const Arguments&, Batch&, const std::function<void(const EstimatedJob&)>& use);
/// Registers a file beside the jobs; nothing, and an error, when it is none that is read.
std::optional<std::uint32_t> register_file(Batch&, const std::string& path);
/// False, with an error that says so, when there are warnings not yet shown and the arguments ask for none.
bool strict_enough(const Arguments&, Batch&, const std::string& what);
/// Sequences the job by itself and prices it. Nothing when it cannot be made at the stations or what was found of its
/// price forbids it; the diagnostics say why.
std::optional<PricedJob> price(const Arguments&, Batch&, const EstimatedJob&, Date date);
/// Runs `work`; what the system refuses becomes an error of the batch and exit code 3.
void guarded(Batch&, const std::function<void()>& work);
/// Shows what was found since the last call.
void tell(const Arguments&, Batch&);
/// The date given, else today by the system's clock and time zone.
Date date_of(const Arguments&);

}  // namespace seambook
