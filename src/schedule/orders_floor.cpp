#include <algorithm>

#include "schedule/floors.hpp"

namespace seambook {
namespace {

/// The tasks of an order and all that they follow.
std::vector<bool> with_earlier(const ShopNet& net, std::uint32_t order) {
  std::vector<bool> in(net.tasks.size());
  for (auto t = net.input_order.rbegin(); t != net.input_order.rend(); ++t) {
    if (net.tasks[*t].order == order) in[*t] = true;
    if (!in[*t]) continue;
    for (const std::uint32_t before : net.tasks[*t].before) in[before] = true;
  }
  return in;
}

struct Load {
  Seconds work{};
  Instant from = Instant::max();

  void add(const NetTask& task) {
    Seconds shortest = Seconds::max();
    for (const NetWay& way : task.ways) {
      shortest = std::min(shortest, way.time);
      from = std::min(from, way.not_before);
    }
    work += shortest;
  }
  /// The end of all of it; nothing to say beyond the working time that is known.
  Instant end(const WorkingTime& time) const {
    if (work == Seconds{}) return Instant::min();
    const Instant done = done_by(time, from, work);
    return done == Instant::max() ? Instant::min() : done;
  }
};

}  // namespace

std::int64_t orders_floor(const ShopProblem& problem, const ShopNet& net, const std::vector<bool>& possible) {
  std::int64_t sum = 0;
  for (std::uint32_t o = 0; o < net.orders.size(); ++o) {
    if (net.orders[o].due == Instant::max()) continue;
    std::vector<Load> stations(net.stations), persons(net.persons);
    const std::vector<bool> in = with_earlier(net, o);
    bool any = false;
    for (std::uint32_t t = 0; t < net.tasks.size(); ++t) {
      if (!in[t] || !possible[t]) continue;
      any = any || net.tasks[t].order == o;
      for (std::size_t s = 0; s < net.stations; ++s)
        if (only_there(problem.tasks[t], s, std::nullopt)) stations[s].add(net.tasks[t]);
      for (std::size_t p = 0; p < net.persons; ++p)
        if (only_there(problem.tasks[t], std::nullopt, p)) persons[p].add(net.tasks[t]);
    }
    Instant end = Instant::min();
    for (std::size_t s = 0; s < net.stations; ++s) end = std::max(end, stations[s].end(problem.stations[s].open));
    for (std::size_t p = 0; p < net.persons; ++p) end = std::max(end, persons[p].end(problem.people[p].present));
    if (any && end != Instant::min()) sum += lateness(net, o, end);
  }
  return sum;
}

}  // namespace seambook
