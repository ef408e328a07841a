// Which passes a check is about.
#include <fmt/format.h>

#include <algorithm>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

template <class T>
bool none_or_has(const std::vector<T>& list, const T& value) {
  return list.empty() || std::find(list.begin(), list.end(), value) != list.end();
}

/// True when `word` begins like one of the list. Nothing begins like a word that is not there.
bool none_or_begins(const std::vector<std::string>& list, const std::string& word) {
  return list.empty() || (!word.empty() && std::any_of(list.begin(), list.end(), [&](const std::string& beginning) {
           return word.starts_with(beginning);
         }));
}

bool one_admits(const std::vector<std::string>& groups, const std::string& group) {
  return std::any_of(groups.begin(), groups.end(), [&](const std::string& g) { return group_admits(g, group); });
}

const Filler* filler_of(const PassSeen& seen) {
  return seen.procedure.filler ? &seen.of.book.fillers[*seen.procedure.filler] : nullptr;
}

std::string gas_group_of(const PassSeen& seen) {
  return seen.procedure.gas ? gas_group(seen.of.book.gases[*seen.procedure.gas].designation) : "";
}

bool filler_in_scope(const CheckScope& scope, const PassSeen& seen) {
  const Filler* filler = filler_of(seen);
  if (filler == nullptr) return scope.forms.empty() && scope.fillers.empty() && !scope.diameter;
  return none_or_has(scope.forms, filler->form) && none_or_begins(scope.fillers, filler->classification) &&
         (!scope.diameter || within(*scope.diameter, Length<>{filler->diameter.si.value}));
}

}  // namespace

double thinner_of(const Joint& joint) { return least(joint.thickness.si.value, joint.thickness_second.si.value); }

double leg_of(const Joint& joint) {
  const bool from_throat = joint.leg.si.source == no_source;
  return from_throat ? leg_of_throat(Length<>{joint.throat.si.value}).si : joint.leg.si.value;
}

bool in_scope(const CheckScope& scope, const PassSeen& seen) {
  const Joint& joint = seen.of.joint;
  const BaseMetal& metal = seen.of.book.base_metals[joint.base_metal];
  return none_or_has(scope.processes, seen.process.number) && none_or_has(scope.welds, joint.weld) &&
         none_or_has(scope.positions, joint.position) && none_or_has(scope.base_metals, metal.name) &&
         none_or_has(scope.transfers, seen.procedure.transfer) &&
         none_or_has(scope.polarities, seen.procedure.polarity) && none_or_begins(scope.gases, gas_group_of(seen)) &&
         (scope.groups.empty() || one_admits(scope.groups, metal.group)) &&
         !one_admits(scope.except_groups, metal.group) && filler_in_scope(scope, seen) &&
         (!scope.thickness || within(*scope.thickness, Length<>{thinner_of(joint)}));
}

std::string facts_in_words(const CheckScope& scope, const PassSeen& seen) {
  const Joint& joint = seen.of.joint;
  const BaseMetal& metal = seen.of.book.base_metals[joint.base_metal];
  std::string facts = "process " + seen.process.number;
  const auto add = [&](bool wanted, const std::string& fact) {
    if (wanted) facts += ", " + fact;
  };
  add(!scope.polarities.empty(), "polarity " + seen.procedure.polarity);
  if (seen.procedure.gas && !scope.gases.empty())
    add(true, fmt::format("gas {} (group {})", seen.of.book.gases[*seen.procedure.gas].name, gas_group_of(seen)));
  if (const Filler* filler = filler_of(seen); filler != nullptr && !scope.fillers.empty())
    add(true, fmt::format("filler {} ({})", filler->name, filler->classification));
  add(!scope.transfers.empty(), "transfer " + seen.procedure.transfer);
  add(!scope.welds.empty(), std::string(weld_word(joint.weld)));
  add(scope.thickness.has_value(), "thickness " + shown(thinner_of(joint), unit::mm, terms_of(seen)));
  add(!scope.groups.empty() || !scope.except_groups.empty() || !scope.base_metals.empty(),
      fmt::format("base metal {} (group {})", metal.name, metal.group));
  return facts;
}

}  // namespace seambook
