// What makes a price of a cost: the rate book's policy, and what a job asks of it. What is absent is off.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "read/job_text.hpp"
#include "resolve/source.hpp"

namespace seambook {

/// Margin is a share of the price, mark-up a share of the cost; a book holds one of them.
struct Prices {
  Known<dim::ratio> contingency, margin, markup;
  bool by_margin = true;
  Known<dim::money> minimum_charge;       // absent when none
  Known<dim::ratio> expedite;             // share of labour; absent: haste is not priced
  Known<dim::ratio> free_issue_handling;  // share of the customer's value; absent: not charged
  Known<dim::ratio> tax_rate;             // absent: no tax line, `tax` says why
  Known<dim::money> list_rounding;        // absent: totals stay as they are
  Known<dim::money_per_energy> electricity;
  int valid_days = 30;
  std::string payment, delivery, tax;
  std::optional<std::size_t> finish;
};

struct RiskClass {
  std::string name;
  Known<dim::ratio> contingency;
};

enum class LearningModel : std::uint8_t { cumulative_average, unit };
struct Learning {
  LearningModel model = LearningModel::cumulative_average;
  Known<dim::ratio> rate;
  Known<dim::ratio> holds_at;  // pieces; absent: 1
};

struct FreightClass {
  Known<dim::mass> up_to;  // absent in the last
  Known<dim::money> price;
};
struct Freight {
  bool with_margin = false;
  std::vector<FreightClass> by_mass;  // rising
};

/// Freight of a job: its own price for each piece or lot, else by the mass of the order.
struct JobFreight {
  bool by_mass = false;
  Scaling scaling = Scaling::per_lot;
  Known<dim::money> price;
};

/// What a job asks of the policy.
struct OrderPolicy {
  std::optional<std::size_t> risk;  // of RateBook::risk_classes; absent: the plain contingency
  bool expedite = false, learning = false;
  std::optional<JobFreight> freight;  // absent: none is charged
  std::string untaxed;                // why no tax is added; empty: it is, where the rate book knows its rate
};

}  // namespace seambook
