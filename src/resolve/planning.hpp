// What a job, its weldments and joints say to the planner beyond what they cost: when they may begin and must be done,
// what holds them, what leaves the shop, what makes work on them dangerous. Nothing here moves a price.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "basics/diagnostics.hpp"
#include "basics/units.hpp"
#include "text/clock_words.hpp"

namespace seambook {

/// After which work of a joint somebody must look before it goes on.
enum class HoldAt : std::uint8_t { fit_up, root, complete };
/// A hold point stops the work until it is released; a witness point may be waived by who was called.
struct Hold {
  std::string what;  // `root visual`
  HoldAt at = HoldAt::complete;
  bool witness = false;
};

/// Where, when or by whom the planner wants it done; each may be left out.
struct Pin {
  std::optional<std::size_t> station, welder;  // of the rate book
  std::optional<Moment> start;
};

struct JointPlanning {
  std::vector<Hold> holds;
  std::optional<Pin> pinned;
  std::optional<Moment> ready;  // from when on; the latest of joint, weldment and job counts
  std::optional<std::string> blocked;
  bool qualified = false;        // only a welder who is qualified in date may weld it; else it is warned of
  std::optional<Length<>> tube;  // outside diameter of the tube that is welded, where the joint states a length
};

/// Work away from the shop: either out and back, or how long it takes.
struct OutsideWork {
  std::string what;  // `stress relief`
  Place place;
  std::vector<std::size_t> after, before;  // joints of the job, those of this weldment alone
  std::optional<Moment> out, back;         // both or none
  std::optional<std::chrono::minutes> time;
};

/// Hollow bodies: whether gas can have stayed in it.
enum class Vessel : std::uint8_t { none, fresh, closed, used };

struct WeldmentPlanning {
  std::optional<Moment> ready;
  std::optional<std::string> blocked;
  std::vector<std::size_t> after;     // weldments of the job that must be welded before
  std::optional<std::int64_t> split;  // pieces in one sub-batch of a lot; absent: the whole lot together
  std::int64_t crew = 1;              // persons at once: minutes on the clock are labour over crew
  std::optional<Length<>> largest;    // largest dimension
  std::vector<OutsideWork> outside;
  Vessel vessel = Vessel::none;
  std::optional<std::string> gas_free;  // the note that says so
  bool confined = false;
  std::optional<std::string> attendant;  // who stays outside a confined space
  std::vector<std::size_t> lifted_on;    // joints of the job that are its lifting lugs
};

struct JobPlanning {
  std::optional<std::chrono::minutes> due_at;  // of Job::due; absent: the end of that day's last shift
  double late_weight = 1;                      // of a minute late
  std::vector<std::string> after_jobs;         // names of jobs that must be done before
  std::optional<Moment> ready;
  std::optional<std::string> blocked;
};

}  // namespace seambook
