#include "report/setup_facts.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "report/number_text.hpp"
#include "report/task_words.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

bool stated(const Sourced& number) { return number.source != no_source; }

std::string temperature_words(const RateBook& book, const Joint& joint) {
  const JointHeat& heat = joint.heat;
  std::vector<std::string> words;
  const auto degrees = [&](const Sourced& at) { return shown(at.value, unit::celsius, book.terms); };
  if (stated(heat.preheat.si)) words.push_back("preheat " + degrees(heat.preheat.si));
  if (heat.preheat_stated && !stated(heat.preheat.si)) words.emplace_back("no preheat");
  if (!heat.preheat_stated && hardens(book.base_metals[joint.base_metal].group))
    words.emplace_back("preheat not stated");
  if (stated(heat.interpass_max.si)) words.push_back("between passes at most " + degrees(heat.interpass_max.si));
  return joined(words, ", ");
}

/// Joints of a set-up with the tasks that weld them.
template <class F>
void each_welded(const PlannedShop& shop, const PlannedSetUp& set_up, F f) {
  for (const std::size_t at : set_up.tasks) {
    const TaskRef& ref = ref_of(shop, shop.plan.tasks[at]);
    if (const Joint* joint = joint_of(shop, ref))
      for (const std::size_t procedure : procedures_of(shop, ref)) f(*joint, procedure);
  }
}

std::string laser_words(const Station& station) {
  const std::string eyewear = station.eyewear
                                  ? fmt::format("eyewear for {} nm with optical density {:g} or more",
                                                station.eyewear->wavelength_nm, station.eyewear->optical_density)
                                  : std::string("eyewear rated for wavelength and power");
  return "Laser of class 4: the invisible beam harms eye and skin also when reflected. Controlled area closed, "
         "interlock "
         "on, trained persons only, " +
         eyewear + " on everybody inside.";
}

}  // namespace

std::vector<SetUpLine> set_up_lines(const PlannedShop& shop, const PlannedSetUp& set_up) {
  std::vector<SetUpLine> lines;
  each_welded(shop, set_up, [&](const Joint& joint, std::size_t procedure) {
    SetUpLine line{procedure, position_word(joint.position, joint.weld, shop.book.terms),
                   temperature_words(shop.book, joint)};
    const auto same = [&](const SetUpLine& other) {
      return other.procedure == line.procedure && other.position == line.position &&
             other.temperatures == line.temperatures;
    };
    if (std::none_of(lines.begin(), lines.end(), same)) lines.push_back(std::move(line));
  });
  return lines;
}

std::string parameter_text(const Sourced& number, const Unit& metric, Terms terms) {
  return stated(number) ? shown(number.value, metric, terms) : std::string("-");
}

std::string gas_and_flow(const RateBook& book, const Procedure& by) {
  if (!by.gas) return "none";
  const std::string& gas = book.gases[*by.gas].name;
  return stated(by.gas_flow.si) ? gas + ", " + shown(by.gas_flow.si.value, unit::l_per_min, book.terms) : gas;
}

std::string travel_window(const Procedure& by, Terms terms) {
  const Unit unit = shown_in(terms, unit::mm_per_min).unit;
  const auto number = [&](const Sourced& speed) { return figure(speed.value / unit.si, unit.si < 0.01 ? 0 : 1); };
  if (!stated(by.travel_low.si) || !stated(by.travel_high.si))
    return parameter_text(by.travel_speed.si, unit::mm_per_min, terms);
  return fmt::format("{} to {} {}, planned {}", number(by.travel_low.si), number(by.travel_high.si), unit.word,
                     number(by.travel_speed.si));
}

std::string transfer_words(const Procedure& by, Terms terms) {
  if (!stated(by.beam_power.si)) return by.transfer;
  const std::string power = "beam " + shown(by.beam_power.si.value, unit::W);
  return stated(by.scan_width.si) ? power + ", " + shown(by.scan_width.si.value, unit::mm, terms) + " wide" : power;
}

std::string purge_words(const PlannedShop& shop, const PlannedSetUp& set_up) {
  bool purged = false;
  each_welded(shop, set_up, [&](const Joint& joint, std::size_t) { purged = purged || joint.purge; });
  const Allowances& allowances = shop.book.allowances;
  if (!purged || !allowances.purge_gas) return {};
  return fmt::format("Purge with {}, {}, {} before the first pass; measure oxygen before anyone leans in.",
                     shop.book.gases[*allowances.purge_gas].name,
                     parameter_text(allowances.purge_flow.si, unit::l_per_min, shop.book.terms),
                     parameter_text(allowances.purge_per_joint.si, unit::min, shop.book.terms));
}

std::vector<std::string> protection_words(const PlannedShop& shop, const PlannedSetUp& set_up) {
  std::vector<std::string> words;
  const Station& station = shop.book.stations[shop.work.stations[set_up.station]];
  each_welded(shop, set_up, [&](const Joint& joint, std::size_t procedure) {
    if (stated(shop.book.procedures[procedure].beam_power.si)) add_new(words, laser_words(station));
    if (shop.book.base_metals[joint.base_metal].cleanliness == "stainless")
      add_new(words, "Stainless steel: extraction at the seam; brushes, discs and gloves for stainless only.");
    if (stated(joint.heat.preheat.si)) add_new(words, "Preheated parts: gloves and sleeves against heat.");
  });
  for (const std::size_t at : set_up.tasks) {
    const WeldmentPlanning& plan = weldment_of(shop, ref_of(shop, shop.plan.tasks[at])).plan;
    if (plan.confined)
      add_new(words, "Confined space: air measured, ventilated, outside stands " +
                         plan.attendant.value_or("nobody, so do not enter") + ".");
    if (plan.gas_free)
      add_new(words, "Hollow body: gas-free by note " + *plan.gas_free + "; look at it before striking.");
  }
  return words;
}

}  // namespace seambook
