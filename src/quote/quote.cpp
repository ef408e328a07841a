#include "quote/quote.hpp"

#include "estimate/gather_labour.hpp"
#include "quote/lift.hpp"
#include "quote/piece_totals.hpp"

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

void price_quantities(const Job& job, Quote& quote) {
  quote.inputs = lift_quote<double>(quote.sourced);
  quote.cost = cost_figures(quote.inputs);
  quote.prices.clear();
  for (const std::int64_t quantity : job.quantities) {
    quote.prices.push_back(
        {quantity, price_figures(quote.inputs, quote.cost, number<double>(static_cast<double>(quantity)), 0)});
  }
}

/// Takes off what a weldment costs in a piece, by kind; its part of set-ups and other lot costs stays.
void take_out(const Job& job, const Estimate& estimate, std::size_t weldment, QuoteInputs<Sourced>& in) {
  const std::array<double, cost_kinds> cost = weldment_totals(job, estimate, weldment).cost;
  for (std::size_t k = 0; k < cost_kinds; ++k)
    if (cost[k] != 0) in.each[k] = {{in.each[k].si.value - cost[k], summed}};
}

PricedOption price_option(const RateBook& book, const Job& job, const Estimate& whole, const JobOption& option,
                          std::vector<StationWork> work, Date date) {
  PricedOption out{option.name, estimate(book, option.part), std::move(work), {}};
  out.quote = make_quote(book, option.part, out.estimate, out.work, date);
  for (const std::size_t w : option.leaves_out) take_out(job, whole, w, out.quote.sourced);
  price_quantities(option.part, out.quote);
  return out;
}

}  // namespace

Quote make_quote(const RateBook& book, const Job& job, const Estimate& estimate, const std::vector<StationWork>& work,
                 Date date) {
  Quote quote;
  quote.date = job.date.value_or(date);
  quote.valid_until = plus_days(quote.date, book.prices.valid_days);
  quote.setups = setup_rows(book, job, work);
  for (const StationWork& at : work) quote.setup_time = quote.setup_time + at.sequence.change_total;
  quote.sourced = quote_inputs(book, job, estimate, quote.setups);
  price_quantities(job, quote);
  return quote;
}

void price_options(const RateBook& book, const Job& job, const Estimate& estimate,
                   std::vector<std::vector<StationWork>> work, Quote& quote) {
  for (std::size_t i = 0; i < job.options.size(); ++i)
    quote.options.push_back(price_option(book, job, estimate, job.options[i], std::move(work[i]), quote.date));
}

}  // namespace seambook
