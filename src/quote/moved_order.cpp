#include "quote/moved_order.hpp"

#include <algorithm>
#include <cmath>

#include "quote/lift.hpp"
#include "quote/piece_totals.hpp"

namespace seambook {
namespace {

std::array<double, cost_kinds> joints_cost(const OrderInputs& order, const Lifting& by) {
  std::array<double, cost_kinds> sum{};
  for (const LikeRows& like : order.joints) {
    const auto cost = welding_kinds(joint_totals(row_figures(lift_row<double>(like.row, by))));
    for (std::size_t k = 0; k < cost_kinds; ++k) sum[k] += like.count * cost[k];
  }
  return sum;
}

std::vector<WeldmentFigures<double>> weldment_figures_of(const OrderInputs& order, const Lifting& by) {
  std::vector<WeldmentFigures<double>> figures;
  figures.reserve(order.weldments.size());
  for (const WeldmentRow& row : order.weldments)
    figures.push_back(weldment_figures(row.shape, lift_weldment<double>(row.inputs, 0, by), 0));
  return figures;
}

}  // namespace

OrderInputs order_inputs(const RateBook& book, const Job& job, const Quote& quote,
                         const std::vector<SourceId>& moving) {
  OrderInputs order{book, job, quote, like_rows(book, job, moving), {}};
  for (const Weldment& weldment : job.weldments) order.weldments.push_back(gather_weldment(book, job, weldment));
  return order;
}

OrderMoney moved_order(const OrderInputs& order, const Factors& factors) {
  constexpr int beyond_any_currency = 9;  // digits: nothing is rounded that could be seen
  const Lifting by(&factors);
  QuoteInputs<double> in = lift_quote<double>(quote_inputs(order.book, order.job, joints_cost(order, by),
                                                           weldment_figures_of(order, by), order.quote.setups, by),
                                              by);
  in.digits = beyond_any_currency;
  in.order.list_rounded = false;
  const Ratio<> quantity = number<double>(static_cast<double>(order.job.quantities.front()));
  const PriceFigures<double> price = price_figures(in, cost_figures(in), quantity, 0);
  return {price.total.si, price.cost.si};
}

std::optional<Doubtful> doubtful(SourceId source, double value, double range, const Limits& limits) {
  constexpr double nearest = 0.999;  // of the way to an end that is not admitted itself
  if (value <= 0 || range <= 0) return std::nullopt;
  const auto held = [&](double wanted, double end, bool open) {
    return std::fabs(wanted - value) < std::fabs(end - value) ? wanted : value + (end - value) * (open ? nearest : 1);
  };
  const double low = held(value * (1 - range), limits.low, limits.low_open);
  const double high = held(value * (1 + range), limits.high, limits.high_open);
  if (low >= high) return std::nullopt;
  return Doubtful{source, low / value, high / value};
}

std::vector<Doubtful> doubtful_inputs(const RateBook& book, const Job& job, const Quote& quote) {
  std::vector<Doubtful> out;
  for (const SourceId id : used_sources(book, job, quote.setups)) {
    const RateSource& source = book.sources[id];
    if (source.decided) continue;
    if (const auto found = doubtful(id, source.value, source.range, source.limits)) out.push_back(*found);
  }
  for (std::size_t i = 0; i < job.sources.size(); ++i) {
    const JobSource& source = job.sources[i];
    const SourceId id = first_job_source + static_cast<SourceId>(i);
    if (const auto found = doubtful(id, source.value, source.range, source.limits)) out.push_back(*found);
  }
  return out;
}

void move_to(Factors& factors, SourceId source, double factor) {
  std::vector<double>& of = source < first_job_source ? factors.rates : factors.job;
  const std::size_t at = source < first_job_source ? source : source - first_job_source;
  if (of.size() <= at) of.resize(at + 1, 1);
  of[at] = factor;
}

}  // namespace seambook
