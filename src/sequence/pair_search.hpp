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

/// Descends from `known`, then builds layers of growing width until one drops nothing or the budget is used, then
/// descends again. The budget's states are those looked at in all layers, its moves the arcs that descent may try.
PairResult pair_search(const PairNet&, const PairOrder& known, const SearchBudget&, std::uint32_t seed = 1);

/// The units as pairs, node 0 what is mounted at the start and node u + 1 unit u; nothing when what is mounted hangs on
/// more than the last unit, because some need leaves an attribute unset that another sets.
std::optional<PairProblem> pairs_of(MountedStates&, const WorkNet&);

}  // namespace seambook
