// Which work may be done at once because it needs no change and doing it now can never cost more later.
// That is not true of every operation that needs no change: without the triangle inequality a late operation can be a
// cheap stepping stone (carbon steel to aluminium to stainless may cost less than carbon steel to stainless).
#pragma once

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

#include "sequence/work_net.hpp"

namespace seambook {

/// Attributes whose changes are priced apart from all others.
struct AttributeGroup {
  std::vector<std::optional<std::uint32_t>> value_of_need;  // what a need mounts in this group
  std::size_t values = 0;
  /// The attributes are set together or not at all, so the group behaves as one attribute.
  bool together = true;
  /// Per value y the pairs (x, z) with cost(x, z) > cost(x, y) + cost(y, z): going by y is cheaper than going straight.
  std::vector<std::vector<std::pair<std::uint32_t, std::uint32_t>>> cheaper_by;
};

std::vector<AttributeGroup> attribute_groups(const SetupModel&, const WorkNet&);

/// Per need whether its work is free whenever the need is mounted, whatever else is still to come.
std::vector<bool> needs_always_free(const std::vector<AttributeGroup>&, const WorkNet&);

/// Does all ready work that needs nothing beyond what is mounted, and for which that is never worse, in input order;
/// what becomes ready by it too. Appends what it did to `performed` when given.
///
/// Why never worse. Let O be ready, everything it needs mounted, and S any way to finish that does O later. Move O to
/// the front of S. Precedence still holds, and O itself costs nothing there and mounts nothing new. Where O stood in S,
/// in each group that O sets, the value before it was x (what is mounted now, that is O's own y, or the value of work
/// done since) and the next value is z (of work still to do) or none. S paid cost(x, y) + cost(y, z); now cost(x, z) is
/// paid. This is no more when x = y, when there is no z, or unless (x, z) is one of y's `cheaper_by` pairs; both x and
/// z belong to work not yet done, so only pairs that are both still to come count. Groups share no task, so the sum
/// over groups is no more either. A group whose attributes are not set together qualifies only when all its remaining
/// work asks for the same, since then it changes no more.
void do_free_work(const std::vector<AttributeGroup>&, MountedStates&, const WorkNet&, Progress&, std::uint32_t state,
                  Order* performed);

}  // namespace seambook
