#include "schedule/lane_descents.hpp"

#include <algorithm>
#include <numeric>
#include <random>

#include "schedule/flat_list.hpp"
#include "schedule/lane_list.hpp"
#include "schedule/lane_start.hpp"

namespace seambook {
namespace {

constexpr std::size_t longest_moved = 8, longest_kicked = 12;
constexpr std::size_t farthest = 100;     // that a run goes or two tasks stand apart: long lists, in bounded time
constexpr std::size_t most_barren = 500;  // descents without gain before a new start

using LaneOrder = std::vector<std::uint32_t>;  // tasks, counted from 1

/// A list under change with its dice; positions count from 1.
template <class List>
struct Descent {
  List at;
  std::mt19937 dice;

  std::size_t below(std::size_t n) { return dice() % n; }
  double unit() { return (static_cast<double>(dice()) + 0.5) / 4294967296.0; }
};

/// Each run of that length, from one by the dice on, to the place where it gains most; false when none gains.
template <class List>
bool move_runs(Descent<List>& of, std::size_t length) {
  const std::size_t end = of.at.size() + 1, first = of.below(end);
  bool gains = false;
  for (std::size_t k = 1; k + length < end; ++k) {
    const std::size_t low = 1 + (first + k) % (end - length - 1);
    auto least = of.at.cost();
    std::size_t middle = 0, high = 0;
    const auto consider = [&](std::size_t between, std::size_t behind) {
      const auto is = of.at.exchanged(low, between, behind, least);
      if (is < least) least = is, middle = between, high = behind;
    };
    const std::size_t last = std::min(end, low + length + farthest);
    for (std::size_t behind = low + length + 1; behind <= last; ++behind) {
      consider(low + length, behind);                                    // the first run goes to the end
      if (behind - low > 2 * length) consider(behind - length, behind);  // the last run goes to the beginning
    }
    if (middle == 0) continue;
    of.at.exchange(low, middle, high);
    gains = true;
  }
  return gains;
}

/// Each task, from one by the dice on, changes places with a later one where that gains most; false when none gains.
template <class List>
bool swap_pairs(Descent<List>& of) {
  const std::size_t end = of.at.size() + 1, first = of.below(end);
  bool gains = false;
  for (std::size_t k = 1; k + 2 < end; ++k) {
    const std::size_t low = 1 + (first + k) % (end - 3);
    auto least = of.at.cost();
    std::size_t with = 0;
    const std::size_t last = std::min(end, low + farthest);
    for (std::size_t high = low + 2; high < last; ++high) {
      const auto is = of.at.swapped(low, high, least);
      if (is < least) least = is, with = high;
    }
    if (with == 0) continue;
    of.at.swap(low, with);
    gains = true;
  }
  return gains;
}

/// Goes on while some neighbourhood gains; which is looked at next is by the dice.
template <class List, class Left>
void descend(Descent<List>& of, Left left) {
  std::vector<std::size_t> all(longest_moved + 1), open;  // by length of run; 0: two tasks change places
  std::iota(all.begin(), all.end(), 0);
  for (open = all; !open.empty() && left();) {
    const std::size_t k = of.below(open.size());
    if (open[k] == 0 ? swap_pairs(of) : move_runs(of, open[k]))
      open = all;
    else
      open.erase(open.begin() + static_cast<std::ptrdiff_t>(k));
  }
}

/// Once or twice, two runs beside each other change places.
template <class List>
void kick(Descent<List>& of) {
  for (std::size_t times = 1 + of.below(2); times > 0; --times) {
    const std::size_t longest = std::min(longest_kicked, of.at.size() / 2);
    const std::size_t first = 1 + of.below(longest), second = 1 + of.below(longest);
    const std::size_t low = 1 + of.below(of.at.size() - first - second + 1);
    of.at.exchange(low, low + first, low + first + second);
  }
}

/// The best order found. `new_start` gives an order by two shares of patience.
template <class List, class NewStart>
LaneOrder least_late(List from, NewStart new_start, std::int64_t floor, const MoveBudget& allowed) {
  Descent<List> search{std::move(from), std::mt19937(allowed.seed)};
  List& at = search.at;
  LaneLevels least = at.levels();
  LaneOrder best = at.order();
  UsedBudget budget{allowed};
  const auto left = [&] { return (least.unplaced > 0 || least.late > floor) && budget.left(at.looked_at()); };
  const auto settle = [&] {
    descend(search, left);
    if (at.levels() >= least) return;
    least = at.levels();
    best = at.order();
  };
  for (bool first = true; left(); first = false) {
    if (!first) at.become(new_start(0.3 + 7 * search.unit(), 0.03 + search.unit()));
    settle();
    LaneOrder kept = at.order();
    auto reached = at.cost();
    for (std::size_t barren = 0; barren < most_barren && left();) {
      kick(search);
      settle();
      const auto cost = at.cost();
      barren = cost < reached ? 0 : barren + 1;
      if (cost <= reached) {  // as good and another order: that leads on where little is late
        kept = at.order(), reached = cost;
      } else {
        at.become(kept);
      }
    }
  }
  return best;
}

}  // namespace

bool in_one_lane(const ShopNet& net) {
  return std::ranges::all_of(net.tasks, [&](const NetTask& task) {
    return task.ways.size() == 1 && task.ways.front().station == net.tasks.front().ways.front().station;
  });
}

Improved lane_descents(ShopNet& net, const Improved& from, std::int64_t floor, const MoveBudget& allowed) {
  Lanes lanes(net, from.list);
  const std::size_t station = net.tasks.front().ways.front().station;
  LaneList list(lanes, station);
  const LaneOrder first = list.order();
  const Lane unordered = lanes.all()[station];
  const auto new_start = [&](double patience, double set_up_patience) {
    LaneOrder order;
    for (const Piece& piece : lane_start(net, unordered, patience, set_up_patience)) order.push_back(piece.task + 1);
    return order;
  };
  MoveBudget looks = allowed;
  looks.moves *= net.tasks.size();
  const std::optional<FlatWork> flat = flat_work(net);
  TaskList found;
  for (const std::uint32_t task :
       flat ? least_late(FlatList(*flat, first), new_start, floor, looks) : least_late(list, new_start, floor, looks))
    found.push_back({task - 1, 0});
  const Levels levels = levels_of(net, found);
  return levels < from.levels ? Improved{found, levels} : from;
}

}  // namespace seambook
