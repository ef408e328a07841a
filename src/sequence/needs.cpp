#include "sequence/needs.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace seambook {
namespace {

std::size_t attribute_number(std::string_view name) {
  const auto at = std::find(set_up_attributes.begin(), set_up_attributes.end(), name);
  return static_cast<std::size_t>(at - set_up_attributes.begin());
}

}  // namespace

NeedWords needs_in_words(const RateBook& book, const Job& job, std::size_t joint_number, std::size_t group) {
  const Joint& joint = job.joints[joint_number];
  const Procedure& procedure = book.procedures[joint.passes[group].procedure];
  NeedWords words;
  words[0] = book.processes[procedure.process].number;
  if (procedure.filler) {
    const Filler& filler = book.fillers[*procedure.filler];
    words[1] = filler.name;
    if (filler.form == FillerForm::solid_wire || filler.form == FillerForm::cored_wire) {
      words[2] = fmt::format("{} {:.1f}", filler.form == FillerForm::solid_wire ? "solid" : "cored",
                             filler.diameter.si.value * 1e3);
    }
  }
  if (procedure.gas) words[3] = book.gases[*procedure.gas].name;
  words[4] = book.base_metals[joint.base_metal].cleanliness;
  if (procedure.beam_power.si.source != no_source) words[5] = procedure.name;
  words[6] = job.name;
  words[7] = job.name + "/" + job.weldments[joint.weldment].name;
  return words;
}

NeedWords needs_of_finish(const RateBook& book, const Job& job, std::size_t joint) {
  NeedWords words;
  words[4] = book.base_metals[job.joints[joint].base_metal].cleanliness;
  return words;
}

NeedWords stated_words(const std::vector<std::pair<std::string, std::string>>& mounted) {
  NeedWords words;
  for (const auto& [attribute, value] : mounted) words[attribute_number(attribute)] = value;
  return words;
}

NeedNumbers::NeedNumbers(SetupModel& model) : model_(model) {
  for (const std::string_view name : set_up_attributes) model_.attributes.emplace_back(name);
  model_.values.resize(set_up_attributes.size());
}

std::uint32_t NeedNumbers::number(std::size_t attribute, const std::string& word) {
  const auto [at, added] = known_[attribute].try_emplace(word, static_cast<std::uint32_t>(known_[attribute].size()));
  if (added) model_.values[attribute].push_back(word);
  return at->second;
}

Attributes NeedNumbers::numbers(const NeedWords& words) {
  Attributes out{std::vector<std::optional<std::uint32_t>>(words.size())};
  for (std::size_t a = 0; a < words.size(); ++a) {
    if (!words[a].empty()) out.slots[a] = number(a, words[a]);
  }
  return out;
}

ChangeTask NeedNumbers::task(const std::string& name, const std::string& attribute,
                             const std::vector<std::string>& from, const std::vector<std::string>& to, Time<> time,
                             bool cold) {
  ChangeTask task{name, time, attribute_number(attribute), {}, {}, cold};
  for (const std::string& word : from) task.from.push_back(number(task.attribute, word));
  for (const std::string& word : to) task.to.push_back(number(task.attribute, word));
  return task;
}

}  // namespace seambook
