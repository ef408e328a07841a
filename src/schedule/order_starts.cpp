#include "schedule/order_starts.hpp"

#include <algorithm>
#include <random>
#include <tuple>

#include "schedule/starts.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_pairs = 200'000;                   // of tasks within orders
constexpr double worths_of_set_up[] = {0, 5, 20, 100, 1000};  // seconds later that one second less is worth

constexpr std::size_t placements_for_pair = 4;  // in time

struct OrderWork {
  Instant due{};
  std::vector<std::uint32_t> tasks;  // in input order
};

/// Orders with work, by the earliest due date of theirs and of what waits for them.
std::vector<OrderWork> work_by_order(const ShopNet& net) {
  std::vector<OrderWork> orders(net.orders.size());
  for (std::size_t o = 0; o < orders.size(); ++o) orders[o].due = net.orders[o].due;
  for (auto t = net.input_order.rbegin(); t != net.input_order.rend(); ++t) {
    OrderWork& of = orders[net.tasks[*t].order];
    for (const std::uint32_t after : net.tasks[*t].after) of.due = std::min(of.due, orders[net.tasks[after].order].due);
  }
  for (const std::uint32_t task : net.input_order) orders[net.tasks[task].order].tasks.push_back(task);
  std::erase_if(orders, [](const OrderWork& of) { return of.tasks.empty(); });
  std::ranges::stable_sort(orders, {}, &OrderWork::due);
  return orders;
}

std::size_t pairs_within(const std::vector<OrderWork>& orders) {
  std::size_t pairs = 0;
  for (const OrderWork& order : orders) pairs += order.tasks.size() * order.tasks.size();
  return pairs;
}

/// A shop on its way, and what is in its list.
struct ByOrders {
  ShopNet& net;
  Timeline line;
  Finishes finishes;
  std::vector<bool> listed;
};

/// The way at the station that ends first; where there is none, the one of all.
std::uint32_t way_there(ByOrders& at, std::uint32_t task, std::size_t station) {
  const auto& ways = at.net.tasks[task].ways;
  std::optional<std::uint32_t> best;
  Instant least{};
  for (std::uint32_t w = 0; w < ways.size(); ++w) {
    if (ways[w].station != station) continue;
    const Placed way = tried(at.net, at.line, at.finishes, task, w);
    if (!way.done || (best && least <= way.finish)) continue;
    best = w, least = way.finish;
  }
  return best ? *best : quickest_way(at.net, at.line, at.finishes, task);
}

bool is_open(const ByOrders& at, std::uint32_t task) {
  return !at.listed[task] && std::ranges::all_of(at.net.tasks[task].before, [&](auto t) { return at.listed[t]; });
}

/// Does what can be done of an order, most of it at one station.
TaskList do_at(ByOrders& at, const OrderWork& order, std::size_t station) {
  TaskList list;
  for (;;) {
    std::optional<Listed> next;
    std::pair<std::int64_t, Instant> least;
    for (const std::uint32_t task : order.tasks) {
      if (!is_open(at, task)) continue;
      const std::uint32_t way = way_there(at, task, station);
      const Placed placed = tried(at.net, at.line, at.finishes, task, way);
      const std::pair rank{placed.change, placed.done ? placed.set_up : never_done};
      if (next && least <= rank) continue;
      next = {task, way}, least = rank;
    }
    if (!next) return list;
    place(at.net, at.line, at.finishes, static_cast<std::uint32_t>(next->task), static_cast<std::uint32_t>(next->way));
    at.listed[next->task] = true;
    list.push_back(*next);
  }
}

void undo(ByOrders& at, const Timeline& line, const TaskList& list) {
  at.line = line;
  for (const Listed& done : list) at.finishes[done.task] = never_done, at.listed[done.task] = false;
}

