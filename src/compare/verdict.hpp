// The comparison in words and in the three numbers an owner asks for: from how many metres a year it pays, after how
// many years, and what it leaves.
#pragma once

#include "compare/comparison.hpp"

namespace seambook {

/// Nothing where there is no such number: it never pays.
struct BreakEven {
  std::optional<Length<>> metres_year;     // of suited seam, in the mix of this job
  std::optional<double> payback_years;     // without interest
  std::optional<double> discounted_years;  // with it
};
BreakEven break_even(const Investment&, const ScenarioWorth&);
/// Metres a year of one family's seam that carry the whole yearly cost; nothing when it saves nothing.
std::optional<Length<>> break_even_metres(const YearlyCost<double>&, const FamilyWorth<double>&);

/// `Hand-held laser cell: pays. 1 840 m a year suit it, 1 060 m are enough; paid back after 2.1 years.`
std::string verdict(const RateBook&, const Comparison&);
/// What is counted and what is not, a sentence each.
std::vector<std::string> comparison_notes(const RateBook&, const Job&);

}  // namespace seambook
