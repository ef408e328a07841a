#include "commands/estimate.hpp"

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"
#include "report/estimate_text.hpp"

namespace seambook {

int run_estimate(const Arguments& arguments) {
  Batch batch;
  const Date date = date_of(arguments);
  std::vector<std::string> jobs;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    const auto priced = price(arguments, batch, done, date);
    if (!priced) return;
    const ShopRates& rates = batch.rates[done.rates];
    const ReportedJob about = reported(batch, done);
    if (arguments.json) {
      jobs.push_back(estimate_json(*rates.book, done.job, done.estimate, priced->quote, about));
    } else {
      write_result(estimate_text(*rates.book, done.job, done.estimate, priced->quote, about.rates, terminal_columns()) +
                   "\n");
    }
  });
  if (arguments.json) write_result(json_document({{"jobs", json_list(jobs)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
