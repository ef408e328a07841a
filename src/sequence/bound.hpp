// Floors under the change time that is still to come, from what is mounted and which needs have work left.
// Two floors that never exceed the true remaining minimum; the higher one counts.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "sequence/work_net.hpp"

namespace seambook {

/// One attribute by itself: whatever the order, each value still to come is mounted at least once, so the changes of
/// this attribute are a walk over those values. A task that k attributes may call is counted as 1/k of its time for
/// each, and so never more than once; the floors of the attributes therefore add up.
struct AttributeWalk {
  std::size_t attribute = 0;
  std::vector<std::uint32_t> values;     // of the needs and of the start, sorted; "nothing" stands after the last
  std::vector<Time<>> cheapest_arrival;  // per value: least time of a change to it, by way of other values if cheaper
  std::vector<std::vector<Time<>>>
      shortest;  // [set of values to visit][value now]; empty when there are too many values
  std::vector<std::optional<std::uint32_t>> value_of_need;  // index into `values`
};

struct Floors {
  std::vector<AttributeWalk> walks;
  /// [need p][need c]: least time to go on with c right after p. Only attributes that both state are certain, since
  /// what p leaves unset may stand at anything; with fewer attributes changed fewer tasks are called. Empty: too many
  /// needs.
  std::vector<std::vector<Time<>>> follow;
};

Floors floors(const SequenceProblem&, const WorkNet&);

/// No way to finish from here takes less. `thorough` spends time on every need, however many there are.
Time<> least_to_come(const Floors&, MountedStates&, const WorkNet&, const Progress&, std::uint32_t state,
                     bool thorough = false);

}  // namespace seambook
