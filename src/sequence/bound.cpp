#include "sequence/bound.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "sequence/arborescence.hpp"

namespace seambook {

namespace {

constexpr std::size_t most_values_walked = 9;   // the table has 2^values rows
constexpr std::size_t most_needs_paired = 256;  // the table has needs^2 cells
constexpr std::size_t most_needs_spanned = 32;  // beyond, the arborescence costs too much to build for every state
constexpr Time<> never{std::numeric_limits<double>::infinity()};

/// Number of different attributes that call each task name.
std::map<std::string, double> callers(const SetupModel& model) {
  std::map<std::string, std::set<std::size_t>> attributes;
  for (const ChangeTask& task : model.tasks) attributes[task.name].insert(task.attribute);
  std::map<std::string, double> count;
  for (const auto& [name, set] : attributes) count[name] = static_cast<double>(set.size());
  return count;
}

/// The change of one attribute alone, shared tasks counted by their share.
Time<> own_share(const SequenceProblem& problem, const std::map<std::string, double>& share, std::size_t attribute,
                 std::optional<std::uint32_t> from, std::uint32_t to) {
  Attributes mounted, needs;
  mounted.slots.resize(problem.model.attributes.size());
  needs.slots.resize(problem.model.attributes.size());
  mounted.slots[attribute] = from;
  needs.slots[attribute] = to;
  Time<> total{};
  for (const std::size_t task : change(problem.model, mounted, needs).tasks)
    total = total + problem.model.tasks[task].duration / share.at(problem.model.tasks[task].name);
  return total;
}

using CostTable = std::vector<std::vector<Time<>>>;

/// A change may lead through other values on the way, so only the shortest way is a floor.
void close_under_shortest_ways(CostTable& cost) {
  const std::size_t values = cost.front().size();
  for (std::size_t by = 0; by < values; ++by)
    for (auto& row : cost)
      for (std::size_t to = 0; to < values; ++to) row[to] = std::min(row[to], row[by] + cost[by][to]);
}

/// Shortest walk from a value over all of a set, for every set and value (Held and Karp 1962).
CostTable shortest_walks(const CostTable& cost) {
  const std::size_t values = cost.front().size();
  CostTable shortest(std::size_t{1} << values, std::vector<Time<>>(cost.size()));
  for (std::size_t set = 1; set < shortest.size(); ++set)
    for (std::size_t now = 0; now < cost.size(); ++now) {
      shortest[set][now] = never;
      for (std::size_t next = 0; next < values; ++next) {
        const std::size_t bit = std::size_t{1} << next;
        if ((set & bit) != 0)
          shortest[set][now] = std::min(shortest[set][now], cost[now][next] + shortest[set & ~bit][next]);
      }
    }
  return shortest;
}

AttributeWalk attribute_walk(const SequenceProblem& problem, const WorkNet& net, const Attributes& start,
                             const std::map<std::string, double>& share, std::size_t attribute) {
  AttributeWalk walk;
  walk.attribute = attribute;
  std::set<std::uint32_t> used;
  for (const Attributes& need : net.needs)
    if (need.slots[attribute]) used.insert(*need.slots[attribute]);
  if (start.slots[attribute]) used.insert(*start.slots[attribute]);
  walk.values.assign(used.begin(), used.end());
  const std::size_t count = walk.values.size();
  CostTable cost(count + 1, std::vector<Time<>>(count));
  for (std::size_t to = 0; to < count; ++to)
    for (std::size_t from = 0; from <= count; ++from)
      cost[from][to] = own_share(problem, share, attribute,
                                 from < count ? std::optional{walk.values[from]} : std::nullopt, walk.values[to]);
  close_under_shortest_ways(cost);
  walk.cheapest_arrival.assign(count, never);
  const std::size_t sources =
      start.slots[attribute] ? count : count + 1;  // what was once mounted never becomes nothing
  for (std::size_t to = 0; to < count; ++to)
    for (std::size_t from = 0; from < sources; ++from)
      if (from != to) walk.cheapest_arrival[to] = std::min(walk.cheapest_arrival[to], cost[from][to]);
  if (count <= most_values_walked) walk.shortest = shortest_walks(cost);
  for (const Attributes& need : net.needs) {
    walk.value_of_need.emplace_back();
    if (const auto value = need.slots[attribute])
      walk.value_of_need.back() = static_cast<std::uint32_t>(
          std::lower_bound(walk.values.begin(), walk.values.end(), *value) - walk.values.begin());
  }
  return walk;
}

CostTable follow_costs(const SetupModel& model, const WorkNet& net) {
  CostTable follow;
  if (net.needs.size() > most_needs_paired) return follow;
  for (const Attributes& before : net.needs) {
    auto& row = follow.emplace_back();
    for (Attributes certain : net.needs) {
      for (std::size_t a = 0; a < certain.slots.size(); ++a)
        if (!before.slots[a]) certain.slots[a].reset();
      row.push_back(change(model, before, certain).duration);
    }
  }
  return follow;
}

Time<> walk_to_come(const AttributeWalk& walk, const Attributes& mounted, const Progress& progress) {
  const std::size_t count = walk.values.size();
  std::size_t now = count;
  if (const auto value = mounted.slots[walk.attribute])
    now = static_cast<std::size_t>(std::lower_bound(walk.values.begin(), walk.values.end(), *value) -
                                   walk.values.begin());
  std::vector<bool> coming(count);
  for (std::size_t need = 0; need < progress.left.size(); ++need)
    if (progress.left[need] > 0 && walk.value_of_need[need]) coming[*walk.value_of_need[need]] = true;
  std::size_t set = 0;
  Time<> arrivals{};
  for (std::size_t value = 0; value < count; ++value) {
    if (!coming[value] || value == now) continue;
    if (!walk.shortest.empty()) set |= std::size_t{1} << value;
    arrivals = arrivals + walk.cheapest_arrival[value];
  }
  return walk.shortest.empty() ? arrivals : walk.shortest[set][now];
}

/// Each need with work left is begun at some first time from here, either at once (only when some of its work is ready,
/// and then at its true cost from what is mounted) or right after work of another need with work left, which was begun
/// before. So the first arrivals form an arborescence from here over all those needs, and the cheapest one is a floor.
Time<> arrivals_to_come(const Floors& floors, MountedStates& mounted, const WorkNet& net, const Progress& progress,
                        std::uint32_t state) {
  std::vector<std::uint32_t> needs;
  for (std::uint32_t need = 0; need < net.needs.size(); ++need)
    if (progress.left[need] > 0) needs.push_back(need);
  std::vector<bool> can_begin(net.needs.size());
  for (std::uint32_t o = 0; o < net.need_of.size(); ++o)
    if (ready(progress, o)) can_begin[net.need_of[o]] = true;
  CostTable arc(needs.size() + 1, std::vector<Time<>>(needs.size() + 1, never));
  for (std::size_t to = 0; to < needs.size(); ++to) {
    if (can_begin[needs[to]]) arc[0][to + 1] = mount(mounted, net, state, needs[to]).cost;
    for (std::size_t from = 0; from < needs.size(); ++from)
      if (from != to) arc[from + 1][to + 1] = floors.follow[needs[from]][needs[to]];
  }
  return cheapest_arborescence(std::move(arc));
}

}  // namespace

Floors floors(const SequenceProblem& problem, const WorkNet& net) {
  Floors result;
  Attributes start = problem.start;
  start.slots.resize(std::max(start.slots.size(), problem.model.attributes.size()));
  const auto share = callers(problem.model);
  for (std::size_t a = 0; a < problem.model.attributes.size(); ++a)
    if (std::any_of(net.needs.begin(), net.needs.end(), [&](const Attributes& n) { return n.slots[a].has_value(); }))
      result.walks.push_back(attribute_walk(problem, net, start, share, a));
  result.follow = follow_costs(problem.model, net);
  return result;
}

Time<> least_to_come(const Floors& floors, MountedStates& mounted, const WorkNet& net, const Progress& progress,
                     std::uint32_t state, bool thorough) {
  if (progress.remaining == 0) return {};
  Time<> by_attributes{};
  for (const AttributeWalk& walk : floors.walks)
    by_attributes = by_attributes + walk_to_come(walk, mounted.states[state], progress);
  const auto left = std::count_if(progress.left.begin(), progress.left.end(), [](auto n) { return n > 0; });
  if (floors.follow.empty() || (!thorough && static_cast<std::size_t>(left) > most_needs_spanned)) return by_attributes;
  return std::max(by_attributes, arrivals_to_come(floors, mounted, net, progress, state));
}

}  // namespace seambook
