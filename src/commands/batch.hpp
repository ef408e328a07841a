// Jobs that have nothing to do with each other, done in parallel.
// Holds afterwards: what is printed, and in which order, does not depend on the number of threads; the messages of a
// job stand together, after its result; a job with faults has stopped nothing but itself.
#pragma once

#include "commands/pipeline.hpp"
#include "report/json_document.hpp"

namespace seambook {

/// What is made of a job, called by several threads: its result, where JSON is asked for an item of a list
/// (json_list_item); nothing when it has
/// faults, which the batch (of this job alone) says then. `at` is its place in Arguments::jobs.
using WorkOnJob = std::function<std::optional<std::string>(Batch&, const EstimatedJob&, std::size_t at)>;

/// The jobs of this run by their places in Arguments::jobs: all, or those of its shard.
std::vector<std::size_t> jobs_of_shard(const Arguments&);

/// Does the jobs of this run and prints each result and message in the order of the list. `rest` gives the members of
/// the JSON document beside `jobs`, or prints what concerns all jobs. Gives the exit code.
int run_batch(
    const Arguments&, SharedInputs&, const WorkOnJob&,
    const std::function<std::vector<JsonMember>()>& rest = [] { return std::vector<JsonMember>(); });

}  // namespace seambook
