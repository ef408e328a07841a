// Cold cracking and softening: preheat that is not stated or too low, interpass temperature and heat input against
// their limits, and carbon equivalents that contradict each other.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "estimate/findings.hpp"
#include "estimate/preheat.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Certificates round; more than this between two statements of one thing is a slip.
constexpr Ratio<> equivalents_may_differ{0.0002};

std::string shown_temperature(const JointSeen& seen, const Sourced& temperature) {
  return shown(temperature.value, shown_in(seen.book.terms, unit::celsius).unit);
}

}  // namespace

/// Where method B can be computed it decides; elsewhere thickness and carbon equivalent raise the question.
void preheat_question(const JointSeen& seen, Findings& out) {
  if (!hardens(seen.book.base_metals[seen.joint.base_metal].group)) return;
  const AskedPreheat asked = asked_preheat(seen.book, seen.joint, seen.row);
  const JointHeat& heat = seen.joint.heat;
  if (heat.preheat_stated) {
    const Temperature<> stated =
        heat.preheat.si.source != no_source ? Temperature<>{heat.preheat.si.value} : room_of(seen.book);
    constexpr double near = 1;  // kelvin: what method B gives is no more exact
    if (!asked.temperature || *asked.temperature <= room_of(seen.book) || asked.temperature->si <= stated.si + near)
      return;
    return found(out, seen, Level::warning,
                 fmt::format("preheat {} is stated, method B of EN 1011-2 asks for {}",
                             heat.preheat.si.source == no_source ? "none" : shown_temperature(seen, heat.preheat.si),
                             asked_in_words(seen.book, asked)),
                 "too little preheat lets the seam crack when it has cooled; look at the procedure's qualification");
  }
  if (const auto question = preheat_not_stated(seen.book, seen.joint, seen.row))
    found(out, seen, Level::warning, question->words, question->hint);
}

void interpass_below_preheat(const JointSeen& seen, Findings& out) {
  const JointHeat& heat = seen.joint.heat;
  if (heat.preheat.si.source == no_source || heat.interpass_max.si.source == no_source) return;
  if (heat.interpass_max.si.value >= heat.preheat.si.value) return;
  found(out, seen, Level::error,
        fmt::format("the interpass temperature may be {} at most, below the preheat of {}",
                    shown_temperature(seen, heat.interpass_max.si), shown_temperature(seen, heat.preheat.si)),
        "no pass could be welded; one of the two is a slip");
}

void heat_input_limit(const PassSeen& seen, Findings& out) {
  const Sourced& limit = seen.of.joint.heat.heat_input_max.si;
  if (limit.source == no_source || seen.figures.heat_input.si <= limit.value * (1 + whole_tolerance)) return;
  const Unit unit = shown_in(seen.of.book.terms, unit::kJ_per_mm).unit;
  found(out, seen.of, Level::warning,
        fmt::format("procedure {}: heat input {} is more than the {} stated", seen.procedure.name,
                    shown(seen.figures.heat_input, unit), shown(limit.value, unit)),
        "a faster or smaller pass puts less heat in; look at the procedure");
}

/// Stated equivalents against those of the composition: said once for all joints of a steel.
void equivalents_agree(const RateBook& book, const Job& job, const Estimate&, std::vector<Diagnostic>& out) {
  for (std::size_t m = 0; m < book.base_metals.size(); ++m) {
    const Hardening& steel = book.base_metals[m].hardening;
    const auto first =
        std::find_if(job.joints.begin(), job.joints.end(), [&](const Joint& joint) { return joint.base_metal == m; });
    if (!steel.composition || first == job.joints.end()) continue;
    Composition<> shares;
    each_element(steel.shares, shares, [](const char*, const auto& from, auto& to) { to = {from.si.value}; });
    const auto look = [&](std::string_view what, const Known<dim::ratio>& stated, Ratio<> computed) {
      if (stated.si.source == no_source || std::fabs(stated.si.value - computed.si) <= equivalents_may_differ.si)
        return;
      out.push_back(
          {Level::warning, first->place,
           fmt::format("base metal {}: {} is stated as {}, the composition gives {}", book.base_metals[m].name, what,
                       shown(stated.si.value, unit::percent), shown(computed, unit::percent)),
           "the stated one was taken; one of the two is a slip"});
    };
    look("CE", steel.carbon_equivalent, carbon_equivalent(shares));
    look("CET", steel.cet, carbon_equivalent_cet(shares));
  }
}

}  // namespace seambook
