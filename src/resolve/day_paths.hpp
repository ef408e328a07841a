// Names in a day file become indices: jobs, weldments and joints by their paths, stations, welders and shifts.
#pragma once

#include <span>

#include "resolve/day.hpp"
#include "resolve/names.hpp"

namespace seambook {

/// Where the names lead, and where faults go.
struct DayNames {
  const RateBook& book;
  std::span<const Job> jobs;
  Diagnostics& diagnostics;
};

/// A job, one of its weldments or one of its joints.
struct JobPath {
  std::size_t job = 0;
  std::optional<std::size_t> weldment, joint;
};

/// `job`, `job/weldment` or `job/weldment/joint`, as it stands; nothing when it is none of these.
std::optional<JobPath> match_path(std::span<const Job>, std::string_view path);
// These refuse what they do not find.
std::optional<std::size_t> find_job(const DayNames&, const Word&);
std::optional<JobPath> find_weldment_path(const DayNames&, const Word&);
std::optional<JobPath> find_joint_path(const DayNames&, const Word&);
/// 0 where it is refused, and where reading has refused it.
std::size_t find_station(const DayNames&, const std::optional<Word>&);
/// Nothing where none is named.
std::optional<std::size_t> find_welder(const DayNames&, const std::optional<Word>&);

}  // namespace seambook
