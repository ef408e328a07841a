// What a day brought, as its author wrote it: who is away, what is down, what arrived, is under way, done or released.
#pragma once

#include "read/written.hpp"

namespace seambook {

struct AbsentText {
  Place place;
  std::optional<Word> welder, why;
  std::optional<WrittenDay> from, until;
};
struct DownText {
  Place place;
  std::optional<Word> station, why;
  std::optional<WrittenDay> from, until;
};
struct ArrivedText {
  Place place;
  std::optional<Word> job, weldment;
  std::optional<WrittenDay> at;
};
/// Operations are named `job/weldment/joint/step`, as the plan prints them; joints `job/weldment/joint`.
struct StartedText {
  Place place;
  std::optional<Word> operation, station, welder;
  std::optional<WrittenMoment> at;
};
struct DoneText {
  Place place;
  std::optional<Word> operation, station, welder;
  std::optional<WrittenMoment> start, finish;
};
struct ReleasedText {
  Place place;
  std::optional<Word> joint, what, by;
  std::optional<WrittenMoment> at;
};
struct RushText {
  Place place;
  std::optional<Word> job;
  std::optional<WrittenDay> due;
  Maybe<dim::ratio> late_weight;
};
struct BlockedText {
  Place place;
  std::optional<Word> operation, joint, weldment, job, why;
};
struct DayPinText {
  Place place;
  std::optional<Word> operation, station, welder;
  std::optional<WrittenMoment> start;
};
struct DayOvertimeText {
  Place place;
  std::optional<WrittenDate> date;
  std::optional<Word> shift;
};
struct MountedText {
  Place place;
  std::optional<Word> station, process, filler, feed, gas, cleanliness, program, job, weldment;
};

struct DayText {
  Place place;
  std::vector<AbsentText> absent;
  std::vector<DownText> down;
  std::vector<ArrivedText> arrived;
  std::vector<StartedText> started;
  std::vector<DoneText> done;
  std::vector<ReleasedText> released;
  std::vector<RushText> rush;
  std::vector<BlockedText> blocked;
  std::vector<DayPinText> pinned;
  std::vector<DayOvertimeText> overtime;
  std::vector<MountedText> mounted;
};

/// Reads a registered file: a table where its name ends in `.csv`, else YAML. Faults go to `diagnostics`; what could be
/// read is given even so.
DayText read_day_file(std::uint32_t file, Diagnostics& diagnostics);

}  // namespace seambook
