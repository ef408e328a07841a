// Two quotes of a job side by side: rate-book numbers by entry, joints by weldment and id, bought lines by name.
#pragma once

#include "quote/changes.hpp"

namespace seambook {

struct QuoteSide {
  const RateBook& book;
  const Job& job;
  const Quote& quote;
};

/// Adds what differs between `then` and `now`, cause by cause; of very many only the first.
void add_changed_items(const QuoteSide& then, const QuoteSide& now, Changes&);

}  // namespace seambook
