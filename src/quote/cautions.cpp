#include "quote/quote.hpp"

namespace seambook {
namespace {

struct Hazards {
  bool arc = false, beam = false, purge = false, stainless = false, area_not_ready = false;
};

Hazards hazards_of(const RateBook& book, const Job& job) {
  Hazards found;
  for (const Joint& joint : job.joints) {
    found.purge = found.purge || joint.purge;
    found.stainless = found.stainless || book.base_metals[joint.base_metal].cleanliness == "stainless";
    for (const PassGroup& group : joint.passes) {
      const bool beam = book.procedures[group.procedure].beam_power.si.source != no_source;
      (beam ? found.beam : found.arc) = true;
    }
  }
  if (!found.beam) return found;
  // Laser work at a station whose area is not stated ready may be priced, not sent to the floor.
  for (const Station& station : book.stations) {
    for (const std::size_t process : station.processes) {
      const bool laser = book.processes[process].number.starts_with("52");
      found.area_not_ready = found.area_not_ready || (laser && !station.controlled_area.value_or(false));
    }
  }
  return found;
}

}  // namespace

std::vector<std::string> cautions(const RateBook& book, const Job& job) {
  const Hazards found = hazards_of(book, job);
  std::vector<std::string> out;
  if (found.arc) {
    out.emplace_back(
        "Arc welding: ultraviolet and visible radiation, fume, fire, electric shock, hot parts. Filter to the current, "
        "screens, "
        "extraction at the arc, a fire watch where it is called for, dry gloves and sound cables.");
  }
  if (found.beam) {
    out.emplace_back(
        "Laser welding: class 4 beam, invisible, dangerous to eye and skin also when reflected. Controlled area with "
        "barriers and "
        "interlock, eyewear rated for wavelength and power, an appointed laser safety officer, trained persons only, "
        "extraction.");
  }
  if (found.area_not_ready) {
    out.emplace_back(
        "A laser station of the rate book is not stated to have its controlled area ready: do not send laser work to "
        "the floor.");
  }
  if (found.stainless) {
    out.emplace_back(
        "Stainless steel: fume holds chromium(VI) and nickel compounds; keep carbon-steel tools and dust away.");
  }
  if (found.purge)
    out.emplace_back("Purging: argon displaces air; ventilate, and measure oxygen before anyone enters or leans in.");
  out.emplace_back(
      "This paper claims no conformity with any code. Local rules, the applicable standards, and qualified procedures "
      "and persons decide.");
  return out;
}

}  // namespace seambook
