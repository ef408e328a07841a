// Operations in the order that loses least time to set-ups, at one station.
// A change from the mounted state to what an operation needs calls change tasks; their union is summed, so the cost has
// a direction and need not obey the triangle inequality. What an operation leaves unset stays mounted.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "basics/digraph.hpp"
#include "basics/units.hpp"

namespace seambook {

/// What can be mounted or prepared at a station, one slot each; a value is an index into `values`, absent = not stated.
struct Attributes {
  std::vector<std::optional<std::uint32_t>> slots;  // parallel to SetupModel::attributes
  friend bool operator==(const Attributes&, const Attributes&) = default;
  friend auto operator<=>(const Attributes&, const Attributes&) = default;
};

/// Entries with one name are one task that several attributes may call: done once, for the longest of their durations.
struct ChangeTask {
  std::string name;
  Time<> duration;
  std::size_t attribute = 0;        // called when this attribute changes to another value ...
  std::vector<std::uint32_t> from;  // ... away from one of these (empty: from any value)
  std::vector<std::uint32_t> to;    // ... to one of these (empty: to any value)
  bool from_nothing = true;         // also called when nothing was mounted (cold start)
};

struct SetupModel {
  std::vector<std::string> attributes;           // `process`, `filler`, `gas`, `cleanliness` ...
  std::vector<std::vector<std::string>> values;  // words of each attribute's values, parallel to `attributes`
  std::vector<ChangeTask> tasks;
};

/// One piece of work that is not interrupted by a set-up.
struct Operation {
  std::string name;  // `job/weldment/joint/step`, unique
  Attributes needs;
};

struct Change {
  std::vector<std::size_t> tasks;       // indices into SetupModel::tasks, in the model's order, each once
  std::vector<std::size_t> attributes;  // those that differ from what was mounted
  Time<> duration{};
};

/// Work to go from `mounted` to what `needs` asks; attributes that `needs` leaves unset call nothing.
Change change(const SetupModel&, const Attributes& mounted, const Attributes& needs);
/// The state after an operation: what it set, else what stood before.
Attributes mounted_after(const Attributes& mounted, const Attributes& needs);

struct Step {
  std::size_t operation = 0;
  Change change;
  std::string reason;  // why here, in words
};

struct Sequence {
  std::vector<Step> steps;
  Time<> change_total{};
  Time<> bound{};  // no order takes less; equal to change_total when `proved`
  bool proved = false;
  Time<>
      file_order_total{};  // set-up time of the order in the input (its topological repair when that breaks precedence)
  bool file_order_allowed = true;
};

struct SequenceProblem {
  SetupModel model;
  Attributes start;  // the station's stated state before the first operation
  std::vector<Operation> operations;
  std::vector<Edge> precedence;  // no cycle
};

/// Work allowed to the search; counted, not timed, so that the same input gives the same bytes.
struct SearchBudget {
  std::size_t states = 400'000;  // of the exact search; without any, the bound is the quick one
  std::size_t moves = 200'000;   // of the improvement search
};

Sequence sequence(const SequenceProblem&, const SearchBudget& = {});
/// Times a given order (a permutation that respects precedence) with its changes; reasons are empty.
Sequence time_order(const SequenceProblem&, std::span<const std::size_t> order);
/// Every way an order of operations breaks the problem: missing, repeated, unknown or too early. Written apart from the
/// search.
std::vector<std::string> violations(const SequenceProblem&, std::span<const std::size_t> order);

}  // namespace seambook
