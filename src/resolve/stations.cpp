#include "resolve/stations.hpp"

#include <algorithm>

namespace seambook {

bool station_takes(const RateBook& book, const Station& station, const Joint& joint, std::size_t process) {
  if (std::find(station.processes.begin(), station.processes.end(), process) == station.processes.end()) return false;
  const std::string& group = book.base_metals[joint.base_metal].group;
  return std::any_of(station.groups.begin(), station.groups.end(),
                     [&](const std::string& admitted) { return group_admits(admitted, group); });
}

std::string laser_lacks(const Station& station) {
  std::string lacks;
  const auto add = [&](bool ready, std::string_view what) {
    if (!ready) lacks += (lacks.empty() ? "" : ", ") + std::string(what);
  };
  add(station.controlled_area.value_or(false), "no controlled area");
  add(station.safety_officer.value_or(false), "no safety officer");
  add(station.eyewear.has_value(), "no rated eyewear");
  return lacks;
}

bool by_laser(const Procedure& procedure) { return procedure.beam_power.si.source != no_source; }

}  // namespace seambook
