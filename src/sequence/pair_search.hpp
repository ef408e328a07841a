// An order whose cost is a sum over pairs, sought by descent and by layers in turn, with a floor and perhaps a proof.
#pragma once

#include "sequence/pair_net.hpp"
#include "sequence/sequence.hpp"
#include "sequence/work_net.hpp"

namespace seambook {

struct PairResult {
  PairOrder order;
  Time<> bound{};
  bool proved = false;
};

/// Descends a little from `known`, tries to prove a small net by all its states, then descends hot, builds layers of
/// growing width, descends hot several times, uniting what is best in the ends, and descends warm from the best; ends
/// as soon as the floor is reached. The budget's moves are the
/// arcs that descents may try, its states those looked at in layers: more of a small net, fewer of a large one, for the
/// same time. The same seed and budget give the same order.
PairResult pair_search(const PairNet&, const PairOrder& known, const SearchBudget&, std::uint32_t seed = 1);

/// The units as pairs, node 0 what is mounted at the start and node u + 1 unit u; nothing when what is mounted hangs on
/// more than the last unit, because some need leaves an attribute unset that another sets, or for more than 4096 units.
std::optional<PairProblem> pairs_of(MountedStates&, const WorkNet&);

}  // namespace seambook