/// The station where an order costs least.
std::size_t best_station(ByOrders& at, const OrderWork& order, double set_up_worth) {
  std::optional<std::size_t> best;
  std::tuple<std::int64_t, std::int64_t, double> least;
  const Timeline before = at.line;
  for (std::size_t s = 0; s < at.net.stations; ++s) {
    const TaskList done = do_at(at, order, s);
    Instant end = Instant::min();
    for (const Listed& task : done)
      if (at.finishes[task.task] != never_done) end = std::max(end, at.finishes[task.task]);
    const Levels& levels = at.line.levels;
    const double later = static_cast<double>(end.time_since_epoch().count()) +
                         set_up_worth * static_cast<double>(levels.change - before.levels.change);
    const std::tuple cost{levels.unplaced, levels.late, later};
    undo(at, before, done);
    if (best && least <= cost) continue;
    best = s, least = cost;
  }
  return best.value_or(0);
}

ByOrders nothing_done(ShopNet& net) {
  return {net, nothing_placed(net), Finishes(net.tasks.size(), never_done), std::vector<bool>(net.tasks.size())};
}

/// An order and where it is done.
struct OrderThere {
  const OrderWork* order = nullptr;
  std::size_t station = 0;
};

/// Orders in turn; again for what waited for a later order.
TaskList list_of_orders(ShopNet& net, const std::vector<OrderThere>& orders) {
  ByOrders at = nothing_done(net);
  TaskList list;
  list.reserve(net.tasks.size());
  while (list.size() < net.tasks.size())
    for (const OrderThere& chosen : orders) {
      const TaskList done = do_at(at, *chosen.order, chosen.station);
      list.insert(list.end(), done.begin(), done.end());
    }
  return list;
}

std::vector<OrderThere> stations_in_turn(ShopNet& net, const std::vector<OrderWork>& orders, double set_up_worth) {
  ByOrders at = nothing_done(net);
  std::vector<OrderThere> out;
  for (const OrderWork& order : orders) {
    out.push_back({&order, best_station(at, order, set_up_worth)});
    do_at(at, order, out.back().station);
  }
  return out;
}

/// One order to another place or station, or two change places.
void change_one(std::vector<OrderThere>& orders, std::size_t stations, std::mt19937& dice) {
  const std::size_t from = dice() % orders.size(), to = dice() % orders.size();
  const auto at = [&](std::size_t p) { return orders.begin() + static_cast<std::ptrdiff_t>(p); };
  switch (dice() % 4) {
    case 0:
      orders[from].station = dice() % stations;
      break;
    case 1:
      std::swap(orders[from], orders[to]);
      break;
    case 2:
      std::swap(orders[from].order, orders[to].order);
      break;
    default:
      if (dice() % 2 == 0) orders[from].station = orders[to].station;
      if (from < to)
        std::rotate(at(from), at(from + 1), at(to + 1));
      else
        std::rotate(at(to), at(from), at(from + 1));
  }
}

}  // namespace

bool has_whole_orders(const ShopNet& net) {
  const std::vector<OrderWork> orders = work_by_order(net);
  return orders.size() < net.tasks.size() && pairs_within(orders) <= most_pairs && net.stations > 0;
}

TaskList list_by_whole_orders(ShopNet& net, const Levels& floor, const PlanBudget& allowed) {
  const std::vector<OrderWork> orders = work_by_order(net);
  std::vector<OrderThere> chosen;
  TaskList best;
  Levels least;
  const auto consider = [&](const std::vector<OrderThere>& next) {
    TaskList list = list_of_orders(net, next);
    const Levels levels = levels_of(net, list);
    if (!best.empty() && least < levels) return;
    best = std::move(list), least = levels, chosen = next;
  };
  for (const double worth : worths_of_set_up) consider(stations_in_turn(net, orders, worth));
  UsedBudget budget{
      {allowed.placements / (placements_for_pair * pairs_within(orders)), allowed.seconds, 1, allowed.stop}};
  budget.looks_per_clock = 1;
  std::mt19937 dice(1);
  for (std::size_t k = 0; floor < least && budget.left(k); ++k) {
    std::vector<OrderThere> next = chosen;
    change_one(next, net.stations, dice);
    consider(next);
  }
  return best;
}

}  // namespace seambook
