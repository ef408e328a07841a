// An estimate and its set-ups become a quote: costs by kind, a price for each quantity. What it assumes and warns of is
// in quote/notes.hpp. Holds afterwards: every printed amount is rounded to the currency's minor unit, and printed lines
// add up to their totals.
#pragma once

#include <optional>

#include "estimate/estimate.hpp"
#include "estimate/gradients.hpp"
#include "quote/doubt.hpp"
#include "quote/price.hpp"
#include "sequence/work.hpp"

namespace seambook {

/// One set-up of the job's own sequence, from the station's stated state. Tasks index RateBook::change_tasks.
struct SetupRow {
  std::size_t station = 0, step = 0;  // of the StationWork list, of its sequence
  SetupInputs<Sourced> inputs;
};

struct QuotePrice {
  std::int64_t quantity = 1;
  PriceFigures<double> figures;
};

struct PricedOption;

struct Quote {
  Date date;
  Date valid_until;
  QuoteInputs<Sourced> sourced;  // the inputs, each with its source
  QuoteInputs<double> inputs;    // the same as plain numbers
  CostFigures<double> cost;
  std::vector<SetupRow> setups;       // those that take time
  Time<> setup_time;                  // for a lot
  std::vector<QuotePrice> prices;     // parallel to Job::quantities
  std::vector<PricedOption> options;  // parallel to Job::options; none of them is in the prices above
  std::optional<Doubt> doubt;         // absent where nobody asked: it takes a thousand estimates and more
};

/// An option as if it were made alone: with set-ups from the stations' stated state, and less what it leaves out.
struct PricedOption {
  std::string name;
  Estimate estimate;
  std::vector<StationWork> work;
  Quote quote;  // without the minimum charge, freight, the price list's step and tax, which are the order's
};

Quote make_quote(const RateBook&, const Job&, const Estimate&, const std::vector<StationWork>&, Date date);
/// Prices the options of a quoted job, `work` being each option's own.
void price_options(const RateBook&, const Job&, const Estimate&, std::vector<std::vector<StationWork>> work, Quote&);
/// The policy alone, of the rate book and what the job asks of it; costs are 0.
QuoteInputs<Sourced> policy_inputs(const RateBook&, const Job&);
/// The quote's inputs as they stand, each with its source: policy from the rate book, sums marked `summed`.
QuoteInputs<Sourced> quote_inputs(const RateBook&, const Job&, const Estimate&, const std::vector<SetupRow>&);
/// The same with `welding` as the joints' cost by kind and `weldments` of an estimate. What else goes into the sums is
/// multiplied as `by` says.
QuoteInputs<Sourced> quote_inputs(const RateBook&, const Job&, const std::array<double, cost_kinds>& welding,
                                  const std::vector<WeldmentFigures<double>>& weldments, const std::vector<SetupRow>&,
                                  const Lifting& by);
/// What an owner should look at again in cost and price: shares of the cost, policy, dates.
std::vector<Diagnostic> price_findings(const RateBook&, const Job&, const Quote&);
/// Cautions for the processes of a job: the usual hazards, and who has the last word. Never a claim of conformity.
std::vector<std::string> cautions(const RateBook&, const Job&);
/// What the price policy does to this job, in words: one sentence for each line of it.
std::vector<std::string> policy_in_words(const RateBook&, const Job&);
/// Rate-book entries with the basis they rest on, for every source the job used: `procedure CG-F5: assumption (invented
/// shop)`.
std::vector<std::string> assumptions(const RateBook&, const Job&);
/// Ids of the rate-book numbers that the job's estimate and quote read, ascending.
std::vector<SourceId> used_sources(const RateBook&, const Job&, const std::vector<SetupRow>&);
/// Those of the joints alone.
std::vector<SourceId> joint_sources(const RateBook&, const Job&);
/// What the entries of these numbers rest on, each once: `procedure CG-F5: assumption (invented shop)`.
std::vector<std::string> basis_lines(const RateBook&, const std::vector<SourceId>&);

/// Which price is swept, of the first quantity: the unrounded one of a piece, or the order with its one-offs, before
/// the minimum charge.
enum class SweptPrice : std::uint8_t { unit, order };
/// All inputs but counts that move the price, largest first; ties in source order. By one backward sweep over the quote
/// and one a joint.
std::vector<Sensitivity> sensitivities(const RateBook&, const Job&, const Estimate&, const Quote&,
                                       SweptPrice = SweptPrice::unit);

/// How far the total of the first quantity may lie off: every input with a range drawn once a sample for all rows, from
/// a triangular distribution about its value. The same inputs give the same bits.
Doubt find_doubt(const RateBook&, const Job&, const Estimate&, const Quote&);
/// By nearest rank; `ascending` holds at least one.
Percentiles percentiles(const std::vector<double>& ascending);

}  // namespace seambook
