#include "sequence/work.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/stations.hpp"
#include "sequence/edges.hpp"
#include "sequence/needs.hpp"

namespace seambook {
namespace {

const Procedure& procedure_of(const RateBook& book, const Job& job, const OperationRef& ref) {
  return book.procedures[job.joints[ref.joint].passes[ref.group].procedure];
}

/// The station of each operation of a job.
std::vector<std::optional<std::size_t>> assign(const RateBook& book, const Job& job,
                                               std::span<const OperationRef> refs) {
  std::vector<std::optional<std::size_t>> first(refs.size());
  for (std::size_t s = 0; s < book.stations.size(); ++s) {
    bool all = true;
    for (std::size_t i = 0; i < refs.size(); ++i) {
      const bool can =
          station_takes(book, book.stations[s], job.joints[refs[i].joint], procedure_of(book, job, refs[i]).process);
      if (can && !first[i]) first[i] = s;
      all = all && can;
    }
    if (all) return std::vector<std::optional<std::size_t>>(refs.size(), s);
  }
  return first;
}

void fill_problem(const RateBook& book, std::span<const Job> jobs, StationWork& work) {
  NeedNumbers numbers(work.problem.model);
  work.problem.start = numbers.numbers(stated_words(book.stations[work.station].mounted));
  for (const OperationRef& ref : work.refs) {
    const Job& job = jobs[ref.job];
    work.problem.operations.push_back(
        {operation_name(job, ref.joint, ref.group), numbers.numbers(needs_in_words(book, job, ref.joint, ref.group))});
  }
  for (const ChangeRule& rule : book.change_tasks)
    work.problem.model.tasks.push_back(
        numbers.task(rule.name, rule.attribute, rule.from, rule.to, {rule.time.si.value}, rule.cold));
}

/// Operations of all jobs with the precedence between them: pass groups of a joint in turn, and `after`.
struct Work {
  std::vector<OperationRef> refs;
  std::vector<Edge> before;
  std::vector<std::size_t> station;  // of each operation
};

void add_job(const Job& job, std::size_t number, Work& work) {
  std::vector<std::size_t> first(job.joints.size());
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    first[j] = work.refs.size();
    for (std::size_t g = 0; g < job.joints[j].passes.size(); ++g) {
      if (g > 0) work.before.emplace_back(work.refs.size() - 1, work.refs.size());
      work.refs.push_back({number, j, g});
    }
  }
  for (const auto& [earlier, later] : job.after) {
    work.before.emplace_back(first[earlier] + job.joints[earlier].passes.size() - 1, first[later]);
  }
}

bool assign_all(const RateBook& book, std::span<const Job> jobs, Work& work, Diagnostics& diagnostics) {
  bool found_all = true;
  for (std::size_t start = 0; start < work.refs.size();) {
    std::size_t end = start;
    while (end < work.refs.size() && work.refs[end].job == work.refs[start].job) ++end;
    const Job& job = jobs[work.refs[start].job];
    const auto stations = assign(book, job, std::span(work.refs).subspan(start, end - start));
    for (std::size_t i = start; i < end; ++i) {
      const Joint& joint = job.joints[work.refs[i].joint];
      work.station.push_back(stations[i - start].value_or(0));
      if (stations[i - start]) continue;
      found_all = false;
      diagnostics.error(joint.place,
                        fmt::format("no station takes joint '{}': process {}, base-metal group {}", joint.id,
                                    book.processes[procedure_of(book, job, work.refs[i]).process].number,
                                    book.base_metals[joint.base_metal].group),
                        "add the process and the group to a station of the rate book");
    }
    start = end;
  }
  return found_all;
}

/// The numbers of a station's operations among themselves.
std::vector<std::optional<std::size_t>> numbers_at(const Work& work, std::size_t station) {
  std::vector<std::optional<std::size_t>> numbers(work.refs.size());
  std::size_t count = 0;
  for (std::size_t i = 0; i < numbers.size(); ++i)
    if (work.station[i] == station) numbers[i] = count++;
  return numbers;
}

/// Orders of several stations may wait for each other in a ring, though none does alone.
bool stations_wait_in_a_ring(const Work& work, const std::vector<StationWork>& stations) {
  std::vector<Edge> all = work.before;
  for (const StationWork& at : stations) {
    std::vector<std::size_t> global;
    for (std::size_t i = 0; i < work.refs.size(); ++i) {
      if (work.station[i] == at.station) global.push_back(i);
    }
    for (std::size_t k = 1; k < at.sequence.steps.size(); ++k) {
      all.emplace_back(global[at.sequence.steps[k - 1].operation], global[at.sequence.steps[k].operation]);
    }
  }
  return !find_cycle(work.refs.size(), all).empty();
}

}  // namespace

std::string operation_name(const Job& job, std::size_t joint, std::size_t group) {
  return fmt::format("{}/{}/{}/{}", job.name, job.weldments[job.joints[joint].weldment].name, job.joints[joint].id,
                     group + 1);
}

std::optional<std::vector<StationWork>> sequence_jobs(const RateBook& book, std::span<const Job> jobs,
                                                      Diagnostics& diagnostics, const SearchBudget& budget) {
  Work work;
  for (std::size_t n = 0; n < jobs.size(); ++n) add_job(jobs[n], n, work);
  if (!assign_all(book, jobs, work, diagnostics)) return std::nullopt;
  std::vector<std::vector<std::size_t>> followers(work.refs.size());
  for (const auto& [earlier, later] : work.before) followers[earlier].push_back(later);
  std::vector<StationWork> out;
  for (std::size_t s = 0; s < book.stations.size(); ++s) {
    StationWork at;
    at.station = s;
    for (std::size_t i = 0; i < work.refs.size(); ++i) {
      if (work.station[i] == s) at.refs.push_back(work.refs[i]);
    }
    if (at.refs.empty()) continue;
    fill_problem(book, jobs, at);
    at.problem.precedence = edges_among(followers, numbers_at(work, s));
    at.sequence = sequence(at.problem, budget);
    out.push_back(std::move(at));
  }
  if (stations_wait_in_a_ring(work, out)) {
    diagnostics.error(
        {}, "the orders of the stations wait for each other; planning over several stations at once is not built yet",
        "loosen 'after', or plan the jobs apart");
    return std::nullopt;
  }
  return out;
}

}  // namespace seambook
