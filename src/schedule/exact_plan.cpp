#include "schedule/exact_plan.hpp"

#include <algorithm>
#include <bit>
#include <map>

#include "schedule/floors.hpp"

namespace seambook {
namespace {

struct State {
  Timeline line;
  Finishes finishes;
  TaskSet done = 0;  // placed, or not possible
  std::size_t parent = 0;
  Listed last;
};

/// States that may be compared: the same done, the same of it not possible, the same mounted.
struct Kind {
  TaskSet done = 0, failed = 0;
  std::vector<std::uint32_t> mounted;
  std::vector<bool> used;  // stations; one that was not used has no end state to come to
  friend auto operator<=>(const Kind&, const Kind&) = default;
};

struct Looking {
  ShopNet& net;
  const Levels& floor;
  std::vector<TaskSet> before, after;  // by task
  std::vector<TaskSet> tasks_of_order;
};

bool has(TaskSet set, std::uint32_t task) { return (set >> task & 1U) != 0; }

Kind kind_of(const Looking& looking, const State& state) {
  Kind kind{state.done, 0, state.line.mounted, {}};
  for (std::uint32_t t = 0; t < looking.net.tasks.size(); ++t)
    if (has(state.done, t) && state.finishes[t] == never_done) kind.failed |= TaskSet{1} << t;
  kind.used.reserve(state.line.last.size());
  for (const std::uint32_t last : state.line.last) kind.used.push_back(last != away);
  return kind;
}

/// Lateness of orders that have no work left.
std::int64_t settled_lateness(const Looking& looking, const State& state) {
  std::int64_t sum = 0;
  for (std::uint32_t o = 0; o < looking.net.orders.size(); ++o)
    if ((looking.tasks_of_order[o] & ~state.done) == 0) sum += lateness(looking.net, o, state.line.order_finish[o]);
  return sum;
}

bool never_later(const std::vector<Instant>& a, const std::vector<Instant>& b) {
  for (std::size_t i = 0; i < a.size(); ++i)
    if (a[i] > b[i]) return false;
  return true;
}

/// Requires: both of one kind.
bool never_worse(const Looking& looking, const State& a, const State& b) {
  const Levels &x = a.line.levels, &y = b.line.levels;
  if (x.unplaced > y.unplaced || x.change > y.change || x.loads > y.loads || x.finish > y.finish) return false;
  if (settled_lateness(looking, a) > settled_lateness(looking, b)) return false;
  if (!never_later(a.line.station_free, b.line.station_free)) return false;
  if (!never_later(a.line.person_free, b.line.person_free)) return false;
  for (std::size_t o = 0; o < a.line.order_finish.size(); ++o)
    if ((looking.tasks_of_order[o] & ~a.done) != 0 && a.line.order_finish[o] > b.line.order_finish[o]) return false;
  for (std::uint32_t t = 0; t < looking.net.tasks.size(); ++t)
    if (has(a.done, t) && (looking.after[t] & ~a.done) != 0 && a.finishes[t] > b.finishes[t]) return false;
  return true;
}

Looking looking_at(ShopNet& net, const Levels& floor) {
  Looking looking{net, floor, {}, {}, {}};
  const std::size_t n = net.tasks.size();
  looking.before.resize(n), looking.after.resize(n);
  looking.tasks_of_order.resize(net.orders.size());
  for (std::uint32_t t = 0; t < n; ++t) {
    for (const std::uint32_t b : net.tasks[t].before) {
      looking.before[t] |= TaskSet{1} << b;
      looking.after[b] |= TaskSet{1} << t;
    }
    looking.tasks_of_order[net.tasks[t].order] |= TaskSet{1} << t;
  }
  return looking;
}

TaskList list_to(const std::vector<State>& states, std::size_t at) {
  TaskList list;
  for (; states[at].done != 0; at = states[at].parent) list.push_back(states[at].last);
  std::reverse(list.begin(), list.end());
  return list;
}

struct Layers {
  Levels best;  // of whole plans, the known one too
  std::vector<State> states;
  std::optional<std::size_t> end;  // the state of the best whole plan, when it is not the known one
  std::map<Kind, std::vector<std::size_t>> next;
};

/// Takes a state into the next layer, unless it leads to nothing better or another one is never worse.
void add(const Looking& looking, Layers& at, State&& state, bool whole) {
  Levels reach = final_levels(looking.net, state.line);
  if (!whole) reach = higher_floor(floor_from(looking.net, state.line, state.finishes, state.done), looking.floor);
  if (reach >= at.best) return;
  if (whole) {
    at.best = reach, at.end = at.states.size();
  } else {
    std::vector<std::size_t>& like = at.next[kind_of(looking, state)];
    const auto beats = [&](std::size_t other) { return never_worse(looking, at.states[other], state); };
    if (std::any_of(like.begin(), like.end(), beats)) return;
    std::erase_if(like, [&](std::size_t other) { return never_worse(looking, state, at.states[other]); });
    like.push_back(at.states.size());
  }
  at.states.push_back(std::move(state));
}

void go_on_from(const Looking& looking, Layers& at, std::size_t from) {
  const std::size_t n = looking.net.tasks.size();
  for (std::uint32_t t = 0; t < n; ++t) {
    const TaskSet done = at.states[from].done;
    if (has(done, t) || (looking.before[t] & ~done) != 0) continue;
    const std::size_t ways = std::max<std::size_t>(1, looking.net.tasks[t].ways.size());
    for (std::uint32_t w = 0; w < ways; ++w) {
      State state = at.states[from];
      place(looking.net, state.line, state.finishes, t, w);
      state.done = done | TaskSet{1} << t, state.parent = from, state.last = {t, w};
      const bool whole = static_cast<std::size_t>(std::popcount(state.done)) == n;
      add(looking, at, std::move(state), whole);
    }
  }
}

}  // namespace

ExactPlan best_plan(ShopNet& net, const Levels& known, const Levels& floor, std::size_t allowed) {
  const std::size_t n = net.tasks.size();
  if (n > 64 || !net.earlier.empty()) return {std::nullopt, floor, false};
  const Looking looking = looking_at(net, floor);
  Layers at{known, {}, std::nullopt, {}};
  at.states.emplace_back();
  at.states[0].line = nothing_placed(net), at.states[0].finishes.assign(n, never_done);
  std::vector<std::size_t> layer = {0};
  for (std::size_t depth = 0; depth < n; ++depth) {
    at.next.clear();
    for (const std::size_t from : layer) {
      go_on_from(looking, at, from);
      if (at.states.size() > allowed) return {std::nullopt, floor, false};
    }
    layer.clear();
    for (const auto& [kind, members] : at.next) layer.insert(layer.end(), members.begin(), members.end());
  }
  ExactPlan out{std::nullopt, at.best, true};
  if (at.end) out.list = list_to(at.states, *at.end);
  return out;
}

}  // namespace seambook
