#include "quote/changes.hpp"

#include <fmt/format.h>

#include <cmath>

#include "quote/changed_items.hpp"
#include "quote/mixtures.hpp"
#include "resolve/names.hpp"

namespace seambook {
namespace {

/// A state between then and now: the total of its first quantity, in the currency's minor unit; nothing when it does
/// not resolve.
struct State {
  std::optional<std::int64_t> total;
  std::string reason;
};

std::int64_t in_minor(double money, int digits) { return std::llround(money * std::pow(10, digits)); }

State state_of(const std::optional<ResolvedQuote>& quote, int digits, std::string reason) {
  if (!quote) return {std::nullopt, std::move(reason)};
  return {in_minor(quote->quote.prices.front().figures.total.si, digits), {}};
}

/// States after each cause was changed over; the last is the present quote and always resolves.
std::vector<State> states_between(const ReadInputs& past, const ReadInputs& now, const PastQuote& then,
                                  const PresentQuote& present, Diagnostics& diagnostics,
                                  std::optional<ResolvedQuote>& again) {
  const int digits = present.book.minor_digits;
  const Date date = present.quote.date;
  std::string reason;
  std::vector<State> states;
  again = resolve_quote(past.job, past.rates, then.date, diagnostics, reason);
  states.push_back(state_of(again, digits, reason));
  const auto next = [&](const JobText& job, const RateText& rates) {
    const auto quote = resolve_quote(job, rates, date, diagnostics, reason);
    states.push_back(state_of(quote, digits, reason));
  };
  next(past.job, with_ways_of(now.rates, past.rates));
  next(with_procedures_of(past.job, now.job), now.rates);
  JobText old_quantities = now.job;
  old_quantities.quantities = past.job.quantities;
  next(old_quantities, now.rates);
  states.push_back({in_minor(present.quote.prices.front().figures.total.si, digits), {}});
  return states;
}

/// Differences between the states that resolve; causes whose state does not fall together with the next.
void add_amounts(const std::vector<State>& states, std::int64_t past_total, int digits, Changes& out) {
  std::int64_t before = past_total;
  std::vector<Cause> together;
  std::string reason;
  for (std::size_t i = 0; i < states.size(); ++i) {
    together.push_back(static_cast<Cause>(i));
    if (!states[i].total) {
      reason = states[i].reason;
      continue;
    }
    const double amount = static_cast<double>(*states[i].total - before) / std::pow(10, digits);
    if (together.size() > 1)
      out.notes.push_back(fmt::format("{} cannot be told apart: {}", causes_in_words(together), reason));
    out.amounts.push_back({std::move(together), {amount}});
    together.clear();
    before = *states[i].total;
  }
}

}  // namespace

std::string causes_in_words(const std::vector<Cause>& causes) {
  std::vector<std::string> words;
  words.reserve(causes.size());
  for (const Cause cause : causes) words.emplace_back(cause_words[static_cast<std::size_t>(cause)]);
  return joined_with_and(words);
}

Changes find_changes(const PastQuote& then, const PresentQuote& present, std::string_view version) {
  Changes out;
  out.past_date = then.date;
  out.past_version = then.version;
  out.past_quantity = then.quantity;
  out.quantity = present.quote.prices.front().quantity;
  out.past_total = {then.total};
  out.total = present.quote.prices.front().figures.total;
  Diagnostics diagnostics;
  const ReadInputs past = read_inputs(then.inputs, diagnostics), now = read_inputs(present.inputs, diagnostics);
  if (!past.sound) out.notes.emplace_back("the previous quote's files do not read without faults any more");
  std::optional<ResolvedQuote> again;
  const std::vector<State> states = states_between(past, now, then, present, diagnostics, again);
  const int digits = present.book.minor_digits;
  add_amounts(states, in_minor(then.total, digits), digits, out);
  if (then.version != version)
    out.items.push_back({Cause::version, "program", "version", then.version, std::string(version)});
  if (again)
    add_changed_items({again->book, again->job, again->quote}, {present.book, present.job, present.quote}, out);
  return out;
}

}  // namespace seambook
