#include "schedule/shop_net.hpp"

#include <algorithm>
#include <map>

namespace seambook {
namespace {

/// Numbers the working time of ways: those at one station by the same people share it.
class Calendars {
 public:
  Calendars(const ShopProblem& problem, ShopNet& net) : problem_(problem), net_(net) {}
  std::uint32_t number(const Way& way) {
    const std::pair<std::size_t, std::vector<std::size_t>> key{*way.station, way.people};
    const auto [at, added] = known_.try_emplace(key, static_cast<std::uint32_t>(net_.calendars.size()));
    if (!added) return at->second;
    WorkingTime time = problem_.stations[*way.station].open;
    for (const std::size_t person : way.people) time = both(time, problem_.people[person].present);
    net_.calendars.push_back(std::move(time));
    return at->second;
  }

 private:
  const ShopProblem& problem_;
  ShopNet& net_;
  std::map<std::pair<std::size_t, std::vector<std::size_t>>, std::uint32_t> known_;
};

NetWay net_way(const ShopProblem& problem, const ShopTask& task, const Way& way, Calendars& calendars, ShopNet& net) {
  NetWay out;
  out.first_person = static_cast<std::uint32_t>(net.people.size());
  out.time = way.time;
  out.not_before = std::max({problem.start, task.ready, way.first_start});
  out.last_finish = way.last_finish;
  if (!way.station) return out;
  out.station = static_cast<std::uint32_t>(*way.station);
  out.calendar = calendars.number(way);
  out.people = static_cast<std::uint32_t>(way.people.size());
  for (const std::size_t person : way.people) net.people.push_back(static_cast<std::uint32_t>(person));
  return out;
}

void add_neighbours(const ShopProblem& problem, ShopNet& net) {
  for (const auto& [before, after] : problem.precedence) {
    net.tasks[after].before.push_back(static_cast<std::uint32_t>(before));
    net.tasks[before].after.push_back(static_cast<std::uint32_t>(after));
  }
  for (NetTask& task : net.tasks) {
    for (auto* list : {&task.before, &task.after}) {
      std::sort(list->begin(), list->end());
      list->erase(std::unique(list->begin(), list->end()), list->end());
    }
  }
}

/// Distinct needs, and the need of each task.
struct Needs {
  std::vector<Attributes> needs;
  std::map<Attributes, std::uint32_t> numbers;
  std::uint32_t number(Attributes need, std::size_t slots) {
    need.slots.resize(slots);
    const auto [at, added] = numbers.try_emplace(need, static_cast<std::uint32_t>(needs.size()));
    if (added) needs.push_back(std::move(need));
    return at->second;
  }
};

ShopNet net_of(const ShopProblem& problem, const std::vector<std::uint32_t>& need_of) {
  ShopNet net;
  net.stations = problem.stations.size(), net.persons = problem.people.size();
  net.orders = problem.orders, net.earlier = problem.earlier;
  net.start = problem.start, net.tolerance = problem.tolerance, net.longest_pause = problem.longest_pause;
  net.tasks.resize(problem.tasks.size());
  net.end_need.resize(net.stations);
  Calendars calendars(problem, net);
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    const ShopTask& task = problem.tasks[t];
    NetTask& out = net.tasks[t];
    out.order = static_cast<std::uint32_t>(task.order);
    out.rest = task.rest, out.held = task.held;
    out.ways.reserve(task.ways.size());
    for (const Way& way : task.ways) {
      out.ways.push_back(net_way(problem, task, way, calendars, net));
      out.ways.back().need = need_of[t];
    }
  }
  add_neighbours(problem, net);
  for (const std::size_t t : topological_order(problem.tasks.size(), problem.precedence))
    net.input_order.push_back(static_cast<std::uint32_t>(t));
  return net;
}

}  // namespace

ShopNet shop_net(const ShopProblem& problem) {
  const std::size_t slots = problem.model.attributes.size();
  Needs needs;
  std::vector<std::uint32_t> need_of;
  need_of.reserve(problem.tasks.size());
  for (const ShopTask& task : problem.tasks) need_of.push_back(needs.number(task.needs, slots));
  ShopNet net = net_of(problem, need_of);
  for (std::size_t s = 0; s < net.stations; ++s)
    if (problem.stations[s].end) net.end_need[s] = needs.number(*problem.stations[s].end, slots);
  net.set_ups.reserve(net.stations);
  for (const ShopStation& station : problem.stations)
    net.set_ups.push_back(set_up_table(problem, station, needs.needs));
  return net;
}

ShopNet shop_net(const ShopProblem& problem, std::vector<SetUpTable> set_ups) {
  std::vector<std::uint32_t> need_of;
  need_of.reserve(problem.tasks.size());
  for (std::uint32_t t = 0; t < problem.tasks.size(); ++t) need_of.push_back(t);
  ShopNet net = net_of(problem, need_of);
  net.set_ups = std::move(set_ups);
  return net;
}

}  // namespace seambook
