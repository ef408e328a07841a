// A job through the stages: read, resolve, estimate, sequence, quote.
// Holds afterwards: a job with faults has stopped nothing but itself; every fault was shown once, after its job; the
// batch's exit code is the worst that happened.
#pragma once

#include <functional>

#include "commands/arguments.hpp"
#include "commands/shared_inputs.hpp"
#include "quote/quote.hpp"

namespace seambook {

/// Jobs that are read into one Diagnostics because their work is planned together, or a job by itself.
struct Batch {
  SharedInputs& shared;
  Diagnostics diagnostics{};            // files of the batch; the list holds what has not been shown yet
  std::vector<Diagnostic> told{};       // what has
  const ShelvedRates* rates = nullptr;  // of its jobs; nothing before the first
  int code = exit_code::done;
};

/// A job without faults and its estimate.
struct EstimatedJob {
  std::string file;  // as messages name it
  const ShopRates* rates;
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

/// Nothing when the job has faults. Throws std::system_error.
std::optional<EstimatedJob> read_and_estimate(const Arguments&, Batch&, const std::string& path);
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
/// What was found since the last call, as text for standard error.
std::string take_messages(const Arguments&, Batch&);
/// Shows it.
void tell(const Arguments&, Batch&);

struct Announced {
  std::vector<Diagnostic> told;
  int code = exit_code::done;
};
/// Says which rate book is used, and what was found in it. For its first job only.
Announced announce_rates(const Arguments&, const ShelvedRates&);
/// The date given, else today by the system's clock and time zone.
Date date_of(const Arguments&);

}  // namespace seambook
