// Floors under the change time that is still to come, from what is mounted and which units have been done.
// Two floors that never exceed the true remaining minimum, a quick one and a closer one.
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

using AttributeWalks = std::vector<AttributeWalk>;

AttributeWalks attribute_walks(const SequenceProblem&, const WorkNet&);
/// The quick floor: the sum over the attributes.
Time<> walks_to_come(const AttributeWalks&, const Attributes& mounted, const Progress&);

/// What the units cost to go through one after the other.
struct UnitChain {
  /// [u * units + v]: least time to go on with v right after u; infinity when precedence forbids it, directly or
  /// because another unit must come between. Only attributes that both needs state are certain, since what u leaves
  /// unset may stand at anything; with fewer attributes changed fewer tasks are called. Empty: too many units.
  std::vector<Time<>> follow;
  std::vector<Time<>> leaving;  // per unit a charge for going on from it, see `chain_to_come`
  Time<> second_start{};        // a charge for each beginning but one
};

/// `known` is the change time of some order. The charges are set so that the floor at the start is high.
UnitChain unit_chain(MountedStates&, const WorkNet&, Time<> known);

/// The closer floor; absent when there are too many units.
///
/// What is left is a chain: a first unit, ready now and entered from what is mounted, and then each unit once, right
/// after another. Its arcs form an arborescence over the units left in which the start and every unit but the last is
/// left exactly once. So charging each unit for being left, and each beginning, and taking the charges of all but the
/// last unit and of one beginning off again, changes nothing for a chain, while an arborescence that branches is
/// charged more (Held and Karp 1970). The cheapest charged arborescence is a floor, whatever the charges are.
std::optional<Time<>> chain_to_come(const UnitChain&, MountedStates&, const WorkNet&, const Progress&,
                                    std::uint32_t state);

}  // namespace seambook
