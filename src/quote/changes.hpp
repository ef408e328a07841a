// What became of a total since a previous quote, split by cause, and what was changed line by line.
// Holds afterwards: the amounts of the causes add up to the difference of the two totals, to the minor unit.
#pragma once

#include "quote/past_quote.hpp"
#include "quote/quote.hpp"

namespace seambook {

/// In the order in which they are changed over.
enum class Cause : std::uint8_t { version, rates, procedure, scope, quantity };
inline constexpr std::size_t cause_count = 5;
inline constexpr std::array<const char*, cause_count> cause_words = {"program version", "rates", "procedure", "scope",
                                                                     "quantity"};

/// What the total moved when a cause was changed over; several that could not be told apart stand together.
struct CauseAmount {
  std::vector<Cause> causes;
  Money<> amount;
};

/// One thing that differs; `before` or `after` is empty where it was not there.
struct ChangedItem {
  Cause cause = Cause::scope;
  std::string of, what, before, after;
};

struct Changes {
  Date past_date;
  std::string past_version;
  std::int64_t past_quantity = 1, quantity = 1;
  Money<> past_total, total;  // of the first quantity then and now, as printed
  std::vector<CauseAmount> amounts;
  std::vector<ChangedItem> items;  // by cause, then in the order of the files
  std::size_t items_left_out = 0;
  std::vector<std::string> notes;  // why causes stand together
};

/// `scope`, or `program version and rates` where these could not be told apart.
std::string causes_in_words(const std::vector<Cause>&);

/// The quote as it stands now: what it was made from, and what came of it.
struct PresentQuote {
  const WrittenInputs& inputs;
  const RateBook& book;
  const Job& job;
  const Quote& quote;
};

/// Makes the previous quote again from its own files, then changes over to the present ones step by step: the rate
/// book without its ways to weld, these and the procedures that the job names, the job's scope, its quantities. A step
/// that does not resolve falls together with the next.
Changes find_changes(const PastQuote&, const PresentQuote&, std::string_view version);

}  // namespace seambook
