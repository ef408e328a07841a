#include "commands/plan.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "basics/hash.hpp"
#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/plan_book.hpp"
#include "report/plan_text.hpp"

namespace seambook {
namespace {

/// The jobs of a plan, without those that have faults.
struct PlanJobs {
  std::vector<Job> jobs;
  std::vector<Estimate> estimates;  // parallel to jobs
  std::vector<std::string> json;
  std::optional<std::size_t> rates;
  Hash hash;
};

/// One plan, one rate book; operations are told apart by the names of their jobs.
bool joins(Batch& batch, const PlanJobs& plan, const EstimatedJob& done) {
  if (plan.rates && *plan.rates != done.rates) {
    batch.diagnostics.error({},
                            fmt::format("{}: its rate book {} is not the other jobs' ({})", done.file,
                                        batch.rates[done.rates].shown, batch.rates[*plan.rates].shown),
                            "name one for all with --rates");
    return false;
  }
  const auto same_name = [&](const Job& job) { return job.name == done.job.name; };
  if (std::none_of(plan.jobs.begin(), plan.jobs.end(), same_name)) return true;
  batch.diagnostics.error({}, fmt::format("{}: a job called '{}' is in the plan already", done.file, done.job.name));
  return false;
}

/// False when there is no plan to show; that has been said.
bool write_plan(const Arguments& arguments, Batch& batch, const PlanJobs& plan) {
  const ShopRates& rates = batch.rates[*plan.rates];
  const Date date = date_of(arguments);
  const auto work = sequence_jobs(*rates.book, plan.jobs, batch.diagnostics);
  if (!work || !strict_enough(arguments, batch, "the plan")) return false;
  const auto path = std::filesystem::path(arguments.out) / fmt::format("plan-{}.xlsx", iso(date));
  if (!write_workbook(arguments, batch, plan_workbook(*rates.book, plan.jobs, plan.estimates, *work, date), path))
    return false;
  const PlannedWork planned{*rates.book, plan.jobs, plan.estimates, *work};
  if (!arguments.json) {
    write_result(plan_text(planned) + "\n" + printable_text(path.string()) + "\n");
    return true;
  }
  tell(arguments, batch);
  write_result(json_document({{"date", json_string(iso(date))},
                              {"rates", json_string(rates.shown)},
                              {"rates_hash", json_string(rates.hash)},
                              {"workbook", json_string(path.string())},
                              {"jobs", json_list(plan.json)},
                              {"stations", stations_json(planned)},
                              {"levels", levels_json(planned)},
                              {"input_hash", json_string(hex(plan.hash))}},
                             batch.diagnostics, batch.told));
  return true;
}

}  // namespace

int run_plan(const Arguments& arguments) {
  Batch batch;
  PlanJobs plan;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    if (!joins(batch, plan, done)) return;
    plan.rates = done.rates;
    plan.json.push_back(job_json(done.job, reported(batch, done)));
    plan.jobs.push_back(done.job);
    plan.estimates.push_back(done.estimate);
    plan.hash.add(done.input_hash);
  });
  bool written = false;
  if (!plan.jobs.empty()) guarded(batch, [&] { written = write_plan(arguments, batch, plan); });
  tell(arguments, batch);
  if (arguments.json && !written)
    write_result(json_document({{"jobs", json_list(plan.json)}, {"stations", "[]"}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
