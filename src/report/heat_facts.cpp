#include "report/heat_facts.hpp"

namespace seambook {

std::vector<HeatFact> heat_facts(const RateBook& book, const Joint& joint, const RowFigures<double>& row) {
  const HeatFigures<double>& heat = row.joint.heat;
  const HeatShape shape = heat_shape(book, joint);
  std::vector<HeatFact> facts;
  if (!shape.hardens) return facts;
  const auto number = [&](const char* key, double si, const Unit& unit) { facts.push_back({key, si / unit.si}); };
  if (shape.has_equivalent()) number("carbon_equivalent_percent", heat.carbon_equivalent.si, unit::percent);
  if (shape.has_cet()) number("cet_percent", heat.cet.si, unit::percent);
  if (shape.composition) number("pcm_percent", heat.crack_parameter.si, unit::percent);
  number("combined_thickness_mm", heat.combined_thickness.si, unit::mm);
  std::vector<double> inputs;
  for (const PassFigures<double>& pass : row.passes) inputs.push_back(pass.heat_input.si / unit::kJ_per_mm.si);
  facts.push_back({"heat_input_kJ_per_mm", inputs});
  const AskedPreheat asked = asked_preheat(book, joint, row);
  if (asked.temperature) {
    const bool needed = *asked.temperature > room_of(book);
    facts.push_back({"preheat_needed", needed});
    if (needed) number("preheat_asked_C", asked.temperature->si, unit::celsius);
  } else {
    facts.push_back({"preheat_not_computed", asked.lacks});
  }
  if (joint.heat.preheat.si.source != no_source)
    number("preheat_C", joint.heat.preheat.si.value, unit::celsius);
  else if (joint.heat.preheat_stated)
    facts.push_back({"preheat", std::string("none")});
  if (joint.heat.interpass_max.si.source != no_source)
    number("interpass_max_C", joint.heat.interpass_max.si.value, unit::celsius);
  return facts;
}

}  // namespace seambook
