#include "schedule/task_ways.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "resolve/stations.hpp"
#include "schedule/instants.hpp"
#include "schedule/set_up_table.hpp"

namespace seambook {
namespace {

/// Somebody who can lead a task.
struct Lead {
  std::size_t welder = 0;
  Instant last_finish = Instant::max();
};

/// Whether a weldment of its mass and size can be worked on at a station: what can be turned by hand needs no crane.
bool fits(const RateBook& book, const Station& station, const Weldment& weldment) {
  const Mass<> by_hand = book.handling.empty() ? Mass<>{} : book.handling.front().up_to.value_or(Mass<>{});
  if (station.crane && weldment.mass.si.source != no_source) {
    const Mass<> mass{weldment.mass.si.value};
    if (mass > *station.crane && mass > by_hand) return false;
  }
  return !station.largest || !weldment.plan.largest || *weldment.plan.largest <= *station.largest;
}

std::vector<std::size_t> stations_for(const RateBook& book, const Job& job, const Joint& joint, std::size_t process,
                                      bool laser) {
  std::vector<std::size_t> stations;
  for (std::size_t s = 0; s < book.stations.size(); ++s)
    if (station_takes(book, book.stations[s], joint, process) &&
        fits(book, book.stations[s], job.weldments[joint.weldment]) &&
        (!laser || laser_lacks(book.stations[s]).empty()))
      stations.push_back(s);
  return stations;
}

std::vector<Lead> everybody(const RateBook& book) {
  std::vector<Lead> leads;
  leads.reserve(book.welders.size());
  for (std::size_t w = 0; w < book.welders.size(); ++w) leads.push_back({w, Instant::max()});
  return leads;
}

std::vector<Lead> qualified_leads(const RateBook& book, const Joint& joint, std::size_t process, const Date& day,
                                  std::string& why_not) {
  std::vector<Lead> leads;
  const std::vector<WelderFit> fits = welders_for(book, joint, process, day);
  for (std::size_t w = 0; w < fits.size(); ++w) {
    if (fits[w].qualified)
      leads.push_back({w, fits[w].until ? midnight(plus_days(*fits[w].until, 1)) : Instant::max()});
    else
      why_not += fmt::format("{}{}: {}", why_not.empty() ? "" : "; ", book.welders[w].stamp, fits[w].reason);
  }
  if (leads.empty() && !joint.plan.qualified) return everybody(book);
  return leads;
}

/// People at once: the lead and helpers. Two are any two; of more, the lead and those that follow in the book.
std::vector<std::vector<std::size_t>> crews(std::size_t welders, std::size_t lead, std::size_t size) {
  std::vector<std::vector<std::size_t>> out;
  if (size > welders) return out;
  if (size <= 1) return {{lead}};
  if (size == 2) {
    for (std::size_t w = 0; w < welders; ++w)
      if (w != lead) out.push_back({lead, w});
    return out;
  }
  out.emplace_back();
  for (std::size_t k = 0; k < size; ++k) out.back().push_back((lead + k) % welders);
  return out;
}

std::vector<Way> ways_at(const RateBook& book, const std::vector<std::size_t>& stations, const std::vector<Lead>& leads,
                         std::size_t crew, Time<> labour) {
  std::vector<Way> ways;
  const Seconds time = whole_seconds((1.0 / static_cast<double>(crew)) * labour);
  for (const std::size_t station : stations)
    for (const Lead& lead : leads)
      for (const std::vector<std::size_t>& people : crews(book.welders.size(), lead.welder, crew))
        ways.push_back({station, people, time, Instant::min(), lead.last_finish});
  return ways;
}

/// Work that asks for no qualification: finish, inspection, and fit-up where that is left to everybody.
bool by_anybody(const WorkToPlan& plan, const StepRun& run) {
  return std::all_of(run.steps.begin(), run.steps.end(), [&](const TaskStep& step) {
    return plan.anybody_welds || step.kind == StepKind::finish || step.kind == StepKind::inspect ||
           (plan.anybody_fits && step.kind == StepKind::fit);
  });
}

}  // namespace

std::vector<Way> run_ways(const WorkToPlan& plan, const Job& job, std::size_t number, const StepRun& run,
                          std::string& why_not) {
  const RateBook& book = plan.book;
  const Joint& joint = job.joints[number];
  const auto of_welding = [](const TaskStep& s) { return s.kind != StepKind::finish && s.kind != StepKind::inspect; };
  const auto welding = std::find_if(run.steps.begin(), run.steps.end(), of_welding);
  const std::size_t group = welding == run.steps.end() ? 0 : welding->group;
  const Procedure& procedure = book.procedures[joint.passes[group].procedure];
  const std::size_t process = procedure.process;
  const bool laser = by_laser(procedure) && welding != run.steps.end();
  const std::vector<std::size_t> stations = stations_for(book, job, joint, process, laser);
  if (stations.empty())
    why_not =
        fmt::format("no station takes process {}, base-metal group {}, this mass and size",
                    process_word(book.processes[process].number, book.terms), book.base_metals[joint.base_metal].group);
  if (stations.empty()) return {};
  const std::vector<Lead> leads =
      by_anybody(plan, run) ? everybody(book) : qualified_leads(book, joint, process, date_of(plan.start), why_not);
  const auto crew = static_cast<std::size_t>(job.weldments[joint.weldment].plan.crew);
  std::vector<Way> ways = ways_at(book, stations, leads, crew, run.labour);
  if (ways.empty() && why_not.empty()) why_not = "the crew asked for is larger than the shop's welders";
  if (joint.plan.pinned) keep_pinned(ways, *joint.plan.pinned);
  if (ways.empty() && why_not.empty()) why_not = "what it is pinned to cannot do it";
  return ways;
}

std::vector<Way> parts_ways(const RateBook& book, const Job& job, std::size_t number, Time<> labour,
                            std::string& why_not) {
  const Weldment& weldment = job.weldments[number];
  std::vector<std::size_t> stations;
  for (std::size_t j = weldment.first_joint; j < weldment.first_joint + weldment.joint_count; ++j) {
    const Joint& joint = job.joints[j];
    const std::size_t process = book.procedures[joint.passes.front().procedure].process;
    for (const std::size_t s : stations_for(book, job, joint, process, false))
      if (std::find(stations.begin(), stations.end(), s) == stations.end()) stations.push_back(s);
  }
  std::sort(stations.begin(), stations.end());
  std::vector<Way> ways =
      ways_at(book, stations, everybody(book), static_cast<std::size_t>(weldment.plan.crew), labour);
  if (ways.empty()) why_not = "no station takes its joints, or the crew asked for is larger than the shop's welders";
  return ways;
}

void keep_pinned(std::vector<Way>& ways, const Pin& pin) {
  std::erase_if(ways, [&](const Way& way) {
    return (pin.station && way.station != pin.station) || (pin.welder && way.people.front() != *pin.welder);
  });
  if (pin.start)
    for (Way& way : ways) way.first_start = instant_of(*pin.start);
}

}  // namespace seambook
