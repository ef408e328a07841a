#include "commands/check.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/batch.hpp"
#include "commands/output.hpp"
#include "commands/reported.hpp"

namespace seambook {

int run_check(const Arguments& arguments) {
  SharedInputs shared;
  return run_batch(
      arguments, shared, [&](Batch& batch, const EstimatedJob& done, std::size_t) -> std::optional<std::string> {
        // Whether every joint has a station counts, not in which order: a small budget will do.
        const SearchBudget little{.states = 1, .moves = 1};
        if (!sequence_jobs(*done.rates->book, std::span(&done.job, 1), batch.diagnostics, little)) return std::nullopt;
        if (!strict_enough(arguments, batch, done.file)) return std::nullopt;
        if (arguments.json) return job_json(done.job, reported(done));
        const auto of_level = [&](Level level) {
          return std::count_if(batch.diagnostics.list.begin(), batch.diagnostics.list.end(),
                               [&](const Diagnostic& d) { return d.level == level; });
        };
        return fmt::format("{}: job {}: weldments {}, joints {}, warnings {}\n", printable_text(done.file),
                           printable_text(done.job.name), done.job.weldments.size(), done.job.joints.size(),
                           of_level(Level::warning) + of_level(Level::not_for_the_floor));
      });
}

}  // namespace seambook
