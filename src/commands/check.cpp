#include "commands/check.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"

namespace seambook {

int run_check(const Arguments& arguments) {
  Batch batch;
  std::vector<std::string> jobs;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    // Whether every joint has a station counts, not in which order: a small budget will do.
    const RateBook& book = *batch.rates[done.rates].book;
    const SearchBudget little{.states = 1, .moves = 1};
    if (!sequence_jobs(book, std::span(&done.job, 1), batch.diagnostics, little)) return;
    if (!strict_enough(arguments, batch, done.file)) return;
    const auto of_level = [&](Level level) {
      return std::count_if(batch.diagnostics.list.begin(), batch.diagnostics.list.end(),
                           [&](const Diagnostic& d) { return d.level == level; });
    };
    jobs.push_back(job_json(done.job, reported(batch, done)));
    if (arguments.json) return;
    write_result(fmt::format("{}: job {}: weldments {}, joints {}, warnings {}\n", printable_text(done.file),
                             printable_text(done.job.name), done.job.weldments.size(), done.job.joints.size(),
                             of_level(Level::warning) + of_level(Level::not_for_the_floor)));
  });
  if (arguments.json) write_result(json_document({{"jobs", json_list(jobs)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
