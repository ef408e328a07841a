// What may be priced but must not be sent to the floor: work that could hurt somebody, or that nobody may do, as long
// as something is not stated or not released. Cautions of this program, not the rules of any code.
#pragma once

#include "estimate/estimate.hpp"
#include "resolve/day.hpp"

namespace seambook {

enum class GateKind : std::uint8_t {
  laser,      // no station for it is stated ready
  qualified,  // a qualified welder is demanded and there is none in date
  preheat,    // thick or hardening, and nothing is said of preheat
  vessel,     // gas may have stayed in it
  confined,   // nobody stays outside
  lift        // forbids lifting on a lug, not the welding
};

struct Gate {
  GateKind kind = GateKind::laser;
  std::size_t weldment = 0;          // of the job
  std::optional<std::size_t> joint;  // of the job; absent: the weldment as a whole
  std::string words, hint;
};

/// The work looked at, and when it is to be done.
struct GatedWork {
  const RateBook& book;
  const Job& job;
  const Estimate& estimate;
  Date date;                 // on which welders must be qualified
  const Day* day = nullptr;  // null: no hold point has been released
  std::size_t job_in_day = 0;
};

/// By joints in the job's order, then by weldments.
std::vector<Gate> find_gates(const GatedWork&);
/// Tells each at the place of its joint or weldment, as not for the floor.
void tell_gates(const std::vector<Gate>&, const Job&, Diagnostics&);

}  // namespace seambook
