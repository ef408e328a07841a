// The order of the first quantity estimated again with some inputs multiplied: procedures, counts and the order of work
// stay as quoted, money is not rounded.
#pragma once

#include "estimate/like_rows.hpp"
#include "quote/quote.hpp"

namespace seambook {

/// What an order is estimated from; gathered once. Refers to values that must outlive it.
struct OrderInputs {
  const RateBook& book;
  const Job& job;
  const Quote& quote;
  std::vector<LikeRows> joints;
  std::vector<WeldmentRow> weldments;  // parallel to Job::weldments
};
/// `moving`: the sources that factors will move, ascending.
OrderInputs order_inputs(const RateBook&, const Job&, const Quote&, const std::vector<SourceId>& moving);
struct OrderMoney {
  double total = 0, cost = 0;
};
/// `by` moves none but the sources that the inputs were gathered for.
OrderMoney moved_order(const OrderInputs&, const Factors& by);

/// An input that may lie between two multiples of itself.
struct Doubtful {
  SourceId source = no_source;
  double low = 1, high = 1;
};
/// Held within what the book or the job would admit; nothing for what is 0 or moves nowhere.
std::optional<Doubtful> doubtful(SourceId, double value, double range, const Limits&);
/// The numbers that the quote reads and that have a range, in the order of their sources.
std::vector<Doubtful> doubtful_inputs(const RateBook&, const Job&, const Quote&);
/// Moves one input among those that stay.
void move_to(Factors&, SourceId, double factor);

/// The ten inputs that move the order's total most between their ends, widest swing first. Candidates are the strongest
/// by the backward sweep, which sees neither counts' steps nor a binding minimum, and are estimated again at both ends.
/// `inputs` are those in doubt; empty: every input by a tenth.
std::vector<DoubtDriver> doubt_drivers(const RateBook&, const Job&, const Estimate&, const Quote&,
                                       const std::vector<Doubtful>& inputs);

}  // namespace seambook
