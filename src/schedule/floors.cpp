#include "schedule/floors.hpp"

#include <algorithm>
#include <limits>
#include <set>

#include "sequence/assignment.hpp"

namespace seambook {
namespace {

/// The soonest end of a task from what has been placed and the soonest ends of what it follows.
Instant soonest_end(const ShopNet& net, const Timeline& line, const std::vector<Instant>& soonest, std::uint32_t t) {
  Instant at = net.start;
  for (const std::uint32_t before : net.tasks[t].before) {
    if (soonest[before] == never_done) return never_done;
    at = std::max(at, soonest[before] + net.tasks[before].rest);
  }
  Instant least = never_done;
  for (const NetWay& way : net.tasks[t].ways) {
    Instant begin = std::max(at, way.not_before);
    if (way.station != away) begin = std::max(begin, line.station_free[way.station]);
    for (std::uint32_t p = 0; p < way.people; ++p)
      begin = std::max(begin, line.person_free[net.people[way.first_person + p]]);
    const Instant end = way.station == away ? begin + way.time : done_by(net.calendars[way.calendar], begin, way.time);
    if (end <= way.last_finish) least = std::min(least, end);
  }
  return least;
}

/// What an order asks of one station or person.
struct Share {
  std::uint32_t order = 0;
  Seconds left{};
  Instant from = Instant::max();  // not before
};

std::vector<Share> shares_of(const ShopProblem& problem, const ShopNet& net, const std::vector<bool>& possible,
                             std::optional<std::size_t> station, std::optional<std::size_t> person) {
  std::vector<Share> shares(net.orders.size());
  for (std::uint32_t o = 0; o < net.orders.size(); ++o) shares[o].order = o;
  for (std::uint32_t t = 0; t < net.tasks.size(); ++t) {
    if (!possible[t] || !only_there(problem.tasks[t], station, person)) continue;
    Share& share = shares[net.tasks[t].order];
    Seconds shortest = Seconds::max();
    for (const NetWay& way : net.tasks[t].ways) {
      shortest = std::min(shortest, way.time);
      share.from = std::min(share.from, way.not_before);
    }
    share.left += shortest;
  }
  std::erase_if(shares,
                [&](const Share& s) { return s.left == Seconds{} || net.orders[s.order].due == Instant::max(); });
  return shares;
}

/// Ends of the shares, shortest remaining work first, in rising order.
std::vector<Instant> ends_of(std::vector<Share> shares, const WorkingTime& time) {
  std::vector<Instant> ends;
  ends.reserve(shares.size());
  Instant now = Instant::min();
  while (!shares.empty()) {
    Instant next = Instant::max();
    std::size_t shortest = shares.size();
    for (std::size_t k = 0; k < shares.size(); ++k) {
      if (shares[k].from > now) {
        next = std::min(next, shares[k].from);
      } else if (shortest == shares.size() || shares[k].left < shares[shortest].left) {
        shortest = k;
      }
    }
    if (shortest == shares.size()) {
      now = next;
      continue;
    }
    const Instant end = done_by(time, now, shares[shortest].left);
    if (end <= next) {
      ends.push_back(end);
      if (end == Instant::max()) return {};  // beyond the working time that is known
      now = end;
      shares.erase(shares.begin() + static_cast<std::ptrdiff_t>(shortest));
    } else {
      shares[shortest].left -= working_between(time, now, next);
      now = next;
    }
  }
  return ends;
}

std::int64_t lateness_of(const ShopNet& net, const std::vector<Share>& shares, const std::vector<Instant>& ends) {
  const std::size_t n = ends.size();
  std::vector<Time<>> cost(n * n);
  for (std::size_t k = 0; k < n; ++k)
    for (std::size_t i = 0; i < n; ++i)
      cost[k * n + i] = {static_cast<double>(lateness(net, shares[k].order, ends[i]))};
  return n == 0 ? 0 : static_cast<std::int64_t>(cheapest_assignment(cost, n).cost.si);
}

std::optional<std::uint32_t> value_in(const Attributes& of, std::size_t attribute) {
  return attribute < of.slots.size() ? of.slots[attribute] : std::nullopt;
}

Attributes only(std::size_t attribute, std::optional<std::uint32_t> value) {
  Attributes out;
  out.slots.resize(attribute + 1);
  out.slots[attribute] = value;
  return out;
}

/// Values that work needs at a station and none has mounted at the start.
std::set<std::uint32_t> values_to_mount(const ShopProblem& problem, const std::vector<bool>& possible, std::size_t a) {
  std::set<std::uint32_t> values;
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    const ShopTask& task = problem.tasks[t];
    const bool may_go_away = std::any_of(task.ways.begin(), task.ways.end(), [](const Way& w) { return !w.station; });
    if (const auto value = value_in(task.needs, a); value && possible[t] && !may_go_away) values.insert(*value);
  }
  for (const ShopStation& station : problem.stations)
    if (const auto value = value_in(station.start, a)) values.erase(*value);
  return values;
}

/// All values that may stand mounted, and nothing where a station starts so.
std::set<std::optional<std::uint32_t>> values_met(const ShopProblem& problem, std::size_t a) {
  std::set<std::optional<std::uint32_t>> values;
  for (const ShopStation& station : problem.stations) values.insert(value_in(station.start, a));
  for (const ShopTask& task : problem.tasks)
    if (const auto value = value_in(task.needs, a)) values.insert(value);
  return values;
}

/// The changes that an attribute calls and no other one shares.
SetupModel called_by_one(const SetupModel& all, std::size_t a) {
  SetupModel model = all;
  std::erase_if(model.tasks, [&](const ChangeTask& task) {
    return task.attribute != a || std::any_of(all.tasks.begin(), all.tasks.end(), [&](const ChangeTask& other) {
             return other.name == task.name && other.attribute != a;
           });
  });
  return model;
}

}  // namespace

