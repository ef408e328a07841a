#include "commands/explain.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "commands/output.hpp"
#include "commands/pipeline.hpp"
#include "report/explain_job.hpp"

namespace seambook {
namespace {

constexpr std::size_t shown_sensitivities = 10;

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

std::string explain_costs(const ExplainedJob& explained) {
  std::string out;
  for (std::size_t w = 0; w < explained.job.weldments.size(); ++w) {
    const Weldment& weldment = explained.job.weldments[w];
    for (std::size_t j = 0; j < weldment.joint_count; ++j) {
      out += explain_joint(explained, weldment.first_joint + j) + "\n";
    }
    out += explain_weldment(explained, w) + "\n";
  }
  return out + explain_job_work(explained) + explain_setups(explained) + explain_price(explained) + "\n";
}

std::string explain_all(const ExplainedJob& e) {
  std::string out = explain_costs(e) + explain_sensitivities(e, shown_sensitivities);
  for (std::size_t i = 0; i < e.job.options.size(); ++i) {
    const PricedOption& option = e.quote.options[i];
    out += "\n" + printable_text("option " + e.job.options[i].name) + "\n\n" +
           explain_costs({e.book, e.job.options[i].part, option.estimate, option.work, option.quote, e.diagnostics});
  }
  return out;
}

}  // namespace

int run_explain(const Arguments& arguments) {
  SharedInputs shared;
  Batch batch{shared};
  const Date date = date_of(arguments);
  for_each_job(arguments, batch, [&](const EstimatedJob& done) {
    const auto priced = price(arguments, batch, done, date);
    if (!priced) return;
    const ExplainedJob explained{*done.rates->book, done.job,      done.estimate,
                                 priced->work,      priced->quote, batch.diagnostics};
    if (!arguments.joint) {
      const ShopRates& rates = *done.rates;
      write_result(printable_text(fmt::format("{}; {}; rate book {} (hash {})", done.job.name, iso(priced->quote.date),
                                              rates.shown, rates.hash)) +
                   "\n\n" + explain_all(explained));
      return;
    }
    const auto found = joints_named(done.job, *arguments.joint);
    if (found.size() == 1) {
      write_result(explain_joint(explained, found.front()));
    } else {
      refuse_joint(batch, done, *arguments.joint, found.size());
    }
  });
  return batch.code;
}

}  // namespace seambook
