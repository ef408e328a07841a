// What a day brought: who is away, what is down, what arrived, is under way, done, released, in a hurry or blocked.
// Names of the rate book and of the jobs are indices; operations (`job/weldment/joint/step`) stay words with their
// places, for the schedule knows which there are.
#pragma once

#include <span>

#include "read/day_text.hpp"
#include "resolve/job.hpp"

namespace seambook {

struct Absence {
  std::size_t welder = 0;
  Moment from, until;
  std::string why;
};
struct StationDown {
  std::size_t station = 0;
  Moment from, until;
  std::string why;
};
struct Arrival {
  std::size_t job = 0;
  std::optional<std::size_t> weldment;  // of the job; absent: all of them
  Moment at;
};
/// An operation, as the plan names it.
struct NamedOperation {
  std::string name;
  Place place;
};
struct StartedWork {
  NamedOperation operation;
  Moment at;
  std::optional<std::size_t> station;  // absent: away from the shop
  std::optional<std::size_t> welder;
};
struct DoneWork {
  NamedOperation operation;
  Moment start, finish;
  std::optional<std::size_t> station;  // absent: away from the shop
  std::optional<std::size_t> welder;
};
/// A hold point that was looked at and let go.
struct Release {
  std::size_t job = 0, joint = 0;
  std::optional<std::size_t> hold;  // of the joint's holds; absent: all of them
  std::string by;
  std::optional<Moment> at;
};
struct Rush {
  std::size_t job = 0;
  std::optional<Date> due;
  std::optional<std::chrono::minutes> due_at;
  std::optional<double> late_weight;
};
/// One of operation, joint, weldment or the whole job.
struct DayBlock {
  std::optional<NamedOperation> operation;
  std::size_t job = 0;  // of what is not an operation
  std::optional<std::size_t> weldment, joint;
  std::string why;
};
struct DayPin {
  NamedOperation operation;
  Pin pin;
};
struct DayOvertime {
  Date date;
  std::size_t shift = 0;
};
/// What stands mounted at a station now, in place of what the rate book says.
struct MountedNow {
  std::size_t station = 0;
  std::vector<std::pair<std::string, std::string>> mounted;  // attribute, value
};

struct Day {
  std::vector<Absence> absent;
  std::vector<StationDown> down;
  std::vector<Arrival> arrived;
  std::vector<StartedWork> started;
  std::vector<DoneWork> done;
  std::vector<Release> released;
  std::vector<Rush> rush;
  std::vector<DayBlock> blocked;
  std::vector<DayPin> pinned;
  std::vector<DayOvertime> overtime;
  std::vector<MountedNow> mounted;
};

/// Nothing when the file has errors; they are in `diagnostics`.
std::optional<Day> resolve_day(const DayText&, const RateBook&, std::span<const Job>, Diagnostics& diagnostics);

}  // namespace seambook
