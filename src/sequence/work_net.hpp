// A sequence problem in the form the searches read: operations share distinct needs, precedence stands as neighbour
// lists, and what is mounted is a number whose changes are priced once and remembered.
#pragma once

#include <cstdint>
#include <map>
#include <unordered_map>
#include <vector>

#include "sequence/sequence.hpp"

namespace seambook {

using Order = std::vector<std::uint32_t>;  // operations as indices into the problem

struct WorkNet {
  std::vector<std::uint32_t> need_of;                     // per operation, an index into `needs`
  std::vector<Attributes> needs;                          // distinct, in order of first appearance, all slots present
  std::vector<std::vector<std::uint32_t>> before, after;  // per operation, sorted, each neighbour once
  std::vector<std::uint32_t>
      twin;  // the first operation with the same need and neighbours: which of them goes first is all one
};

WorkNet work_net(const SequenceProblem&);
/// Sorts the neighbour lists, drops repeats and names the twins: the last step of making a net.
void finish_neighbours(WorkNet&);

struct Mounting {
  Time<> cost{};
  std::uint32_t state = 0;  // mounted afterwards
};

/// Mounted states by number, in order of discovery. The start is state 0.
struct MountedStates {
  const SetupModel& model;
  std::vector<Attributes> states;
  std::map<Attributes, std::uint32_t> numbers;
  std::unordered_map<std::uint64_t, Mounting> known;  // (state, need) packed; looked up, never walked
};

MountedStates mounted_states(const SequenceProblem&);
Mounting mount(MountedStates&, const WorkNet&, std::uint32_t state, std::uint32_t need);
Time<> change_total(MountedStates&, const WorkNet&, const Order&);

/// How far work has come.
struct Progress {
  std::vector<std::uint8_t> done;          // per operation
  std::vector<std::uint32_t> waiting_for;  // per operation: predecessors not done
  std::vector<std::uint32_t> left;         // per need: operations not done
  std::size_t remaining = 0;
};

Progress nothing_done(const WorkNet&);
/// Requires: `operation` is ready.
void perform(const WorkNet&, Progress&, std::uint32_t operation);
inline bool ready(const Progress& progress, std::uint32_t operation) {
  return progress.done[operation] == 0 && progress.waiting_for[operation] == 0;
}

}  // namespace seambook
