#include "sequence/units.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace seambook {

namespace {

constexpr std::size_t most_closed_over = 8192;  // all ancestors of all operations take 2 x operations^2 bits

using WaitsFor = std::vector<std::uint64_t>;  // a set of operations, comparable

void add(WaitsFor& set, const WaitsFor& other) {
  for (std::size_t w = 0; w < set.size(); ++w) set[w] |= other[w];
}

/// Per operation the operations of other needs that come before it, and what comes before those.
std::vector<WaitsFor> ancestors_of_other_needs(const WorkNet& net, const Order& file_order) {
  const std::size_t count = net.need_of.size(), words = (count + 63) / 64;
  std::vector<WaitsFor> ancestors(count, WaitsFor(words)), waits(count, WaitsFor(words));
  for (const std::uint32_t o : file_order)
    for (const std::uint32_t before : net.before[o]) {
      const std::uint64_t bit = std::uint64_t{1} << (before % 64);
      add(ancestors[o], ancestors[before]);
      ancestors[o][before / 64] |= bit;
      const bool same_need = net.need_of[before] == net.need_of[o];
      add(waits[o], same_need ? waits[before] : ancestors[before]);
      if (!same_need) waits[o][before / 64] |= bit;
    }
  return waits;
}

/// In a net too large for that the direct predecessors will do: fewer operations are joined, none wrongly.
std::vector<WaitsFor> waits_of(const WorkNet& net, const Order& file_order) {
  if (net.need_of.size() <= most_closed_over) return ancestors_of_other_needs(net, file_order);
  std::vector<WaitsFor> waits;
  for (const auto& before : net.before) waits.emplace_back(before.begin(), before.end());
  return waits;
}

void join_neighbours(const WorkNet& net, const std::vector<std::uint32_t>& unit_of, WorkNet& units) {
  units.before.resize(units.need_of.size());
  units.after.resize(units.need_of.size());
  for (std::size_t o = 0; o < unit_of.size(); ++o)
    for (const std::uint32_t next : net.after[o]) {
      if (unit_of[o] == unit_of[next]) continue;
      units.after[unit_of[o]].push_back(unit_of[next]);
      units.before[unit_of[next]].push_back(unit_of[o]);
    }
}

}  // namespace

Units units_of(const WorkNet& net, const std::vector<AttributeGroup>& groups, const Order& file_order) {
  const std::vector<bool> always_free = needs_always_free(groups, net);
  const std::vector<WaitsFor> waits = waits_of(net, file_order);
  Units units;
  std::map<std::pair<std::uint32_t, WaitsFor>, std::uint32_t> joined;
  std::vector<std::uint32_t> unit_of(net.need_of.size());
  for (const std::uint32_t o : file_order) {
    const std::uint32_t need = net.need_of[o];
    auto unit = static_cast<std::uint32_t>(units.members.size());
    if (always_free[need]) unit = joined.emplace(std::pair{need, waits[o]}, unit).first->second;
    if (unit == units.members.size()) {
      units.members.emplace_back();
      units.net.need_of.push_back(need);
    }
    units.members[unit].push_back(o);
    unit_of[o] = unit;
  }
  units.net.needs = net.needs;
  join_neighbours(net, unit_of, units.net);
  finish_neighbours(units.net);
  return units;
}

Order operations_of(const Units& units, const Order& order) {
  Order operations;
  for (const std::uint32_t unit : order)
    operations.insert(operations.end(), units.members[unit].begin(), units.members[unit].end());
  return operations;
}

}  // namespace seambook
