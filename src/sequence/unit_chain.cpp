#include <algorithm>
#include <cmath>
#include <limits>

#include "sequence/arborescence.hpp"
#include "sequence/bound.hpp"

namespace seambook {

namespace {

constexpr std::size_t most_units_chained = 256;  // the table of pairs has units^2 cells
constexpr int charge_rounds = 80, charge_rounds_of_many = 20;
constexpr std::size_t many_units = 64;
constexpr Time<> forbidden{std::numeric_limits<double>::infinity()};

using Before = std::vector<std::vector<bool>>;  // [u][v]: u must be done before v, directly or not

Before all_before(const WorkNet& net) {
  const std::size_t units = net.need_of.size();
  Before before(units, std::vector<bool>(units));
  Progress progress = nothing_done(net);
  while (progress.remaining > 0)
    for (std::uint32_t v = 0; v < units; ++v) {
      if (!ready(progress, v)) continue;
      perform(net, progress, v);
      for (const std::uint32_t direct : net.before[v])
        for (std::size_t u = 0; u < units; ++u)
          if (u == direct || before[u][direct]) before[u][v] = true;
    }
  return before;
}

/// Whether v can come right after u.
bool may_follow(const Before& before, std::size_t u, std::size_t v) {
  if (u == v || before[v][u]) return false;
  if (!before[u][v]) return true;
  for (std::size_t w = 0; w < before.size(); ++w)
    if (before[u][w] && before[w][v]) return false;
  return true;
}

Time<> certain_change(const SetupModel& model, const Attributes& from, Attributes to) {
  for (std::size_t a = 0; a < to.slots.size(); ++a)
    if (!from.slots[a]) to.slots[a].reset();
  return change(model, from, to).duration;
}

std::vector<Time<>> follow_costs(const SetupModel& model, const WorkNet& net) {
  const std::size_t units = net.need_of.size(), needs = net.needs.size();
  const Before before = all_before(net);
  std::vector<Time<>> of_needs;
  for (const Attributes& from : net.needs)
    for (const Attributes& to : net.needs) of_needs.push_back(certain_change(model, from, to));
  std::vector<Time<>> follow;
  for (std::size_t u = 0; u < units; ++u)
    for (std::size_t v = 0; v < units; ++v)
      follow.push_back(may_follow(before, u, v) ? of_needs[net.need_of[u] * needs + net.need_of[v]] : forbidden);
  return follow;
}

/// Charges are whole parts of a second that binary numbers hold, so that their sums with whole seconds are exact.
Time<> in_ticks(Time<> time) { return {std::round(time.si * 1024) / 1024}; }

struct ChargedTree {
  std::vector<std::uint32_t> units;  // unit i is node i + 1
  Arborescence tree;
  Time<> floor{};
};

ChargedTree charged_tree(const UnitChain& chain, MountedStates& mounted, const WorkNet& net, const Progress& progress,
                         std::uint32_t state) {
  ChargedTree result;
  for (std::uint32_t u = 0; u < net.need_of.size(); ++u)
    if (progress.done[u] == 0) result.units.push_back(u);
  const std::size_t nodes = result.units.size() + 1;
  Arcs arcs{nodes, std::vector<Time<>>(nodes * nodes, forbidden)};
  Time<> charged = chain.second_start, least_last = forbidden;
  for (std::size_t i = 1; i < nodes; ++i) {
    const std::uint32_t u = result.units[i - 1];
    if (ready(progress, u)) arcs.cost[i] = mount(mounted, net, state, net.need_of[u]).cost + chain.second_start;
    charged = charged + chain.leaving[u];
    if (net.after[u].empty()) least_last = std::min(least_last, chain.leaving[u]);
    for (std::size_t j = 1; j < nodes; ++j)
      arcs.cost[i * nodes + j] = chain.follow[u * net.need_of.size() + result.units[j - 1]] + chain.leaving[u];
  }
  result.tree = cheapest_arborescence(std::move(arcs));
  result.floor = result.tree.cost - charged + least_last;
  return result;
}

/// Raises the charge of units from which the tree goes on more than once and lowers it where it does not go on
/// (subgradient steps, shortened when they do not help); the best charges seen are kept.
void set_charges(UnitChain& chain, MountedStates& mounted, const WorkNet& net, Time<> known) {
  const Progress progress = nothing_done(net);
  UnitChain best = chain;
  Time<> best_floor{};
  double reach = 1;
  const int rounds = net.need_of.size() > many_units ? charge_rounds_of_many : charge_rounds;
  for (int round = 0; round < rounds; ++round) {
    const ChargedTree now = charged_tree(chain, mounted, net, progress, 0);
    if (now.floor > best_floor) {
      best_floor = now.floor;
      best = chain;
    } else {
      reach *= 0.9;
    }
    std::vector<double> excess(now.units.size(), -1.0);
    for (std::size_t v = 1; v < now.tree.from.size(); ++v)
      if (now.tree.from[v] > 0) excess[now.tree.from[v] - 1] += 1;
    double square = 0;
    for (const double e : excess) square += e * e;
    if (!(best_floor < known) || square <= 1) break;
    const Time<> step = (known - now.floor) * (reach / square);
    for (std::size_t i = 0; i < excess.size(); ++i)
      chain.leaving[now.units[i]] = std::max(Time<>{}, in_ticks(chain.leaving[now.units[i]] + step * excess[i]));
  }
  chain = best;
}

}  // namespace

UnitChain unit_chain(MountedStates& mounted, const WorkNet& net, Time<> known) {
  UnitChain chain;
  const std::size_t units = net.need_of.size();
  if (units == 0 || units > most_units_chained) return chain;
  chain.follow = follow_costs(mounted.model, net);
  chain.leaving.resize(units);
  chain.second_start = known;
  set_charges(chain, mounted, net, known);
  return chain;
}

std::optional<Time<>> chain_to_come(const UnitChain& chain, MountedStates& mounted, const WorkNet& net,
                                    const Progress& progress, std::uint32_t state) {
  if (chain.follow.empty()) return std::nullopt;
  if (progress.remaining == 0) return Time<>{};
  return charged_tree(chain, mounted, net, progress, state).floor;
}

}  // namespace seambook
