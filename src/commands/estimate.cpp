#include "commands/estimate.hpp"

#include "commands/batch.hpp"
#include "commands/output.hpp"
#include "commands/reported.hpp"
#include "report/estimate_text.hpp"

namespace seambook {

int run_estimate(const Arguments& arguments) {
  SharedInputs shared;
  const Date date = date_of(arguments);
  return run_batch(
      arguments, shared, [&](Batch& batch, const EstimatedJob& done, std::size_t) -> std::optional<std::string> {
        const auto priced = price(arguments, batch, done, date);
        if (!priced) return std::nullopt;
        const RateBook& book = *done.rates->book;
        const ReportedJob about = reported(done);
        if (arguments.json) return estimate_json(book, done.job, done.estimate, priced->quote, about);
        return estimate_text(book, done.job, done.estimate, priced->quote, about.rates, terminal_columns()) + "\n";
      });
}

}  // namespace seambook
