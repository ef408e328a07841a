// The page that an investment is decided on: the verdict, this year's seams against break-even, payback by scenario,
// what it hangs on, what does not suit and why.
#pragma once

#include "compare/verdict.hpp"
#include "estimate/gradients.hpp"
#include "report/saving_page.hpp"

namespace seambook {

inline constexpr const char* decision_sheet = "Decision";

struct DecisionPage {
  Sheet sheet;
};

/// Lays the page out and adds its cells to `cells`; they are written by put_decision.
DecisionPage decision_page(const RateBook&, const Job&, const Comparison&, NamedCells& cells);
/// What the page is written from, beside the comparison itself.
struct DecisionSources {
  const WaysPage& ways;
  const SavingPage& saving;
  std::vector<Sensitivity> drivers;
};
void put_decision(DecisionPage&, const RateBook&, const Comparison&, const DecisionSources&, const Tape&,
                  const NamedCells&, const SharedCells&);

}  // namespace seambook
