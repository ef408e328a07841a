// What a finding looks at, and the rules by subject. Each rule looks at one joint, or one pass group of it, and adds
// what an expert would query; thresholds are the rate book's, and a rule without its threshold or its facts says
// nothing. Which rules there are stands in the lists of findings.cpp.
#pragma once

#include "estimate/estimate.hpp"

namespace seambook {

/// A joint with its figures.
struct JointSeen {
  const RateBook& book;
  const Job& job;
  const Joint& joint;
  const RowFigures<double>& row;
};

/// A pass group of it.
struct PassSeen {
  const JointSeen& of;
  const PassGroup& group;
  const Procedure& procedure;
  const Process& process;
  const PassFigures<double>& figures;
};

/// In which the shop reads sizes.
inline Terms terms_of(const JointSeen& seen) { return seen.book.terms; }
inline Terms terms_of(const PassSeen& seen) { return seen.of.book.terms; }

struct Finding {
  Diagnostic diagnostic;  // its message is without the joint's name
  bool once = false;      // of the procedure: said once for all joints that use it
  std::string joint;      // `joint P01`
};
using Findings = std::vector<Finding>;

/// What was found of a joint: message, then why and what to look at.
void found(Findings&, const JointSeen&, Level, std::string message, std::string hint);
/// What was found of a procedure on a base metal: told at the first joint, with how many more there are.
void found_of_procedure(Findings&, const PassSeen&, Level, std::string message, std::string hint);

/// Whether a check is about this pass.
bool in_scope(const CheckScope&, const PassSeen&);
/// The first check in scope that has the figure asked for.
template <class T>
const RangeCheck* check_with(const PassSeen& seen, std::optional<T> RangeCheck::*figure) {
  for (const RangeCheck& check : seen.of.book.range_checks)
    if (check.*figure && in_scope(check.scope, seen)) return &check;
  return nullptr;
}
/// The facts that the scope asks for, in words: `gas M21 (M21), base-metal group 8.1`.
std::string facts_in_words(const CheckScope&, const PassSeen&);
double thinner_of(const Joint&);
/// Leg of a fillet, also from its throat.
double leg_of(const Joint&);

/// Inside a range that may be overstepped by a share of it.
template <Dim D>
bool within(const Between<D>& range, Quantity<D> value, double slack = 0) {
  return value.si >= range.low.si * (1 - slack) * (1 - whole_tolerance) &&
         value.si <= range.high.si * (1 + slack) * (1 + whole_tolerance);
}

// Sizes and lengths.
void leg_against_member(const JointSeen&, Findings&);
void lap_on_plate_edge(const JointSeen&, Findings&);
void least_leg(const PassSeen&, Findings&);
void oversized_procedure(const PassSeen&, Findings&);
void short_elements(const JointSeen&, Findings&);
void sizes_like_unit_slips(const JointSeen&, Findings&);

// Passes.
void mass_balance(const PassSeen&, Findings&);
void travel_speed(const PassSeen&, Findings&);
void deposition_rate(const PassSeen&, Findings&);
void heat_input_range(const PassSeen&, Findings&);
void voltage_at_current(const PassSeen&, Findings&);
void leg_of_one_pass(const PassSeen&, Findings&);
void pass_size(const PassSeen&, Findings&);
/// Counted passes that lay more than there is to fill: many times more is an error; less than that is a warning where
/// they leave nothing to the group whose passes are computed.
void laid_over_section(const JointSeen&, Findings&);
/// Passes larger than the rate book's limit of a single pass; only counted ones can be.
void pass_over_limit(const JointSeen&, Findings&);
/// Welded through from both sides, and the root not gouged between them.
void both_sides_without_gouging(const JointSeen&, Findings&);
void gas_flow(const PassSeen&, Findings&);
void duty_cycle(const PassSeen&, Findings&);

// Metal, gas, filler, polarity, thickness: combinations.
void combinations(const PassSeen&, Findings&);
void prices_like_unit_slips(const PassSeen&, Findings&);
void root_without_purge(const JointSeen&, Findings&);
void purge_flow(const JointSeen&, Findings&);

// Laser.
void laser_thickness(const PassSeen&, Findings&);
void laser_speed(const PassSeen&, Findings&);
void laser_gap(const PassSeen&, Findings&);

// Heat.
void preheat_question(const JointSeen&, Findings&);
void interpass_below_preheat(const JointSeen&, Findings&);
void heat_input_limit(const PassSeen&, Findings&);
void equivalents_agree(const RateBook&, const Job&, const Estimate&, std::vector<Diagnostic>&);

// Labour.
void operating_factor(const PassSeen&, Findings&);
void starts_without_time(const JointSeen&, Findings&);
void bevel_without_time(const JointSeen&, Findings&);
void passes_without_wait(const PassSeen&, Findings&);
void little_fit_up(const RateBook&, const Job&, const Estimate&, std::vector<Diagnostic>&);
void stations_without_clean_down(const RateBook&, const Job&, const Estimate&, std::vector<Diagnostic>&);

}  // namespace seambook
