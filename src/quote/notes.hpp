// What a quote says in words: what it takes for granted, the cautions for its work, what to look at again.
#pragma once

#include "quote/quote.hpp"

namespace seambook {

struct QuoteNotes {
  std::vector<std::string> assumptions, cautions;
  std::vector<Diagnostic> findings;
};

/// Those of the job, then those that only its options have. `quote` is priced, with its options.
QuoteNotes quote_notes(const RateBook&, const Job&, const Estimate&, const Quote& quote);

}  // namespace seambook
