// Jobs become work at stations: each pass group an operation with what it needs mounted, each station a problem of
// order. An operation goes to the first station that can take all of its job, else to the first that can take it.
#pragma once

#include "resolve/job.hpp"
#include "sequence/sequence.hpp"

namespace seambook {

struct OperationRef {
  std::size_t job = 0, joint = 0, group = 0;
};

struct StationWork {
  std::size_t station = 0;
  std::vector<OperationRef> refs;  // parallel to problem.operations
  SequenceProblem problem;
  Sequence sequence;
};

/// The work of all stations that have any, in the rate book's order, sequenced from each station's stated state.
/// Nothing, and the reasons in `diagnostics`, when a joint has no station or the stations' orders wait for each other.
std::optional<std::vector<StationWork>> sequence_jobs(const RateBook&, std::span<const Job> jobs,
                                                      Diagnostics& diagnostics, const SearchBudget& = {});
/// `job/weldment/joint/step`: the step is the number of the pass group, from 1.
std::string operation_name(const Job&, std::size_t joint, std::size_t group);

}  // namespace seambook
