// When and with what the shop works, as its author wrote it: shifts, overtime, what stations can take and are ready
// for, what welders are qualified for.
#pragma once

#include "read/written.hpp"

namespace seambook {

inline constexpr std::string_view weekday_words[] = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};
inline constexpr std::string_view tested_welds[] = {"fillet", "groove"};
inline constexpr std::string_view tested_forms[] = {"plate", "tube"};

struct BreakText {
  Place place;
  std::optional<WrittenClock> at;
  Maybe<dim::time> time;
};
/// `{name: day, days: [Mon, Tue], start: 06:30, end: 15:00, breaks: [{at: 09:00, time: 15 min}], clear_up: 10 min}`.
struct ShiftText {
  Place place;
  std::optional<Word> name;
  std::vector<Word> days;
  std::optional<WrittenClock> start, end;
  std::vector<BreakText> breaks;
  Maybe<dim::time> clear_up;
  Evidence evidence;
};
struct OvertimeText {
  Place place;
  std::vector<Word> shifts;
  Maybe<dim::time> most;
  Maybe<dim::ratio> premium;
  Evidence evidence;
};

struct EyewearText {
  Place place;
  std::optional<Whole> wavelength;  // nm
  Maybe<dim::ratio> optical_density;
};
/// A change that is never made at a station: `{when: cleanliness, from: [carbon], to: [stainless]}`.
struct NeverText {
  Place place;
  std::optional<Word> when;
  std::vector<Word> from, to;
};
struct StationText {
  Place place;
  std::optional<Word> name, title;
  std::vector<Word> processes, groups;
  struct Mounted {
    Word attribute, value;
  };
  std::vector<Mounted> mounted;    // state before the first work of a job
  std::vector<Mounted> end_state;  // what must stand mounted when the plan ends
  std::optional<Flag> controlled_area, safety_officer;
  std::optional<EyewearText> eyewear;
  Maybe<dim::mass> crane;
  Maybe<dim::length> largest;
  std::vector<NeverText> never;
  std::vector<Word> shifts;
  Evidence evidence;
};

struct QualificationText {
  Place place;
  std::optional<Word> process, basis_note;
  std::vector<Word> groups, positions, welds, forms;
  MaybeSpan<dim::length> thickness, diameter;  // a single diameter is the smallest one
  std::optional<WrittenDate> until, last_used;
};
struct WelderText {
  Place place;
  std::optional<Word> stamp, grade;
  std::vector<Word> shifts;
  std::vector<QualificationText> qualifications;
};

}  // namespace seambook