bool only_there(const ShopTask& task, std::optional<std::size_t> station, std::optional<std::size_t> person) {
  return !task.ways.empty() && std::all_of(task.ways.begin(), task.ways.end(), [&](const Way& way) {
    return station ? way.station == station : std::count(way.people.begin(), way.people.end(), *person) > 0;
  });
}

Levels higher_floor(const Levels& a, const Levels& b) {
  if (a.unplaced != b.unplaced) return a.unplaced < b.unplaced ? b : a;
  return {a.unplaced,
          std::max(a.late, b.late),
          std::max(a.moved, b.moved),
          std::max(a.change, b.change),
          std::max(a.loads, b.loads),
          std::max(a.finish, b.finish)};
}

Levels floor_from(const ShopNet& net, const Timeline& line, const Finishes& finishes, TaskSet done) {
  Levels least = line.levels;
  std::vector<Instant> soonest = finishes, order_finish = line.order_finish;
  for (const std::uint32_t t : net.input_order) {
    if (t < 64 && (done >> t & 1U) != 0) continue;
    soonest[t] = soonest_end(net, line, soonest, t);
    if (soonest[t] == never_done) {
      ++least.unplaced;
      continue;
    }
    Instant& finish = order_finish[net.tasks[t].order];
    if (soonest[t] <= finish) continue;
    least.late += lateness(net, net.tasks[t].order, soonest[t]) - lateness(net, net.tasks[t].order, finish);
    least.finish = std::max(least.finish, (soonest[t] - net.start).count());
    finish = soonest[t];
  }
  return least;
}

std::vector<bool> possible_tasks(const ShopNet& net) {
  const Timeline line = nothing_placed(net);
  std::vector<Instant> soonest(net.tasks.size(), never_done);
  std::vector<bool> possible(net.tasks.size());
  for (const std::uint32_t t : net.input_order) {
    soonest[t] = soonest_end(net, line, soonest, t);
    possible[t] = soonest[t] != never_done;
  }
  return possible;
}

std::int64_t lateness_floor(const ShopProblem& problem, const ShopNet& net, const std::vector<bool>& possible) {
  std::int64_t most = 0;
  const auto look = [&](const WorkingTime& time, const std::vector<Share>& shares) {
    const std::vector<Instant> ends = ends_of(shares, time);
    if (ends.size() == shares.size()) most = std::max(most, lateness_of(net, shares, ends));
  };
  for (std::size_t s = 0; s < problem.stations.size(); ++s)
    look(problem.stations[s].open, shares_of(problem, net, possible, s, std::nullopt));
  for (std::size_t p = 0; p < problem.people.size(); ++p)
    look(problem.people[p].present, shares_of(problem, net, possible, std::nullopt, p));
  return most;
}

std::int64_t loads_floor(const ShopProblem& problem, const std::vector<bool>& possible) {
  if (!problem.load_attribute) return 0;
  return static_cast<std::int64_t>(values_to_mount(problem, possible, *problem.load_attribute).size());
}

std::int64_t arrivals_floor(const ShopProblem& problem, const std::vector<bool>& possible) {
  std::int64_t floor = 0;
  for (std::size_t a = 0; a < problem.model.attributes.size(); ++a) {
    const SetupModel model = called_by_one(problem.model, a);
    const std::set<std::optional<std::uint32_t>> values = values_met(problem, a);
    for (const std::uint32_t value : values_to_mount(problem, possible, a)) {
      std::int64_t least = std::numeric_limits<std::int64_t>::max();
      for (const auto& from : values)
        if (from != value)
          least = std::min(least, whole_seconds(change(model, only(a, from), only(a, value)).duration).count());
      if (least < std::numeric_limits<std::int64_t>::max()) floor += least;
    }
  }
  return floor;
}

}  // namespace seambook
