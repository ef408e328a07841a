#include "quote/quote.hpp"

#include "estimate/gather_labour.hpp"
#include "quote/lift.hpp"

namespace seambook {
namespace {

std::vector<SetupRow> setup_rows(const RateBook& book, const Job& job, const std::vector<StationWork>& work) {
  std::vector<SetupRow> rows;
  for (std::size_t s = 0; s < work.size(); ++s) {
    for (std::size_t k = 0; k < work[s].sequence.steps.size(); ++k) {
      const Step& step = work[s].sequence.steps[k];
      if (step.change.tasks.empty()) continue;
      const OperationRef& ref = work[s].refs[step.operation];
      const Joint& joint = job.joints[ref.joint];
      const Process& process = book.processes[book.procedures[joint.passes[ref.group].procedure].process];
      const Labour& labour = labour_of(book, joint, joint.passes[ref.group]);
      SetupRow row{s, k, {}};
      for (const std::size_t task : step.change.tasks) row.inputs.tasks.push_back(book.change_tasks[task].time);
      row.inputs.labour_rate = labour.rate;
      row.inputs.wage = labour.wage;
      row.inputs.burden = labour.burden;
      row.inputs.loaded_rate = labour.loaded;
      row.inputs.equipment_rate = process.equipment;
      rows.push_back(std::move(row));
    }
  }
  return rows;
}

}  // namespace

Quote make_quote(const RateBook& book, const Job& job, const Estimate& estimate, const std::vector<StationWork>& work,
                 Date date) {
  Quote quote;
  quote.date = job.date.value_or(date);
  quote.valid_until = plus_days(quote.date, book.prices.valid_days);
  quote.setups = setup_rows(book, job, work);
  for (const StationWork& at : work) quote.setup_time = quote.setup_time + at.sequence.change_total;
  quote.inputs = lift_quote<double>(quote_inputs(book, job, estimate, quote.setups));
  quote.cost = cost_figures(quote.inputs);
  for (const std::int64_t quantity : job.quantities) {
    quote.prices.push_back(
        {quantity, price_figures(quote.inputs, quote.cost, number<double>(static_cast<double>(quantity)), 0)});
  }
  quote.assumptions = assumptions(book, job);
  quote.cautions = cautions(book, job);
  quote.findings = findings(book, job, estimate);
  for (Diagnostic& finding : price_findings(book, job, quote)) quote.findings.push_back(std::move(finding));
  return quote;
}

}  // namespace seambook
