#include "commands/explain.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "commands/reported.hpp"
#include "report/explained_text.hpp"

namespace seambook {
namespace {

constexpr std::size_t shown_movers = 10;

std::string joint_name(const Job& job, std::size_t joint) {
  return job.weldments[job.joints[joint].weldment].name + "/" + job.joints[joint].id;
}

/// Joints that go by this name: all that have it as id, or the one that has it with its weldment.
std::vector<std::size_t> joints_named(const Job& job, const std::string& name) {
  std::vector<std::size_t> found;
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    if (joint_name(job, j) == name) return {j};
    if (job.joints[j].id == name) found.push_back(j);
  }
  return found;
}

void refuse_joint(Batch& batch, const EstimatedJob& done, const std::string& name, std::size_t found) {
  batch.code = std::max(batch.code, exit_code::usage);
  const Job& job = done.job;
  if (found > 1) {
    batch.diagnostics.error({}, fmt::format("{} joints of job {} are called '{}'", found, job.name, name),
                            fmt::format("write the weldment too: {}/{}", job.weldments.front().name, name));
    return;
  }
  std::vector<std::string> names;
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    names.push_back(joint_name(job, j));
    names.push_back(job.joints[j].id);
  }
  const std::vector<std::string_view> known(names.begin(), names.end());
  const std::string_view near = nearest(name, known);
  batch.diagnostics.error({}, fmt::format("job {} has no joint '{}'", job.name, name),
                          near.empty() ? "" : fmt::format("did you mean '{}'?", near));
}

ExplainedJob explained_job(const EstimatedJob& done, const PricedJob& priced, const Batch& batch) {
  return {*done.rates->book, done.job, done.estimate, priced.work, priced.quote, batch.diagnostics};
}

Explained explain_whole(const ExplainedJob& e) {
  Explained out{iso(e.quote.date), e.book.currency, explain_all(e), price_movers(e, shown_movers), {}};
  for (std::size_t i = 0; i < e.job.options.size(); ++i) {
    const PricedOption& option = e.quote.options[i];
    out.options.push_back({e.job.options[i].name, explain_all({e.book, e.job.options[i].part, option.estimate,
                                                               option.work, option.quote, e.diagnostics})});
  }
  return out;
}

std::string heading_line(const EstimatedJob& done, const std::string& date) {
  return printable_text(
             fmt::format("{}; {}; rate book {} (hash {})", done.job.name, date, done.rates->shown, done.rates->hash)) +
         "\n\n";
}

}  // namespace

int run_explain(const Arguments& arguments) {
  SharedInputs shared;
  Batch batch{shared};
  const Date date = date_of(arguments);
  std::vector<std::string> jobs;
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    const auto priced = price(arguments, batch, done, date);
    if (!priced) return;
    const ExplainedJob explained = explained_job(done, *priced, batch);
    if (!arguments.joint) {
      const Explained whole = explain_whole(explained);
      if (arguments.json)
        jobs.push_back(explained_json(whole, job_json(done.job, reported(done))));
      else
        write_result(heading_line(done, whole.date) + explained_text(whole, terminal_columns()));
      return;
    }
    const auto found = joints_named(done.job, *arguments.joint);
    if (found.size() != 1) return refuse_joint(batch, done, *arguments.joint, found.size());
    ExplainedPart part = explain_joint(explained, found.front());
    if (!arguments.json) return write_result(explained_text(part, terminal_columns()));
    const Explained one{iso(date), done.rates->book->currency, {std::move(part)}, {}, {}};
    jobs.push_back(explained_json(one, job_json(done.job, reported(done))));
  });
  if (arguments.json) write_result(json_document({{"jobs", json_list(jobs)}}, batch.diagnostics, batch.told));
  return batch.code;
}

}  // namespace seambook
