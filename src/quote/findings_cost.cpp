// What an owner should look at again: shares of the cost of welding, policy, the due date.
#include <fmt/format.h>

#include <algorithm>

#include "quote/quote.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

struct PriceSeen {
  const RateBook& book;
  const Job& job;
  const Quote& quote;
};
using PriceRule = void (*)(const PriceSeen&, std::vector<Diagnostic>&);

void warn(std::vector<Diagnostic>& out, Place place, std::string message, std::string hint) {
  out.push_back({Level::warning, place, std::move(message), std::move(hint)});
}

double money_of(const PriceSeen& seen, CostKind kind) {
  return seen.quote.inputs.each[static_cast<std::size_t>(kind)].si;
}

/// What welding one piece costs, with labour and its overhead.
struct WeldingCost {
  double labour = 0, power = 0, all = 0;
};
WeldingCost welding_cost_of(const PriceSeen& seen) {
  WeldingCost cost;
  const double overhead = seen.book.overhead_added ? seen.book.overhead_added->si.value : 0;
  cost.labour = money_of(seen, CostKind::labour) * (1 + overhead);
  cost.power = money_of(seen, CostKind::power);
  cost.all = cost.labour + cost.power;
  for (const CostKind kind : {CostKind::equipment, CostKind::filler, CostKind::gas, CostKind::wear})
    cost.all += money_of(seen, kind);
  return cost;
}

bool welded_by_beam(const PriceSeen& seen) {
  return std::any_of(seen.job.joints.begin(), seen.job.joints.end(), [&](const Joint& joint) {
    return std::any_of(joint.passes.begin(), joint.passes.end(), [&](const PassGroup& group) {
      return seen.book.procedures[group.procedure].beam_power.si.source != no_source;
    });
  });
}

Place place_of_job(const PriceSeen& seen) {
  return seen.job.weldments.empty() ? Place{} : Place{seen.job.weldments.front().place.file, 0, 0};
}

/// Worked examples in print run from 34 to 95 % labour, so the range is wide; a share outside it has a cause.
void labour_share(const PriceSeen& seen, std::vector<Diagnostic>& out) {
  const Usual<dim::ratio>& range = seen.book.checks.labour_share;
  const WeldingCost cost = welding_cost_of(seen);
  if (!range || cost.all <= 0 || welded_by_beam(seen)) return;
  const double share = cost.labour / cost.all;
  if (share >= range->low.si && share <= range->high.si) return;
  warn(out, place_of_job(seen),
       fmt::format("labour is {:.0f} % of the cost of welding; usual is {} to {}", share * 100,
                   shown(range->low, unit::percent), shown(range->high, unit::percent)),
       "look at labour rate, equipment rates, filler price and time");
}

void power_share(const PriceSeen& seen, std::vector<Diagnostic>& out) {
  const auto& most = seen.book.checks.power_share;
  const WeldingCost cost = welding_cost_of(seen);
  if (!most || cost.all <= 0 || cost.power <= most->si * cost.all) return;
  warn(out, place_of_job(seen),
       fmt::format("electricity is {:.1f} % of the cost of welding; usual is at most {}", cost.power / cost.all * 100,
                   shown(*most, unit::percent)),
       "look at the price of electricity and its unit, and at auxiliary power");
}

void profit_range(const PriceSeen& seen, std::vector<Diagnostic>& out) {
  const Usual<dim::ratio>& range = seen.book.checks.profit;
  const Prices& prices = seen.book.prices;
  const Known<dim::ratio>& profit = prices.by_margin ? prices.margin : prices.markup;
  if (!range || profit.si.source == no_source) return;
  if (profit.si.value >= range->low.si && profit.si.value <= range->high.si) return;
  warn(out, seen.book.sources[profit.si.source].place,
       fmt::format("{} is {}; usual is {} to {}", prices.by_margin ? "margin" : "mark-up",
                   shown(profit.si.value, unit::percent), shown(range->low, unit::percent),
                   shown(range->high, unit::percent)),
       "a margin is a share of the price, a mark-up of the cost");
}

void contingency_range(const PriceSeen& seen, std::vector<Diagnostic>& out) {
  const auto& most = seen.book.checks.contingency_most;
  const Known<dim::ratio> contingency = policy_inputs(seen.book, seen.job).contingency;
  if (!most || contingency.si.source == no_source || contingency.si.value <= most->si) return;
  warn(out, seen.book.sources[contingency.si.source].place,
       fmt::format("contingency is {}; usual is at most {}", shown(contingency.si.value, unit::percent),
                   shown(*most, unit::percent)),
       "hidden hours teach nobody; put them where they arise");
}

void due_before_quote(const PriceSeen& seen, std::vector<Diagnostic>& out) {
  if (!seen.job.due || *seen.job.due >= seen.quote.date) return;
  warn(out, place_of_job(seen),
       fmt::format("job {} is due on {}, before the quote's date {}", seen.job.name, iso(*seen.job.due),
                   iso(seen.quote.date)),
       "look at 'due' and the date of the quote");
}

constexpr PriceRule price_rules[] = {labour_share, power_share, profit_range, contingency_range, due_before_quote};

}  // namespace

std::vector<Diagnostic> price_findings(const RateBook& book, const Job& job, const Quote& quote) {
  std::vector<Diagnostic> out;
  for (const PriceRule rule : price_rules) rule({book, job, quote}, out);
  return out;
}

}  // namespace seambook
