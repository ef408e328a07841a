// What a job asks of the price policy, as numbers: learning, haste, freight, the price list's step, tax.
#pragma once

#include <vector>

#include "quote/figures.hpp"
#include "resolve/source.hpp"
#include "trade/learning.hpp"

namespace seambook {

template <class N>
struct FreightStep {
  Mass<N> up_to;  // of the last: not read
  Money<N> price;
};

template <class N>
struct OrderTerms {
  Ratio<N> learning_rate, learning_holds_at, expedite, tax_rate;
  Mass<N> piece_mass;
  Money<N> freight, list_step;
  std::vector<FreightStep<N>> freight_by_mass;  // of the whole order, rising; empty: `freight`
  bool learning = false, unit_model = false, holds_at_first = true, expedite_asked = false, has_freight = false,
       freight_each = false, freight_with_margin = false, list_rounded = false, taxed = false;
};

/// Unit model: what the average piece of an order takes, against the piece whose time the rate book states.
inline double unit_model_share(double rate, double holds_at, double quantity) {
  const Ratio<> exponent = learning_exponent(Ratio<>{rate});
  const Time<> one{1};
  const Time<> all = unit_model_total(one, static_cast<int>(quantity), exponent);
  return (all / unit_model_piece(one, Ratio<>{holds_at}, exponent)).si / quantity;
}

inline double plain_value(double x) { return x; }
inline double plain_value(const Traced& x) { return x.value; }
inline Tape* tape_of(double) { return nullptr; }
inline Tape* tape_of(const Traced& x) { return x.tape; }

/// Labour of the average piece of an order as a share of the rate book's. Cumulative-average model: by formula. Unit
/// model: a sum over pieces, taken as it stands, an input of its own.
template <class N>
Ratio<N> learned_share(const OrderTerms<N>& in, Ratio<N> quantity, std::uint32_t row) {
  if (in.unit_model) {
    const double share = unit_model_share(plain_value(in.learning_rate.si), plain_value(in.learning_holds_at.si),
                                          plain_value(quantity.si));
    return lift<N>(Ratio<Sourced>{{share, worked_out}}, fig::learning_factor, row, tape_of(in.learning_rate.si));
  }
  const Ratio<N> count = in.holds_at_first ? quantity : quantity / in.learning_holds_at;
  return name(learning_factor(count, learning_exponent(in.learning_rate)), fig::learning_factor, row);
}

/// As stated, for a lot or each piece; else of the first mass that takes the order.
template <class N>
Money<N> freight_cost(const OrderTerms<N>& in, Ratio<N> quantity, std::uint32_t row) {
  if (in.freight_by_mass.empty()) return in.freight_each ? in.freight * quantity : in.freight;
  const Mass<N> mass = name(in.piece_mass * quantity, fig::order_mass, row);
  Money<N> price = in.freight_by_mass.back().price;
  for (std::size_t i = in.freight_by_mass.size() - 1; i-- > 0;)
    price = select_less(in.freight_by_mass[i].up_to, mass, price, in.freight_by_mass[i].price);
  return price;
}

}  // namespace seambook
