#include <algorithm>
#include <cmath>

#include "quote/moved_order.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr std::size_t candidates_tried = 25, drivers_kept = 10;
constexpr double range_when_none = 0.1;

struct Candidate {
  Sensitivity input;
  Doubtful ends;
  double reach = 0;  // of the total between the ends, by the sweep
};

bool is_decided(const RateBook& book, SourceId source) {
  return source < first_job_source && book.sources[source].decided;
}

const Limits& limits_of(const RateBook& book, const Job& job, SourceId source) {
  return source < first_job_source ? book.sources[source].limits : job.sources[source - first_job_source].limits;
}

std::vector<Candidate> candidates(const RateBook& book, const Job& job, const Estimate& quoted, const Quote& quote,
                                  const std::vector<Doubtful>& inputs) {
  std::vector<Candidate> out;
  for (Sensitivity& input : sensitivities(book, job, quoted, quote, SweptPrice::order)) {
    if (is_decided(book, input.source)) continue;
    std::optional<Doubtful> ends;
    if (inputs.empty()) {
      ends = doubtful(input.source, input.value, range_when_none, limits_of(book, job, input.source));
    } else {
      const auto at = std::lower_bound(inputs.begin(), inputs.end(), input.source,
                                       [](const Doubtful& a, SourceId source) { return a.source < source; });
      if (at != inputs.end() && at->source == input.source) ends = *at;
    }
    if (!ends) continue;
    const double reach = std::fabs(input.per_percent.si) * (ends->high - ends->low);
    out.push_back({std::move(input), *ends, reach});
  }
  std::stable_sort(out.begin(), out.end(), [](const Candidate& a, const Candidate& b) { return a.reach > b.reach; });
  if (out.size() > candidates_tried) out.resize(candidates_tried);
  return out;
}

OrderInputs order_of(const RateBook& book, const Job& job, const Quote& quote, const std::vector<Candidate>& moving) {
  std::vector<SourceId> sources;
  sources.reserve(moving.size());
  for (const Candidate& candidate : moving) sources.push_back(candidate.input.source);
  std::sort(sources.begin(), sources.end());
  return order_inputs(book, job, quote, sources);
}

double swing(const DoubtDriver& driver) { return std::fabs(driver.total_high.si - driver.total_low.si); }

}  // namespace

std::vector<DoubtDriver> doubt_drivers(const RateBook& book, const Job& job, const Estimate& quoted, const Quote& quote,
                                       const std::vector<Doubtful>& inputs) {
  const std::vector<Candidate> tried = candidates(book, job, quoted, quote, inputs);
  const OrderInputs order = order_of(book, job, quote, tried);
  std::vector<DoubtDriver> drivers;
  Factors factors;
  for (const Candidate& candidate : tried) {
    const SourceId source = candidate.input.source;
    const auto total_at = [&](double factor) {
      move_to(factors, source, factor);
      return Money<>{moved_order(order, factors).total};
    };
    DoubtDriver driver{source, candidate.input.words, {}, 0, candidate.input.value, 0, candidate.input.unit, {}, {}};
    driver.basis = source < first_job_source ? std::string(basis_in_words(book.sources[source].basis)) : "the job";
    driver.low = driver.quoted * candidate.ends.low;
    driver.high = driver.quoted * candidate.ends.high;
    driver.total_low = total_at(candidate.ends.low);
    driver.total_high = total_at(candidate.ends.high);
    move_to(factors, source, 1);
    if (swing(driver) > 0) drivers.push_back(std::move(driver));
  }
  std::stable_sort(drivers.begin(), drivers.end(),
                   [](const DoubtDriver& a, const DoubtDriver& b) { return swing(a) > swing(b); });
  if (drivers.size() > drivers_kept) drivers.resize(drivers_kept);
  return drivers;
}

}  // namespace seambook
