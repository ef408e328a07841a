// Labour elements of the rate book as terms of a row: what each is counted by, and what one of it takes. The minutes of
// an element are the sum of its terms. Source: common practice of estimating by elements, the figures are the shop's.
#pragma once

#include <vector>

#include "estimate/element_figures.hpp"
#include "estimate/figures.hpp"
#include "resolve/job.hpp"
#include "trace/vocabulary.hpp"
#include "trade/labour.hpp"

namespace seambook {

/// One number is given, by what the element is counted in; the others are 0 without a source.
template <class N>
struct ElementTerm {
  LabourKind kind = LabourKind::cleaning;
  Driver per = Driver::joint;
  bool attended = true, has_multiple = false, has_extent = false;
  bool graded = false, loaded_rate = true;  // paid at the rate of another grade than the joint's
  double edges = 0;                         // bevelled, of a joint line
  Time<N> time;
  Pace<N> pace;
  TimePerMass<N> mass_pace;
  Ratio<N> share, multiple, extent;
  MoneyPerTime<N> labour_rate, wage;
  Ratio<N> burden;
  friend bool operator==(const ElementTerm&, const ElementTerm&) = default;
};

/// What the elements of a joint are counted by; for one piece.
template <class N>
struct JointCounts {
  Ratio<N> joints, weld_elements, starts, tacks, interpass;
  Length<N> line, weld, passes;  // line of all joints; weld of all sides; that times passes
  Time<N> welding;               // arc, starts and interpass cleaning
};
/// The same of a weldment.
template <class N>
struct WeldmentCounts {
  Ratio<N> weldments, parts, turns;
  Mass<N> mass;
};

/// Minutes by element; those that nobody asked for stay 0.
template <class N>
struct ElementTimes {
  std::array<Time<N>, labour_kinds> of{};
  Time<N> waiting{};
  bool graded = false;     // some are paid at the rates of other grades:
  Time<N> other_grades{};  // their minutes, which are in `of` too
  Money<N> paid_to_them{};
};

/// Calls f(member) for every input of a term.
template <class N, class F>
void each_term_input(ElementTerm<N>& term, F f) {
  f(term.time), f(term.pace), f(term.mass_pace), f(term.share), f(term.multiple), f(term.extent);
  f(term.labour_rate), f(term.wage), f(term.burden);
}

template <class N>
std::vector<ElementTerm<N>> lift_terms(const std::vector<ElementTerm<Sourced>>& from, std::uint32_t row,
                                       const Lifting& by) {
  std::vector<ElementTerm<N>> to;
  for (const ElementTerm<Sourced>& a : from) {
    const Figure& figure = fig::element_input(a.kind, a.per, a.attended);
    const auto up = [&](const Figure& of, const auto& x) { return lift<N>(x, of, row, by); };
    ElementTerm<N> term;
    term.kind = a.kind, term.per = a.per, term.attended = a.attended, term.edges = a.edges;
    term.has_multiple = a.has_multiple, term.has_extent = a.has_extent;
    term.graded = a.graded, term.loaded_rate = a.loaded_rate;
    term.time = up(figure, a.time), term.pace = up(figure, a.pace), term.mass_pace = up(figure, a.mass_pace);
    term.share = up(figure, a.share), term.multiple = up(fig::multiple, a.multiple);
    if (a.has_extent) term.extent = up(fig::extent_of(a.kind), a.extent);
    if (a.graded) {
      term.labour_rate = up(fig::labour_rate, a.labour_rate);
      term.wage = up(fig::wage, a.wage), term.burden = up(fig::burden, a.burden);
    }
    to.push_back(term);
  }
  return to;
}

template <class N>
Time<N> term_minutes(const ElementTerm<N>& term, const JointCounts<N>& counts) {
  switch (term.per) {
    case Driver::metre:
      return counts.line * term.pace;
    case Driver::weld_metre:
      return counts.weld * term.pace;
    case Driver::edge_metre:
      return counts.line * term.edges * term.pace;
    case Driver::pass_metre:
      return counts.passes * term.pace;
    case Driver::weld_element:
      return counts.weld_elements * term.time;
    case Driver::start:
      return counts.starts * term.time;
    case Driver::tack:
      return counts.tacks * term.time;
    case Driver::interpass:
      return counts.interpass * term.time;
    case Driver::share:
      return counts.welding * term.share;
    default:
      return counts.joints * term.time;
  }
}

template <class N>
Time<N> term_minutes(const ElementTerm<N>& term, const WeldmentCounts<N>& counts) {
  switch (term.per) {
    case Driver::part:
      return counts.parts * term.time;
    case Driver::kg:
      return counts.mass * term.mass_pace;
    case Driver::turn:
      return counts.turns * term.time;
    default:
      return counts.weldments * term.time;
  }
}

/// Sums the terms by element, in the order of the rate book; `waiting` is what waits besides.
template <class N, class Counts>
ElementTimes<N> element_times(const std::vector<ElementTerm<N>>& terms, const Counts& counts, std::uint32_t row,
                              Time<N> waiting = {}) {
  ElementTimes<N> out;
  out.waiting = waiting;
  for (const ElementTerm<N>& term : terms) {
    Time<N> minutes = term_minutes(term, counts);
    if (term.has_multiple) minutes = minutes * term.multiple;
    if (term.has_extent) minutes = minutes * term.extent;
    Time<N>& sum = term.attended ? out.of[static_cast<std::size_t>(term.kind)] : out.waiting;
    sum = sum + minutes;
    if (!term.graded) continue;
    out.graded = true;
    out.other_grades = out.other_grades + minutes;
    out.paid_to_them =
        out.paid_to_them + minutes * (term.loaded_rate ? term.labour_rate : loaded_rate(term.wage, term.burden));
  }
  for (std::size_t k = 0; k < labour_kinds; ++k) out.of[k] = name(out.of[k], fig::element_min[k], row);
  out.waiting = name(out.waiting, fig::waiting_min, row);
  return out;
}

template <class N>
Time<N> all_of(const ElementTimes<N>& times) {
  Time<N> sum{};
  for (const Time<N>& minutes : times.of) sum = sum + minutes;
  return sum;
}

}  // namespace seambook
