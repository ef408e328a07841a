// The best levels of a small shop by trying every order of tasks with every way of each, timed by walking through the
// days slot by slot. Shares only the input types with the planner.
#pragma once

#include "random_plans.hpp"

namespace shop {

struct EveryPlan {
  const ShopProblem& problem;
  std::optional<Levels> best;

  explicit EveryPlan(const ShopProblem& p) : problem(p) {
    Shop start;
    start.station_end.assign(p.stations.size(), p.start);
    start.person_end.assign(p.people.size(), p.start);
    for (const ShopStation& station : p.stations) start.mounted.push_back(station.start);
    start.used.assign(p.stations.size(), false);
    start.end.assign(p.tasks.size(), std::nullopt);
    start.done.assign(p.tasks.size(), false);
    go_on(start, 0);
  }

 private:
  struct Shop {
    std::vector<Instant> station_end, person_end;
    std::vector<Attributes> mounted;
    std::vector<bool> used, done;
    std::vector<std::optional<Instant>> end;  // absent: not done, or not possible
    double change = 0;
    std::int64_t loads = 0;
  };

  static bool open(const WorkingTime& time, Instant t) {
    for (const Window& w : time)
      if (w.from <= t && t < w.to) return true;
    return false;
  }
  bool attended(const Way& way, Instant t) const {
    if (!way.station) return true;
    if (!open(problem.stations[*way.station].open, t)) return false;
    for (const std::size_t p : way.people)
      if (!open(problem.people[p].present, t)) return false;
    return true;
  }
  Instant beyond() const { return problem.start + slots(400); }

  /// Works `length` from t on and gives the end; nothing when the days do not suffice.
  std::optional<Instant> work(const Way& way, Instant t, Seconds length) const {
    while (length > Seconds{}) {
      if (t >= beyond()) return std::nullopt;
      if (attended(way, t)) length -= slot;
      t += slot;
    }
    return t;
  }
  /// Whether the first `held` of work from t on goes without too long a pause.
  bool goes_on(const Way& way, Instant t, Seconds held) const {
    Seconds pause{};
    for (; held > Seconds{}; t += slot) {
      if (t >= beyond()) return false;
      if (attended(way, t)) {
        held -= slot, pause = {};
      } else {
        pause += slot;
        if (pause > problem.longest_pause) return false;
      }
    }
    return true;
  }
  static std::int64_t loads_between(const ShopProblem& problem, const Attributes& from, const Attributes& to) {
    if (!problem.load_attribute) return 0;
    const auto slot_of = [&](const Attributes& a) {
      return *problem.load_attribute < a.slots.size() ? a.slots[*problem.load_attribute] : std::nullopt;
    };
    return slot_of(to) && slot_of(to) != slot_of(from) ? 1 : 0;
  }
  static Attributes mount(const Attributes& from, const Attributes& to) {
    Attributes out = from;
    out.slots.resize(std::max(from.slots.size(), to.slots.size()));
    for (std::size_t a = 0; a < to.slots.size(); ++a)
      if (to.slots[a]) out.slots[a] = to.slots[a];
    return out;
  }
  bool never(std::size_t station, const Attributes& from, const Attributes& to) const {
    for (const ChangeTask& task : problem.stations[station].never) {
      const auto& now = from.slots[task.attribute];
      const auto& next = to.slots[task.attribute];
      const auto in = [](const std::vector<std::uint32_t>& list, std::uint32_t v) {
        return list.empty() || std::count(list.begin(), list.end(), v) > 0;
      };
      if (next && now != next && in(task.to, *next) && (now ? in(task.from, *now) : task.from_nothing)) return true;
    }
    return false;
  }

  /// Does a task in a way; leaves it undone where that is not possible.
  void try_task(Shop& at, std::size_t t, std::size_t w) const {
    at.done[t] = true;
    const ShopTask& task = problem.tasks[t];
    if (w >= task.ways.size()) return;
    const Way& way = task.ways[w];
    Instant begin = std::max({problem.start, task.ready, way.first_start});
    for (const auto& [before, after] : problem.precedence) {
      if (after != t) continue;
      if (!at.end[before]) return;
      begin = std::max(begin, *at.end[before] + problem.tasks[before].rest);
    }
    if (!way.station) {
      if (begin + way.time <= way.last_finish) at.end[t] = begin + way.time;
      return;
    }
    const std::size_t s = *way.station;
    begin = std::max(begin, at.station_end[s]);
    for (const std::size_t p : way.people) begin = std::max(begin, at.person_end[p]);
    if (never(s, at.mounted[s], task.needs)) return;
    const double seconds = change_seconds(problem.model, at.mounted[s], task.needs);
    std::optional<Instant> now = work(way, begin, Seconds(static_cast<std::int64_t>(seconds)));
    if (!now) return;
    while (way.time > Seconds{} && (!attended(way, *now) || !goes_on(way, *now, task.held))) {
      *now += slot;
      if (*now >= beyond()) return;
    }
    now = work(way, *now, way.time);
    if (!now || *now > way.last_finish) return;
    at.loads += loads_between(problem, at.mounted[s], task.needs);
    at.mounted[s] = mount(at.mounted[s], task.needs);
    at.used[s] = true, at.change += seconds, at.end[t] = at.station_end[s] = *now;
    for (const std::size_t p : way.people) at.person_end[p] = *now;
  }

  Levels levels(const Shop& at) const {
    Levels out;
    double change = at.change;
    out.loads = at.loads;
    for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
      if (!at.end[t])
        ++out.unplaced;
      else
        out.finish = std::max(out.finish, (*at.end[t] - problem.start).count());
    }
    for (std::size_t o = 0; o < problem.orders.size(); ++o) {
      std::int64_t late = 0;
      for (std::size_t t = 0; t < problem.tasks.size(); ++t)
        if (at.end[t] && problem.tasks[t].order == o && problem.orders[o].due != Instant::max())
          late = std::max(late, (*at.end[t] - problem.orders[o].due - problem.tolerance).count());
      out.late += late * problem.orders[o].weight;
    }
    for (std::size_t s = 0; s < problem.stations.size(); ++s) {
      if (!at.used[s] || !problem.stations[s].end) continue;
      change += change_seconds(problem.model, at.mounted[s], *problem.stations[s].end);
      out.loads += loads_between(problem, at.mounted[s], *problem.stations[s].end);
    }
    out.change = static_cast<std::int64_t>(change);
    return out;
  }

  void go_on(const Shop& at, std::size_t count) {
    if (count == problem.tasks.size()) {
      const Levels found = levels(at);
      if (!best || found < *best) best = found;
    }
    for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
      bool ready = !at.done[t];
      for (const auto& [before, after] : problem.precedence) ready = ready && (after != t || at.done[before]);
      for (std::size_t w = 0; ready && w < std::max<std::size_t>(1, problem.tasks[t].ways.size()); ++w) {
        Shop next = at;
        try_task(next, t, w);
        go_on(next, count + 1);
      }
    }
  }
};

}  // namespace shop
