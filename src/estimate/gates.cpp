#include "estimate/gates.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "estimate/preheat.hpp"
#include "resolve/names.hpp"
#include "resolve/qualified.hpp"
#include "resolve/stations.hpp"

namespace seambook {
namespace {

using Gates = std::vector<Gate>;

/// A laser that no ready station can take; a joint that no station takes at all is refused elsewhere.
void laser_gate(const GatedWork& work, std::size_t j, Gates& out) {
  const Joint& joint = work.job.joints[j];
  for (const PassGroup& pass : joint.passes) {
    const Procedure& procedure = work.book.procedures[pass.procedure];
    if (!by_laser(procedure)) continue;
    std::vector<std::string> lacking;
    bool ready = false;
    for (const Station& station : work.book.stations) {
      if (!station_takes(work.book, station, joint, procedure.process)) continue;
      const std::string lacks = laser_lacks(station);
      ready = ready || lacks.empty();
      lacking.push_back(fmt::format("{}: {}", station.name, lacks));
    }
    if (ready || lacking.empty()) continue;
    return out.push_back({GateKind::laser, joint.weldment, j,
                          fmt::format("no station is stated ready for the laser; {}", joined_with_and(lacking)),
                          "state 'controlled_area: true', 'safety_officer: true' and 'eyewear' when all is so"});
  }
}

void qualified_gate(const GatedWork& work, std::size_t j, Gates& out) {
  const Joint& joint = work.job.joints[j];
  if (!joint.plan.qualified) return;
  const std::vector<WelderFit> fits = welders_for(work.book, joint, work.date);
  std::vector<std::string> reasons;
  reasons.reserve(fits.size());
  for (std::size_t w = 0; w < fits.size(); ++w) {
    if (fits[w].qualified) return;
    reasons.push_back(fmt::format("{} ({})", work.book.welders[w].stamp, fits[w].reason));
  }
  out.push_back({GateKind::qualified, joint.weldment, j,
                 fmt::format("a qualified welder is demanded, and on {} there is none", iso(work.date)),
                 reasons.empty() ? "the rate book lists no welders" : joined_with_and(reasons)});
}

void preheat_gate(const GatedWork& work, std::size_t j, Gates& out) {
  const Joint& joint = work.job.joints[j];
  const auto question = preheat_not_stated(work.book, joint, work.estimate.joints[j]);
  if (question) out.push_back({GateKind::preheat, joint.weldment, j, question->words, question->hint});
}

void vessel_gate(const GatedWork& work, std::size_t w, Gates& out) {
  const WeldmentPlanning& plan = work.job.weldments[w].plan;
  if ((plan.vessel != Vessel::closed && plan.vessel != Vessel::used) || plan.gas_free) return;
  out.push_back({GateKind::vessel,
                 w,
                 {},
                 fmt::format("the vessel {}, and no note says that it is free of gas",
                             plan.vessel == Vessel::used ? "was in use" : "is closed"),
                 "have it cleaned, vented and measured, then state 'gas_free' with the note's number"});
}

void confined_gate(const GatedWork& work, std::size_t w, Gates& out) {
  const WeldmentPlanning& plan = work.job.weldments[w].plan;
  if (!plan.confined || plan.attendant) return;
  out.push_back({GateKind::confined,
                 w,
                 {},
                 "the space is confined, and nobody is named who stays outside",
                 "state 'attendant' with a name or stamp"});
}

bool released(const GatedWork& work, std::size_t joint, std::size_t hold) {
  if (work.day == nullptr) return false;
  const std::vector<Release>& list = work.day->released;
  return std::any_of(list.begin(), list.end(), [&](const Release& release) {
    return release.job == work.job_in_day && release.joint == joint && release.hold.value_or(hold) == hold;
  });
}

void lift_gate(const GatedWork& work, std::size_t w, Gates& out) {
  for (const std::size_t lug : work.job.weldments[w].plan.lifted_on) {
    const Joint& joint = work.job.joints[lug];
    const std::vector<Hold>& holds = joint.plan.holds;
    const auto stops = [](const Hold& hold) { return !hold.witness; };
    if (std::none_of(holds.begin(), holds.end(), stops))
      out.push_back({GateKind::lift, w, lug, fmt::format("it is lifted on {}, which has no hold point", joint.id),
                     "add for example 'hold: before lift' to this joint"});
    for (std::size_t h = 0; h < holds.size(); ++h)
      if (stops(holds[h]) && !released(work, lug, h))
        out.push_back(
            {GateKind::lift, w, lug,
             fmt::format("it must not be lifted on {}: its hold point '{}' is not released", joint.id, holds[h].what),
             "release it in the day file, under 'released'"});
  }
}

}  // namespace

std::vector<Gate> find_gates(const GatedWork& work) {
  Gates out;
  for (std::size_t j = 0; j < work.job.joints.size(); ++j) {
    laser_gate(work, j, out);
    qualified_gate(work, j, out);
    preheat_gate(work, j, out);
  }
  for (std::size_t w = 0; w < work.job.weldments.size(); ++w) {
    vessel_gate(work, w, out);
    confined_gate(work, w, out);
    lift_gate(work, w, out);
  }
  return out;
}

void tell_gates(const std::vector<Gate>& gates, const Job& job, Diagnostics& diagnostics) {
  for (const Gate& gate : gates) {
    const Weldment& weldment = job.weldments[gate.weldment];
    const std::string name =
        gate.joint ? fmt::format("joint {}", job.joints[*gate.joint].id) : fmt::format("weldment {}", weldment.name);
    diagnostics.list.push_back({Level::not_for_the_floor, gate.joint ? job.joints[*gate.joint].place : weldment.place,
                                fmt::format("{}: {}", name, gate.words), gate.hint});
  }
}

}  // namespace seambook
