#include "schedule/starts.hpp"

#include <algorithm>
#include <tuple>

namespace seambook {
namespace {

/// The earliest due date of a task's order and of those whose tasks wait for it.
std::vector<Instant> urgency(const ShopNet& net) {
  std::vector<Instant> due(net.tasks.size());
  for (auto t = net.input_order.rbegin(); t != net.input_order.rend(); ++t) {
    due[*t] = net.orders[net.tasks[*t].order].due;
    for (const std::uint32_t after : net.tasks[*t].after) due[*t] = std::min(due[*t], due[after]);
  }
  return due;
}

using Rank = std::tuple<std::int64_t, std::int64_t, std::uint32_t>;

struct Building {
  Timeline line;
  Finishes finishes;
  std::vector<std::uint32_t> open;       // tasks that wait for nothing
  std::vector<std::size_t> waiting_for;  // by task
};

Rank rank_of(ShopNet& net, const Building& at, Rule rule, const std::vector<Instant>& due,
             const std::vector<std::uint32_t>& position, std::uint32_t task) {
  if (rule == Rule::input_order) return {position[task], 0, task};
  const std::int64_t urgent = due[task].time_since_epoch().count();
  if (rule == Rule::due_date) return {urgent, position[task], task};
  const Placed way = tried(net, at.line, at.finishes, task, quickest_way(net, at.line, at.finishes, task));
  const std::int64_t begins =
      way.done ? way.set_up.time_since_epoch().count() : Instant::max().time_since_epoch().count();
  return rule == Rule::start ? Rank{begins, urgent, position[task]} : Rank{way.change, begins, position[task]};
}

/// The way of a task as it was planned before; nothing when it has none such.
std::optional<std::uint32_t> way_as_before(const ShopNet& net, std::uint32_t task) {
  const auto& was = net.earlier[task];
  if (!was) return std::nullopt;
  for (std::uint32_t w = 0; w < net.tasks[task].ways.size(); ++w) {
    const NetWay& way = net.tasks[task].ways[w];
    const bool same_person = way.people == 0 || net.people[way.first_person] == was->person;
    if (way.station == was->station && same_person) return w;
  }
  return std::nullopt;
}

}  // namespace

std::uint32_t quickest_way(ShopNet& net, const Timeline& line, const Finishes& finishes, std::uint32_t task) {
  std::uint32_t best = 0;
  std::optional<std::pair<Instant, std::int64_t>> least;
  for (std::uint32_t w = 0; w < net.tasks[task].ways.size(); ++w) {
    const Placed way = tried(net, line, finishes, task, w);
    if (!way.done || (least && *least <= std::pair{way.finish, way.change})) continue;
    least = {way.finish, way.change};
    best = w;
  }
  return best;
}

TaskList list_by(ShopNet& net, Rule rule) {
  const std::vector<Instant> due = urgency(net);
  std::vector<std::uint32_t> position(net.tasks.size());
  for (std::uint32_t p = 0; p < net.input_order.size(); ++p) position[net.input_order[p]] = p;
  Building at{nothing_placed(net), Finishes(net.tasks.size(), never_done), {}, {}};
  for (std::uint32_t t = 0; t < net.tasks.size(); ++t) {
    at.waiting_for.push_back(net.tasks[t].before.size());
    if (at.waiting_for[t] == 0) at.open.push_back(t);
  }
  TaskList list;
  list.reserve(net.tasks.size());
  while (!at.open.empty()) {
    std::size_t best = 0;
    std::optional<Rank> least;
    for (std::size_t k = 0; k < at.open.size(); ++k) {
      const Rank rank = rank_of(net, at, rule, due, position, at.open[k]);
      if (least && *least <= rank) continue;
      least = rank, best = k;
    }
    const std::uint32_t task = at.open[best];
    at.open.erase(at.open.begin() + static_cast<std::ptrdiff_t>(best));
    const std::uint32_t way = quickest_way(net, at.line, at.finishes, task);
    place(net, at.line, at.finishes, task, way);
    list.push_back({task, way});
    for (const std::uint32_t after : net.tasks[task].after)
      if (--at.waiting_for[after] == 0) at.open.push_back(after);
  }
  return list;
}

TaskList list_as_before(ShopNet& net) {
  std::vector<std::size_t> rank(net.tasks.size());  // by earlier start; what is new comes last, in input order
  std::vector<std::uint32_t> order = net.input_order;
  std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
    const auto start = [&](std::uint32_t t) { return net.earlier[t] ? net.earlier[t]->start : Instant::max(); };
    return start(a) < start(b);
  });
  for (std::size_t k = 0; k < order.size(); ++k) rank[order[k]] = k;
  std::vector<Edge> edges;
  for (std::uint32_t t = 0; t < net.tasks.size(); ++t)
    for (const std::uint32_t before : net.tasks[t].before) edges.emplace_back(rank[before], rank[t]);
  Timeline line = nothing_placed(net);
  Finishes finishes(net.tasks.size(), never_done);
  TaskList list;
  list.reserve(order.size());
  for (const std::size_t k : topological_order(order.size(), edges)) {
    const std::uint32_t task = order[k];
    const std::uint32_t way = way_as_before(net, task).value_or(quickest_way(net, line, finishes, task));
    place(net, line, finishes, task, way);
    list.push_back({task, way});
  }
  return list;
}

TaskList list_of(ShopNet& net, const std::vector<std::uint32_t>& order) {
  Timeline line = nothing_placed(net);
  Finishes finishes(net.tasks.size(), never_done);
  TaskList list;
  list.reserve(order.size());
  for (const std::uint32_t task : order) {
    const std::uint32_t way = quickest_way(net, line, finishes, task);
    place(net, line, finishes, task, way);
    list.push_back({task, way});
  }
  return list;
}

}  // namespace seambook
