// The numbers that the labour of a joint is computed from: minutes of the rate book, and what the job says of access.
// As in inputs.hpp, absent numbers are 0 without a source; the shape says which elements there are.
#pragma once

#include "estimate/element_terms.hpp"
#include "estimate/figures.hpp"

namespace seambook {

/// What is worked at a joint whatever its passes.
template <class N>
struct LabourInputs {
  Time<N> fit_up_per_joint, tack_time, purge_per_joint;
  Pace<N> fit_up_per_metre, fit_up_extra, finish_pace;
  Length<N> tack_pitch;
  Ratio<N> access, personal;
  std::vector<ElementTerm<N>> terms;
  friend bool operator==(const LabourInputs&, const LabourInputs&) = default;
};

/// What a group of passes by one procedure takes, and what an hour of it costs.
template <class N>
struct PassLabourInputs {
  Time<N> start_time;
  Pace<N> interpass_pace;
  MoneyPerTime<N> labour_rate, wage;
  Ratio<N> burden, operating_factor;
  friend bool operator==(const PassLabourInputs&, const PassLabourInputs&) = default;
};

/// Which formulas the labour of a joint asks for; decided when the job was resolved. An operating
/// factor may cover fit-up, tacking, starts, interpass cleaning and finish: they are not charged then.
struct LabourShape {
  bool purge = false, access = false, fit_up_extra = false, by_factor = false;
  bool fit_up = true, tacking = true, starts = true, interpass = true, finish = true;
  bool purging = true;  // its minutes; gas flows during them all the same
  bool fitted = true;   // holes and surfaces are neither fitted nor tacked along their line
  friend bool operator==(const LabourShape&, const LabourShape&) = default;
};

/// Calls f(figure, a.member, b.member) for every input but the terms, which lift_terms lifts.
template <class A, class B, class F>
void each_labour_input(A& a, B& b, F f) {
  f(fig::fit_up_per_joint, a.fit_up_per_joint, b.fit_up_per_joint), f(fig::tack_time, a.tack_time, b.tack_time);
  f(fig::purge_per_joint, a.purge_per_joint, b.purge_per_joint);
  f(fig::fit_up_per_metre, a.fit_up_per_metre, b.fit_up_per_metre), f(fig::finish_pace, a.finish_pace, b.finish_pace);
  f(fig::fit_up_extra, a.fit_up_extra, b.fit_up_extra);
  f(fig::tack_pitch, a.tack_pitch, b.tack_pitch), f(fig::access, a.access, b.access);
  f(fig::personal, a.personal, b.personal);
}

template <class A, class B, class F>
void each_pass_labour_input(A& a, B& b, F f) {
  f(fig::start_time, a.start_time, b.start_time), f(fig::interpass_pace, a.interpass_pace, b.interpass_pace);
  f(fig::labour_rate, a.labour_rate, b.labour_rate), f(fig::wage, a.wage, b.wage), f(fig::burden, a.burden, b.burden);
  f(fig::operating_factor, a.operating_factor, b.operating_factor);
}

}  // namespace seambook
