#include <algorithm>

#include "quote/draws.hpp"
#include "quote/moved_order.hpp"

namespace seambook {
namespace {

constexpr std::uint64_t first_seed = 20260518;
constexpr std::size_t fewest_samples = 1000, most_samples = 4000, rows_estimated = 2'000'000;
constexpr std::size_t bar_count = 20;

/// Many for small jobs; large ones are estimated a bounded number of times.
std::size_t sample_count(const OrderInputs& order) {
  std::size_t rows = order.weldments.size();
  for (const LikeRows& like : order.joints) rows += like.row.passes.size();
  return std::clamp(rows_estimated / std::max<std::size_t>(rows, 1), fewest_samples, most_samples);
}

struct Samples {
  std::vector<double> totals, costs;  // ascending
};

/// Each input is drawn once a sample, for all rows that read it.
Samples draw(const OrderInputs& order, const std::vector<Doubtful>& inputs, std::size_t count) {
  Samples samples;
  DrawEngine engine(first_seed);
  Factors factors;
  for (std::size_t i = 0; i < count; ++i) {
    for (const Doubtful& input : inputs)
      move_to(factors, input.source, triangular(input.low, 1, input.high, uniform_draw(engine)));
    const OrderMoney money = moved_order(order, factors);
    samples.totals.push_back(money.total);
    samples.costs.push_back(money.cost);
  }
  std::sort(samples.totals.begin(), samples.totals.end());
  std::sort(samples.costs.begin(), samples.costs.end());
  return samples;
}

void add_bars(const std::vector<double>& ascending, Doubt& doubt) {
  const double low = ascending.front(), width = (ascending.back() - low) / bar_count;
  if (width <= 0) return;
  doubt.bars_from = {low};
  doubt.bar_width = {width};
  doubt.bars.assign(bar_count, 0);
  for (const double x : ascending) {
    const auto bar = static_cast<std::size_t>((x - low) / width);
    ++doubt.bars[std::min(bar, bar_count - 1)];
  }
}

Ratio<> excess(double percentile, Money<> cost) { return {std::max(0.0, percentile / cost.si - 1)}; }

}  // namespace

Percentiles percentiles(const std::vector<double>& ascending) {
  const auto at = [&](std::size_t of_100) { return ascending[(of_100 * ascending.size() + 99) / 100 - 1]; };
  return {at(10), at(50), at(80), at(90)};
}

Doubt find_doubt(const RateBook& book, const Job& job, const Estimate& quoted, const Quote& quote) {
  const std::vector<Doubtful> inputs = doubtful_inputs(book, job, quote);
  std::vector<SourceId> sources;
  sources.reserve(inputs.size());
  for (const Doubtful& input : inputs) sources.push_back(input.source);
  const OrderInputs order = order_inputs(book, job, quote, sources);
  const OrderMoney money = moved_order(order, {});
  Doubt doubt;
  doubt.quantity = job.quantities.front();
  doubt.ranges_stated = !inputs.empty();
  doubt.inputs = inputs.size();
  doubt.total = {money.total};
  doubt.cost = {money.cost};
  doubt.drivers = doubt_drivers(book, job, quoted, quote, inputs);
  if (inputs.empty()) return doubt;
  doubt.samples = sample_count(order);
  const Samples samples = draw(order, inputs, doubt.samples);
  doubt.totals = percentiles(samples.totals);
  doubt.costs = percentiles(samples.costs);
  if (money.cost > 0) {
    doubt.contingency_p80 = excess(doubt.costs.p80, doubt.cost);
    doubt.contingency_p90 = excess(doubt.costs.p90, doubt.cost);
  }
  add_bars(samples.totals, doubt);
  return doubt;
}

}  // namespace seambook
