#include "sequence/work_net.hpp"

#include <algorithm>
#include <cassert>
#include <tuple>

namespace seambook {

namespace {

Attributes all_slots(Attributes attributes, const SetupModel& model) {
  attributes.slots.resize(std::max(attributes.slots.size(), model.attributes.size()));
  return attributes;
}

void sort_each(std::vector<std::vector<std::uint32_t>>& lists) {
  for (auto& list : lists) {
    std::sort(list.begin(), list.end());
    list.erase(std::unique(list.begin(), list.end()), list.end());
  }
}

std::uint32_t number_of(MountedStates& mounted, const Attributes& attributes) {
  const auto [at, fresh] = mounted.numbers.emplace(attributes, static_cast<std::uint32_t>(mounted.states.size()));
  if (fresh) mounted.states.push_back(attributes);
  return at->second;
}

}  // namespace

WorkNet work_net(const SequenceProblem& problem) {
  WorkNet net;
  const auto count = static_cast<std::uint32_t>(problem.operations.size());
  std::map<Attributes, std::uint32_t> numbers;
  for (const Operation& operation : problem.operations) {
    Attributes needs = all_slots(operation.needs, problem.model);
    const auto [at, fresh] = numbers.emplace(needs, static_cast<std::uint32_t>(net.needs.size()));
    if (fresh) net.needs.push_back(std::move(needs));
    net.need_of.push_back(at->second);
  }
  net.before.resize(count);
  net.after.resize(count);
  for (const auto& [first, second] : problem.precedence) {
    net.after[first].push_back(static_cast<std::uint32_t>(second));
    net.before[second].push_back(static_cast<std::uint32_t>(first));
  }
  finish_neighbours(net);
  return net;
}

void finish_neighbours(WorkNet& net) {
  sort_each(net.before);
  sort_each(net.after);
  using Role = std::tuple<std::uint32_t, const std::vector<std::uint32_t>&, const std::vector<std::uint32_t>&>;
  std::map<Role, std::uint32_t> roles;
  for (std::uint32_t o = 0; o < net.need_of.size(); ++o)
    net.twin.push_back(roles.emplace(Role{net.need_of[o], net.before[o], net.after[o]}, o).first->second);
}

MountedStates mounted_states(const SequenceProblem& problem) {
  MountedStates mounted{problem.model, {}, {}, {}};
  number_of(mounted, all_slots(problem.start, problem.model));
  return mounted;
}

Mounting mount(MountedStates& mounted, const WorkNet& net, std::uint32_t state, std::uint32_t need) {
  const std::uint64_t key = (std::uint64_t{state} << 32) | need;
  if (const auto at = mounted.known.find(key); at != mounted.known.end()) return at->second;
  const Attributes from = mounted.states[state];  // a copy: the list may grow
  const Mounting result{change(mounted.model, from, net.needs[need]).duration,
                        number_of(mounted, mounted_after(from, net.needs[need]))};
  mounted.known.emplace(key, result);
  return result;
}

Time<> change_total(MountedStates& mounted, const WorkNet& net, const Order& order) {
  Time<> total{};
  std::uint32_t state = 0;
  for (const std::uint32_t operation : order) {
    const Mounting next = mount(mounted, net, state, net.need_of[operation]);
    total = total + next.cost;
    state = next.state;
  }
  return total;
}

Progress nothing_done(const WorkNet& net) {
  Progress progress;
  progress.remaining = net.need_of.size();
  progress.done.resize(progress.remaining);
  progress.left.resize(net.needs.size());
  for (const std::uint32_t need : net.need_of) ++progress.left[need];
  for (const auto& list : net.before) progress.waiting_for.push_back(static_cast<std::uint32_t>(list.size()));
  return progress;
}

void perform(const WorkNet& net, Progress& progress, std::uint32_t operation) {
  assert(ready(progress, operation));
  progress.done[operation] = 1;
  --progress.remaining;
  --progress.left[net.need_of[operation]];
  for (const std::uint32_t next : net.after[operation]) --progress.waiting_for[next];
}

}  // namespace seambook
