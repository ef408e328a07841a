#include "resolve/day_paths.hpp"

namespace seambook {
namespace {

/// What follows `name/`; nothing when the path does not begin so.
std::optional<std::string_view> below(std::string_view path, std::string_view name) {
  if (!path.starts_with(name) || path.size() <= name.size() || path[name.size()] != '/') return std::nullopt;
  return path.substr(name.size() + 1);
}

std::optional<JobPath> match_in_job(const Job& job, std::size_t index, std::string_view path) {
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const Weldment& weldment = job.weldments[w];
    if (path == weldment.name) return JobPath{index, w, {}};
    const std::optional<std::string_view> id = below(path, weldment.name);
    for (std::size_t j = 0; id && j < weldment.joint_count; ++j)
      if (job.joints[weldment.first_joint + j].id == *id) return JobPath{index, w, weldment.first_joint + j};
  }
  return std::nullopt;
}

/// All paths of joints or of weldments, for the nearest one; of long lists none, for each search costs.
std::vector<std::string> paths_known(std::span<const Job> jobs, bool joints) {
  constexpr std::size_t with_hint = 500;
  std::vector<std::string> paths;
  for (const Job& job : jobs) {
    for (const Weldment& weldment : job.weldments) {
      const std::string path = job.name + "/" + weldment.name;
      if (!joints) paths.push_back(path);
      for (std::size_t j = 0; joints && j < weldment.joint_count; ++j)
        paths.push_back(path + "/" + job.joints[weldment.first_joint + j].id);
      if (paths.size() > with_hint) return {};
    }
  }
  return paths;
}

std::optional<JobPath> refused_path(const DayNames& names, const Word& word, bool joints) {
  const std::vector<std::string> paths = paths_known(names.jobs, joints);
  refuse_unknown(names.diagnostics, word, joints ? "joint" : "weldment", {paths.begin(), paths.end()});
  return std::nullopt;
}

}  // namespace

std::optional<JobPath> match_path(std::span<const Job> jobs, std::string_view path) {
  for (std::size_t j = 0; j < jobs.size(); ++j) {
    if (path == jobs[j].name) return JobPath{j, {}, {}};
    const std::optional<std::string_view> rest = below(path, jobs[j].name);
    if (const auto found = rest ? match_in_job(jobs[j], j, *rest) : std::nullopt) return found;
  }
  return std::nullopt;
}

std::optional<std::size_t> find_job(const DayNames& names, const Word& word) {
  std::vector<std::string_view> known;
  known.reserve(names.jobs.size());
  for (std::size_t j = 0; j < names.jobs.size(); ++j) {
    if (names.jobs[j].name == word.text) return j;
    known.push_back(names.jobs[j].name);
  }
  refuse_unknown(names.diagnostics, word, "job", known);
  return std::nullopt;
}

std::optional<JobPath> find_weldment_path(const DayNames& names, const Word& word) {
  const std::optional<JobPath> path = match_path(names.jobs, word.text);
  return path && path->weldment && !path->joint ? path : refused_path(names, word, false);
}

std::optional<JobPath> find_joint_path(const DayNames& names, const Word& word) {
  const std::optional<JobPath> path = match_path(names.jobs, word.text);
  return path && path->joint ? path : refused_path(names, word, true);
}

std::size_t find_station(const DayNames& names, const std::optional<Word>& word) {
  if (!word) return 0;
  return find_name(names.diagnostics, names.book.stations, &Station::name, *word, "station").value_or(0);
}

std::optional<std::size_t> find_welder(const DayNames& names, const std::optional<Word>& word) {
  if (!word) return std::nullopt;
  return find_name(names.diagnostics, names.book.welders, &Welder::stamp, *word, "welder");
}

}  // namespace seambook
