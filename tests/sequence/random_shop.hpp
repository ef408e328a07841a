// Random small shops: change tasks with directions, tasks that several attributes call, unset attributes, precedence.
#pragma once

#include <algorithm>
#include <map>
#include <random>
#include <string>
#include <vector>

#include "sequence/sequence.hpp"

namespace shop {

using namespace seambook;

inline Time<> minutes(double count) { return {count * 60}; }

struct Kind {
  std::size_t operations = 6, attributes = 3, values = 3, tasks = 8, edges = 4;
  std::size_t unset_in_ten = 3, shared_in_ten = 3;
};

inline std::vector<std::uint32_t> some_values(std::mt19937& random, std::size_t values) {
  std::vector<std::uint32_t> some;
  if (random() % 2 == 0) return some;
  for (std::uint32_t v = 0; v < values; ++v)
    if (random() % 2 == 0) some.push_back(v);
  return some;
}

inline Attributes some_attributes(std::mt19937& random, const Kind& kind) {
  Attributes attributes;
  for (std::size_t a = 0; a < kind.attributes; ++a) {
    attributes.slots.emplace_back();
    if (random() % 10 >= kind.unset_in_ten)
      attributes.slots.back() = static_cast<std::uint32_t>(random() % kind.values);
  }
  return attributes;
}

inline SetupModel random_model(std::mt19937& random, const Kind& kind) {
  SetupModel model;
  for (std::size_t a = 0; a < kind.attributes; ++a) {
    model.attributes.push_back("attribute" + std::to_string(a));
    model.values.emplace_back();
    for (std::size_t v = 0; v < kind.values; ++v) model.values.back().push_back("value" + std::to_string(v));
  }
  for (std::size_t t = 0; t < kind.tasks; ++t) {
    const bool shared = t > 0 && random() % 10 < kind.shared_in_ten;
    model.tasks.push_back({"task" + std::to_string(shared ? random() % t : t),
                           minutes(static_cast<double>(1 + random() % 9)), random() % kind.attributes,
                           some_values(random, kind.values), some_values(random, kind.values), random() % 3 != 0});
  }
  return model;
}

/// Edges go along a hidden order, so there is no cycle; the order in the file may break them.
inline SequenceProblem random_problem(std::mt19937& random, const Kind& kind) {
  SequenceProblem problem{random_model(random, kind), {}, {}, {}};
  if (random() % 2 == 0) problem.start = some_attributes(random, kind);
  std::vector<std::size_t> hidden;
  for (std::size_t o = 0; o < kind.operations; ++o) {
    problem.operations.push_back({"operation" + std::to_string(o), some_attributes(random, kind)});
    hidden.insert(hidden.begin() + static_cast<std::ptrdiff_t>(random() % (o + 1)), o);
  }
  for (std::size_t e = 0; e < kind.edges && kind.operations > 1; ++e) {
    const std::size_t i = random() % (kind.operations - 1), j = i + 1 + random() % (kind.operations - 1 - i);
    problem.precedence.emplace_back(hidden[i], hidden[j]);
  }
  return problem;
}

/// The change time written a second time, straight from the rule: called tasks by name, the longest of a name.
inline double change_seconds(const SetupModel& model, const Attributes& mounted, const Attributes& needs) {
  const auto in = [](const std::vector<std::uint32_t>& list, std::uint32_t v) {
    return list.empty() || std::count(list.begin(), list.end(), v) > 0;
  };
  std::map<std::string, double> called;
  for (const ChangeTask& task : model.tasks) {
    if (task.attribute >= needs.slots.size() || !needs.slots[task.attribute]) continue;
    const std::uint32_t to = *needs.slots[task.attribute];
    const bool something = task.attribute < mounted.slots.size() && mounted.slots[task.attribute].has_value();
    if (something && *mounted.slots[task.attribute] == to) continue;
    if (!in(task.to, to)) continue;
    if (something ? !in(task.from, *mounted.slots[task.attribute]) : !task.from_nothing) continue;
    called[task.name] = std::max(called[task.name], task.duration.si);
  }
  double total = 0;
  for (const auto& [name, seconds] : called) total += seconds;
  return total;
}

/// The least change time below `limit` over every permitted order, by trying them all; the rest of an order that is too
/// dear already is left out. `limit` when no order takes less.
struct EveryOrder {
  const SequenceProblem& problem;
  std::vector<bool> done;
  double best;

  EveryOrder(const SequenceProblem& p, double limit) : problem(p), done(p.operations.size()), best(limit) {
    go_on(0, p.start, 0);
  }

  void go_on(std::size_t count, const Attributes& mounted, double spent) {
    if (spent >= best) return;
    if (count == done.size()) best = spent;
    for (std::size_t o = 0; o < done.size(); ++o) {
      bool ready = !done[o];
      for (const auto& [before, after] : problem.precedence) ready = ready && (after != o || done[before]);
      if (!ready) continue;
      const Attributes& needs = problem.operations[o].needs;
      Attributes next = mounted;
      next.slots.resize(problem.model.attributes.size());
      for (std::size_t a = 0; a < needs.slots.size(); ++a)
        if (needs.slots[a]) next.slots[a] = needs.slots[a];
      done[o] = true;
      go_on(count + 1, next, spent + change_seconds(problem.model, mounted, needs));
      done[o] = false;
    }
  }
};

/// Whether the total is the least that any order takes: one takes it, none takes less. Durations are whole minutes.
inline bool is_the_least(const SequenceProblem& problem, Time<> total) {
  return EveryOrder(problem, total.si + 1).best == total.si;
}

inline std::vector<std::size_t> order_of(const Sequence& sequence) {
  std::vector<std::size_t> order;
  for (const Step& step : sequence.steps) order.push_back(step.operation);
  return order;
}

inline std::string text_of(const Sequence& sequence) {
  std::string text = std::to_string(sequence.change_total.si) + " " + std::to_string(sequence.bound.si) + "\n";
  for (const Step& step : sequence.steps) text += std::to_string(step.operation) + " " + step.reason + "\n";
  return text;
}

}  // namespace shop
