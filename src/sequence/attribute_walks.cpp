#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "sequence/bound.hpp"

namespace seambook {

namespace {

constexpr std::size_t most_values_walked = 9;  // the table has 2^values rows
constexpr Time<> unreached{std::numeric_limits<double>::infinity()};

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
      shortest[set][now] = unreached;
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
  walk.cheapest_arrival.assign(count, unreached);
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

}  // namespace

AttributeWalks attribute_walks(const SequenceProblem& problem, const WorkNet& net) {
  AttributeWalks walks;
  Attributes start = problem.start;
  start.slots.resize(std::max(start.slots.size(), problem.model.attributes.size()));
  const auto share = callers(problem.model);
  for (std::size_t a = 0; a < problem.model.attributes.size(); ++a)
    if (std::any_of(net.needs.begin(), net.needs.end(), [&](const Attributes& n) { return n.slots[a].has_value(); }))
      walks.push_back(attribute_walk(problem, net, start, share, a));
  return walks;
}

Time<> walks_to_come(const AttributeWalks& walks, const Attributes& mounted, const Progress& progress) {
  Time<> total{};
  for (const AttributeWalk& walk : walks) total = total + walk_to_come(walk, mounted, progress);
  return total;
}

}  // namespace seambook
