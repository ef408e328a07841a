#include <algorithm>

#include "sequence/sequence.hpp"

namespace seambook {

namespace {

using Slot = std::optional<std::uint32_t>;

Slot slot_of(const Attributes& attributes, std::size_t index) {
  return index < attributes.slots.size() ? attributes.slots[index] : Slot{};
}

bool admits(const std::vector<std::uint32_t>& values, std::uint32_t value) {
  return values.empty() || std::find(values.begin(), values.end(), value) != values.end();
}

bool called(const ChangeTask& task, Slot mounted, Slot needed) {
  if (!needed || mounted == needed || !admits(task.to, *needed)) return false;
  return mounted ? admits(task.from, *mounted) : task.from_nothing;
}

/// Adds a called task. Entries with one name are one task that several attributes may call: it is done once, and when
/// the entries differ in duration the longest counts.
void add_once(const SetupModel& model, std::vector<std::size_t>& tasks, std::size_t task) {
  const auto same_name = [&](std::size_t other) { return model.tasks[other].name == model.tasks[task].name; };
  const auto twin = std::find_if(tasks.begin(), tasks.end(), same_name);
  if (twin == tasks.end())
    tasks.push_back(task);
  else if (model.tasks[*twin].duration < model.tasks[task].duration)
    *twin = task;
}

}  // namespace

Change change(const SetupModel& model, const Attributes& mounted, const Attributes& needs) {
  Change result;
  for (std::size_t a = 0; a < needs.slots.size(); ++a)
    if (needs.slots[a] && needs.slots[a] != slot_of(mounted, a)) result.attributes.push_back(a);
  if (result.attributes.empty()) return result;
  for (std::size_t task = 0; task < model.tasks.size(); ++task) {
    const std::size_t a = model.tasks[task].attribute;
    if (called(model.tasks[task], slot_of(mounted, a), slot_of(needs, a))) add_once(model, result.tasks, task);
  }
  std::sort(result.tasks.begin(), result.tasks.end());
  for (const std::size_t task : result.tasks) result.duration = result.duration + model.tasks[task].duration;
  return result;
}

Attributes mounted_after(const Attributes& mounted, const Attributes& needs) {
  Attributes after = mounted;
  after.slots.resize(std::max(mounted.slots.size(), needs.slots.size()));
  for (std::size_t a = 0; a < needs.slots.size(); ++a)
    if (needs.slots[a]) after.slots[a] = needs.slots[a];
  return after;
}

}  // namespace seambook
