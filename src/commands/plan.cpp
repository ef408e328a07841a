#include "commands/plan.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "basics/hash.hpp"
#include "commands/interrupt.hpp"
#include "commands/output.hpp"
#include "commands/plan_inputs.hpp"
#include "commands/reported.hpp"
#include "commands/workbook_file.hpp"
#include "report/checked_plan.hpp"
#include "report/shop_book.hpp"
#include "report/shop_json.hpp"
#include "report/shop_text.hpp"
#include "report/temporary_file.hpp"
#include "schedule/instants.hpp"

namespace seambook {
namespace {

/// The jobs of a plan, without those that have faults.
struct PlanJobs {
  std::vector<Job> jobs;
  std::vector<Estimate> estimates;  // parallel to jobs
  std::vector<std::string> json;
  const ShopRates* rates = nullptr;
  Hash hash;
};

/// Operations are told apart by the names of their jobs.
bool joins(Batch& batch, const PlanJobs& plan, const EstimatedJob& done) {
  const auto same_name = [&](const Job& job) { return job.name == done.job.name; };
  if (std::none_of(plan.jobs.begin(), plan.jobs.end(), same_name)) return true;
  batch.diagnostics.error({}, fmt::format("{}: a job called '{}' is in the plan already", done.file, done.job.name));
  return false;
}

/// Tells what is wrong with a plan or an order that somebody made; true when nothing is.
bool nothing_wrong(Batch& batch, const std::vector<std::string>& wrong, const std::string& where) {
  for (const std::string& line : wrong) batch.diagnostics.error({}, fmt::format("{}: {}", where, line));
  return wrong.empty();
}

/// Checks a given plan and says how good it is. False when it breaks a rule.
bool verify(const Arguments& arguments, Batch& batch, const ShopWork& work, const PastPlan& past) {
  std::vector<std::string> wrong;
  const Plan plan = plan_of_steps(work, past, wrong);
  for (std::string& line : plan_violations(work.problem, plan)) wrong.push_back(std::move(line));
  const auto said = [&](const std::string& name) {  // that it cannot be done
    return std::count(past.undone.begin(), past.undone.end(), name) > 0;
  };
  for (const UnplacedTask& left : plan.unplaced)
    if (!said(work.problem.tasks[left.task].name))
      wrong.push_back(work.problem.tasks[left.task].name + " is not in the plan");
  const bool good = nothing_wrong(batch, wrong, *arguments.verify);
  tell(arguments, batch);
  if (arguments.json) {
    write_result(json_document({{"verified", good ? "true" : "false"}, {"levels", checked_json(plan.levels)}},
                               batch.diagnostics, batch.told));
  } else {
    write_result(checked_text(plan.levels, wrong.size()));
  }
  return good;
}

/// Times somebody's own order beside the plan; false when it is no order of this work.
bool compare_order(const Arguments& arguments, Batch& batch, const ShopWork& work, const std::vector<Word>& order,
                   Plan& plan) {
  std::vector<std::string> names, wrong;
  names.reserve(order.size());
  for (const Word& word : order) names.push_back(word.text);
  const auto list = list_of_names(work.problem, names, wrong);
  if (!nothing_wrong(batch, wrong, *arguments.order)) return false;
  plan.others.push_back({"order of " + *arguments.order, timed_plan(work.problem, *list).levels});
  return true;
}

void write_plan_result(const Arguments& arguments, Batch& batch, const PlanJobs& jobs, const PlannedShop& shop,
                       const std::string& path) {
  if (!arguments.json) {
    write_result(plan_text(shop, terminal_columns()) + moved_text(shop, terminal_columns()) + "\n" +
                 printable_text(path) + "\n");
    return;
  }
  const ShopRates& rates = *jobs.rates;
  tell(arguments, batch);
  std::vector<JsonMember> members = {{"date", json_string(iso(shop.date))},
                                     {"rates", json_string(rates.shown)},
                                     {"rates_hash", json_string(rates.hash)},
                                     {"workbook", json_string(path)},
                                     {"jobs", json_list(jobs.json)}};
  for (JsonMember& member : plan_members(shop)) members.push_back(std::move(member));
  members.push_back({"moved", moved_json(shop)});
  members.push_back({"input_hash", json_string(hex(jobs.hash))});
  write_result(json_document(members, batch.diagnostics, batch.told));
}

struct SearchedPlan {
  Plan plan;
  std::vector<Remedy> remedies;
};

/// An interrupt ends the search, not the program.
SearchedPlan searched(const Arguments& arguments, Batch& batch, const WorkToPlan& asked, const ShopWork& work) {
  const InterruptStops interrupt;
  PlanBudget budget;
  budget.seconds = arguments.seconds, budget.stop = &InterruptStops::asked();
  SearchedPlan out{plan(work.problem, budget), {}};
  budget.placements /= 4, budget.seconds /= 4;  // for each remedy
  out.remedies = remedies(asked, out.plan, budget);
  if (is_stopped(budget))
    batch.diagnostics.warning({}, "the search was interrupted: this is the best plan found until then",
                              "run it again, with --seconds if it took too long");
  return out;
}

/// False when there is no result to show; that has been said.
bool run(const Arguments& arguments, Batch& batch, const PlanJobs& jobs) {
  const RateBook& book = *jobs.rates->book;
  auto inputs = plan_inputs(arguments, batch, book, jobs.jobs);
  if (!inputs) return false;
  const Instant start = plan_start(arguments);
  if (inputs->from || inputs->verify) {
    if (!inputs->day) inputs->day.emplace();
    // A plan that is checked only says what had begun before it.
    as_planned(inputs->from ? *inputs->from : PastPlan{{}, inputs->verify->before, {}}, start, book, *inputs->day);
  }
  const WorkToPlan asked{book, jobs.jobs, jobs.estimates, inputs->day ? &*inputs->day : nullptr, start};
  auto work = shop_work(asked, batch.diagnostics);
  if (!work) return false;
  if (inputs->verify) {
    verify(arguments, batch, *work, *inputs->verify);
    return true;
  }
  if (!strict_enough(arguments, batch, "the plan")) return false;
  if (inputs->from) work->problem.earlier = earlier_places(*work, *inputs->from);
  auto [plan, remedy] = searched(arguments, batch, asked, *work);
  if (inputs->order && !compare_order(arguments, batch, *work, *inputs->order, plan)) return false;
  const std::vector<Moved> moved = moved_tasks(*work, plan);
  const PlannedShop shop{book, jobs.jobs, jobs.estimates, *work, plan, date_of(start), remedy, moved};
  const auto path = std::filesystem::path(arguments.out) / fmt::format("plan-{}.xlsx", iso(shop.date));
  if (!write_workbook(arguments, batch, plan_workbook(shop), path)) return false;
  write_plan_result(arguments, batch, jobs, shop, path.string());
  return true;
}

}  // namespace

int run_plan(const Arguments& arguments) {
  SharedInputs shared;
  Batch batch{shared};
  sweep_temporaries(arguments.out);
  PlanJobs plan;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    if (!joins(batch, plan, done)) return;
    plan.rates = done.rates;
    plan.json.push_back(job_json(done.job, reported(done)));
    plan.jobs.push_back(done.job);
    plan.estimates.push_back(done.estimate);
    plan.hash.add(done.input_hash);
  });
  bool shown = false;
  if (!plan.jobs.empty()) guarded(batch, [&] { shown = run(arguments, batch, plan); });
  tell(arguments, batch);
  if (arguments.json && !shown)
    write_result(json_document({{"jobs", json_list(plan.json)}, {"stations", "[]"}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
