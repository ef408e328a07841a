// What makes a price of a cost, as its author wrote it: the rate book's policy, and what a job asks of it.
#pragma once

#include <string_view>

#include "read/written.hpp"

namespace seambook {

struct PriceText {
  Place place;
  Maybe<dim::ratio> contingency, margin, markup;
  Maybe<dim::ratio> expedite, free_issue_handling, tax_rate;  // shares of labour, of the customer's value, of the total
  Maybe<dim::money> minimum_charge, list_rounding;
  Maybe<dim::money_per_energy> electricity;
  std::optional<Whole> valid_days;
  std::optional<Word> payment, delivery, tax;
  std::optional<Word> finish;  // when a joint names none
  Evidence evidence;
};

/// `{risk: repeat, contingency: 3 %, ...}`: a class of jobs by what may go wrong.
struct RiskClassText {
  Place place;
  std::optional<Word> risk;
  Maybe<dim::ratio> contingency;
  Evidence evidence;
};

inline constexpr std::string_view learning_words[] = {"cumulative_average", "unit"};  // as LearningModel

struct LearningText {
  Place place;
  std::optional<Chosen> model;    // in learning_words
  Maybe<dim::ratio> rate;         // share that remains with each doubling
  std::optional<Whole> holds_at;  // number of pieces at which the rate book's times hold; 1 when left out
  Evidence evidence;
};

struct FreightClassText {
  Place place;
  Maybe<dim::mass> up_to;  // none: any mass
  Maybe<dim::money> price;
};
struct FreightText {
  Place place;
  std::optional<Flag> with_margin;
  std::vector<FreightClassText> by_mass;  // of the whole order, rising
  Evidence evidence;
};

}  // namespace seambook
