#include "sequence/free_work.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <queue>
#include <utility>

namespace seambook {

namespace {

constexpr std::size_t most_values_compared = 128;  // the comparison of all triples is cubic

using AttributeSet = std::vector<std::size_t>;

std::vector<bool> set_by(const WorkNet& net, std::size_t attribute) {
  std::vector<bool> needs;
  for (const Attributes& need : net.needs) needs.push_back(need.slots[attribute].has_value());
  return needs;
}

/// Attributes that call a task of one name belong together: the task is paid once for both.
std::vector<AttributeSet> sets_sharing_tasks(const SetupModel& model) {
  const std::size_t count = model.attributes.size();
  std::vector<std::size_t> set_of(count);
  for (std::size_t a = 0; a < count; ++a) set_of[a] = a;
  std::map<std::string, std::size_t> caller;
  for (const ChangeTask& task : model.tasks) {
    const std::size_t other = caller.emplace(task.name, task.attribute).first->second;
    const std::size_t from = set_of[task.attribute], to = set_of[other];
    for (std::size_t& set : set_of) set = set == from ? to : set;
  }
  std::vector<AttributeSet> sets(count);
  for (std::size_t a = 0; a < count; ++a) sets[set_of[a]].push_back(a);
  std::erase_if(sets, [](const AttributeSet& set) { return set.empty(); });
  return sets;
}

bool set_together(const WorkNet& net, const AttributeSet& set) {
  for (const std::size_t a : set)
    if (set_by(net, a) != set_by(net, set.front())) return false;
  return true;
}

/// Sets of attributes that the same needs set stand together: comparing whole bundles leaves fewer stepping stones.
std::vector<std::vector<AttributeSet>> bundles_of(const SetupModel& model, const WorkNet& net) {
  std::vector<std::vector<AttributeSet>> result;
  std::map<std::vector<bool>, std::size_t> joined;
  for (AttributeSet set : sets_sharing_tasks(model)) {
    std::erase_if(set, [&](std::size_t a) { return set_by(net, a) == std::vector<bool>(net.needs.size()); });
    if (set.empty()) continue;
    if (!set_together(net, set)) {
      result.push_back({set});
      continue;
    }
    const auto [at, fresh] = joined.emplace(set_by(net, set.front()), result.size());
    if (fresh)
      result.push_back({set});
    else
      result[at->second].push_back(set);
  }
  return result;
}

void find_stepping_stones(AttributeGroup& group, const SetupModel& model, const std::vector<Attributes>& values) {
  const std::size_t count = values.size();
  std::vector<std::vector<Time<>>> cost(count);
  for (std::size_t x = 0; x < count; ++x)
    for (std::size_t z = 0; z < count; ++z) cost[x].push_back(change(model, values[x], values[z]).duration);
  group.cheaper_by.resize(count);
  for (std::uint32_t y = 0; y < count; ++y)
    for (std::uint32_t x = 0; x < count; ++x)
      for (std::uint32_t z = 0; z < count; ++z)
        if (cost[x][z] > cost[x][y] + cost[y][z]) group.cheaper_by[y].emplace_back(x, z);
}

/// Where every change of an attribute calls the same tasks, whatever the values, going by a third value spares nothing:
/// each attribute that differs between the ends changes on one of the two ways.
bool each_change_alike(const SetupModel& model, const AttributeSet& set) {
  return std::ranges::all_of(model.tasks, [&](const ChangeTask& task) {
    return (task.from.empty() && task.to.empty()) || std::ranges::find(set, task.attribute) == set.end();
  });
}

AttributeGroup group_of(const SetupModel& model, const WorkNet& net, const AttributeSet& set) {
  AttributeGroup group;
  std::vector<Attributes> values;
  std::map<Attributes, std::uint32_t> numbers;
  for (const Attributes& need : net.needs) {
    Attributes value;
    value.slots.resize(need.slots.size());
    for (const std::size_t a : set) value.slots[a] = need.slots[a];
    if (value == Attributes{std::vector<std::optional<std::uint32_t>>(need.slots.size())}) {
      group.value_of_need.emplace_back();
      continue;
    }
    const auto [at, fresh] = numbers.emplace(value, static_cast<std::uint32_t>(values.size()));
    if (fresh) values.push_back(value);
    group.value_of_need.emplace_back(at->second);
  }
  group.values = values.size();
  const bool alike = each_change_alike(model, set);
  group.together = set_together(net, set) && (alike || values.size() <= most_values_compared);
  if (group.together && alike)
    group.cheaper_by.resize(values.size());
  else if (group.together)
    find_stepping_stones(group, model, values);
  return group;
}

/// Per group and value the number of needs with work left.
using ValuesToCome = std::vector<std::vector<std::uint32_t>>;

ValuesToCome values_to_come(const std::vector<AttributeGroup>& groups, const Progress& progress) {
  ValuesToCome coming;
  for (const AttributeGroup& group : groups) {
    std::vector<std::uint32_t>& count = coming.emplace_back(group.values);
    for (std::size_t need = 0; need < progress.left.size(); ++need)
      if (progress.left[need] > 0 && group.value_of_need[need]) ++count[*group.value_of_need[need]];
  }
  return coming;
}

bool never_a_stepping_stone(const AttributeGroup& group, const std::vector<std::uint32_t>& coming,
                            std::uint32_t value) {
  if (group.together) {
    for (const auto& [x, z] : group.cheaper_by[value])
      if (coming[x] > 0 && coming[z] > 0) return false;
    return true;
  }
  for (std::uint32_t other = 0; other < coming.size(); ++other)
    if (other != value && coming[other] > 0) return false;
  return true;
}

std::vector<bool> free_needs(const std::vector<AttributeGroup>& groups, MountedStates& mounted, const WorkNet& net,
                             const Progress& progress, std::uint32_t state) {
  const ValuesToCome coming = values_to_come(groups, progress);
  std::vector<bool> free(net.needs.size());
  for (std::uint32_t need = 0; need < net.needs.size(); ++need) {
    if (progress.left[need] == 0 || mount(mounted, net, state, need).state != state) continue;
    free[need] = true;
    for (std::size_t g = 0; g < groups.size(); ++g)
      if (const auto value = groups[g].value_of_need[need])
        free[need] = free[need] && never_a_stepping_stone(groups[g], coming[g], *value);
  }
  return free;
}

}  // namespace

std::vector<AttributeGroup> attribute_groups(const SetupModel& model, const WorkNet& net) {
  std::vector<AttributeGroup> groups;
  for (const std::vector<AttributeSet>& parts : bundles_of(model, net)) {
    AttributeSet whole;
    for (const AttributeSet& part : parts) whole.insert(whole.end(), part.begin(), part.end());
    AttributeGroup bundle = group_of(model, net, whole);
    if (bundle.together || parts.size() == 1)
      groups.push_back(std::move(bundle));
    else  // too many values to compare: what no part of the bundle goes by, the bundle does not
      for (const AttributeSet& part : parts) groups.push_back(group_of(model, net, part));
  }
  return groups;
}

std::vector<bool> needs_always_free(const std::vector<AttributeGroup>& groups, const WorkNet& net) {
  std::vector<bool> free(net.needs.size(), true);
  for (const AttributeGroup& group : groups)
    for (std::size_t need = 0; need < net.needs.size(); ++need)
      if (const auto value = group.value_of_need[need])
        free[need] = free[need] && (group.together ? group.cheaper_by[*value].empty() : group.values == 1);
  return free;
}

void do_free_work(const std::vector<AttributeGroup>& groups, MountedStates& mounted, const WorkNet& net,
                  Progress& progress, std::uint32_t state, Order* performed) {
  const auto count = static_cast<std::uint32_t>(net.need_of.size());
  for (bool again = true; again;) {  // finished work may have been the last that made other work a stepping stone
    again = false;
    const std::vector<bool> free = free_needs(groups, mounted, net, progress, state);
    std::priority_queue<std::uint32_t, std::vector<std::uint32_t>, std::greater<>> queue;
    for (std::uint32_t o = 0; o < count; ++o)
      if (ready(progress, o) && free[net.need_of[o]]) queue.push(o);
    while (!queue.empty()) {
      const std::uint32_t operation = queue.top();
      queue.pop();
      perform(net, progress, operation);
      if (performed != nullptr) performed->push_back(operation);
      for (const std::uint32_t next : net.after[operation])
        if (ready(progress, next) && free[net.need_of[next]]) queue.push(next);
      again = true;
    }
  }
}

}  // namespace seambook
