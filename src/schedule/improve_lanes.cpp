#include "schedule/improve_lanes.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <tuple>

namespace seambook {
namespace {

constexpr double anywhere = std::numeric_limits<double>::infinity();
constexpr double settling_share = 0.02;  // of the budget: a descent, so that the heat fits
constexpr int annealings = 2;
constexpr std::size_t between_looks = 64;  // moves between two looks at the budget
constexpr std::size_t longest_block = 20;
constexpr double worth_of_new_scale = 0.97;

/// A search with its dice; the changes of a move are those of `changes[0..count)`.
struct LaneSearch {
  ShopNet& net;
  Lanes at;
  std::mt19937 dice;
  double cost = 0;
  LaneChange changes[2];
  std::vector<Piece> run;  // reused

  std::size_t below(std::size_t n) { return dice() % n; }
  double unit() { return (static_cast<double>(dice()) + 0.5) / 4294967296.0; }
  /// From 1 to n, each order of size as often as any other.
  std::size_t span(std::size_t n) { return static_cast<std::size_t>(std::pow(static_cast<double>(n), unit())); }
};

/// The station that costs most three times of ten, else any.
std::size_t some_lane(LaneSearch& search) {
  const auto& lanes = search.at.all();
  if (search.below(10) >= 3) return search.below(lanes.size());
  const auto worst = std::ranges::max_element(lanes, {}, [](const Lane& lane) { return lane.cost(); });
  return static_cast<std::size_t>(worst - lanes.begin());
}

/// Puts a piece where it costs the lane least, in place of the one at `out` when that is in the lane; not back at `out`
/// itself when `elsewhere`. Gives the lane's cost then, infinity when it is more than `limit`.
double best_place(LaneSearch& search, std::size_t number, std::size_t out, const Piece& piece, bool elsewhere,
                  double limit, LaneChange& best) {
  const Lane& lane = search.at.all()[number];
  const bool replaces = out < lane.pieces.size();
  best.lane = number;
  double least = anywhere;
  std::size_t to = 0;
  const auto between = [&](std::size_t place, std::vector<Piece>& pieces) -> std::pair<std::size_t, std::size_t> {
    pieces.assign(1, piece);
    const auto first = lane.pieces.begin();
    if (!replaces) return {place, place};
    if (place <= out) {
      pieces.insert(pieces.end(), first + static_cast<std::ptrdiff_t>(place), first + static_cast<std::ptrdiff_t>(out));
      return {place, out + 1};
    }
    pieces.insert(pieces.begin(), first + static_cast<std::ptrdiff_t>(out) + 1,
                  first + static_cast<std::ptrdiff_t>(place) + 1);
    return {out, place + 1};
  };
  const std::size_t places = lane.pieces.size() + (replaces ? 0 : 1);
  for (std::size_t place = 0; place < places; ++place) {
    if (elsewhere && place == out) continue;
    const auto [low, high] = between(place, search.run);
    const double is = search.at.tried(number, low, search.run, high, std::min(limit, least));
    if (is < least) least = is, to = place;
  }
  if (least < anywhere) std::tie(best.low, best.high) = between(to, best.pieces);
  return least;
}

/// A way of the task at another's station; nothing when there is none. One of several by the dice.
std::optional<Piece> piece_at(LaneSearch& search, std::uint32_t task, std::uint32_t station) {
  const auto& ways = search.net.tasks[task].ways;
  const std::size_t first = search.below(ways.size());
  for (std::size_t k = 0; k < ways.size(); ++k) {
    const std::size_t w = (first + k) % ways.size();
    if (ways[w].station == station) return Piece{task, static_cast<std::uint32_t>(w)};
  }
  return std::nullopt;
}

/// What a move leaves of the limit for the changed lanes: both are taken out of the sum.
double allowed(const LaneSearch& search, double limit, std::size_t a, std::size_t b) {
  const auto& lanes = search.at.all();
  return limit - search.cost + lanes[a].cost() + (a == b ? 0 : lanes[b].cost());
}

/// One task to the best place of a way of its own by the dice. The number of changed lanes; 0 when it costs too much.
std::size_t move_one(LaneSearch& search, double limit) {
  const std::size_t from = some_lane(search);
  const Lane& lane = search.at.all()[from];
  if (lane.pieces.empty()) return 0;
  const std::size_t out = search.below(lane.pieces.size());
  const Piece& old = lane.pieces[out];
  const auto& ways = search.net.tasks[old.task].ways;
  const bool stays = search.below(100) < 15;
  const std::size_t way = stays ? old.way : search.below(ways.size());
  const Piece piece{old.task, static_cast<std::uint32_t>(way)};
  const std::size_t to = ways[way].station;
  const double most = allowed(search, limit, from, to);
  if (from == to)
    return best_place(search, from, out, piece, piece.way == old.way, most, search.changes[0]) < anywhere ? 1 : 0;
  const double left = search.at.tried(from, out, {}, out + 1, most);
  if (left == anywhere) return 0;
  search.changes[0].lane = from, search.changes[0].low = out, search.changes[0].high = out + 1;
  search.changes[0].pieces.clear();
  return best_place(search, to, ~std::size_t{0}, piece, false, most - left, search.changes[1]) < anywhere ? 2 : 0;
}

/// Two tasks of two lanes, each to the best place in the other's lane.
std::size_t swap_lanes(LaneSearch& search, double limit) {
  const auto& lanes = search.at.all();
  const std::size_t a = some_lane(search), b = search.below(lanes.size());
  if (a == b || lanes[a].pieces.empty() || lanes[b].pieces.empty()) return 0;
  const std::size_t of_a = search.below(lanes[a].pieces.size()), of_b = search.below(lanes[b].pieces.size());
  const auto to_a = piece_at(search, lanes[b].pieces[of_b].task, lanes[a].station);
  const auto to_b = piece_at(search, lanes[a].pieces[of_a].task, lanes[b].station);
  if (!to_a || !to_b) return 0;
  const double most = allowed(search, limit, a, b);
  const double cost_of_a = best_place(search, a, of_a, *to_a, false, most, search.changes[0]);
  if (cost_of_a == anywhere) return 0;
  return best_place(search, b, of_b, *to_b, false, most - cost_of_a, search.changes[1]) < anywhere ? 2 : 0;
}

/// Two tasks, or two runs beside each other, change places in one lane.
std::size_t move_within(LaneSearch& search, double limit) {
  const std::size_t number = some_lane(search);
  const Lane& lane = search.at.all()[number];
  const std::size_t size = lane.pieces.size();
  if (size < 2) return 0;
  const std::size_t kind = search.below(100), from = search.below(size), distance = search.span(size);
  LaneChange& change = search.changes[0];
  change.lane = number, change.low = from;
  const auto at = [&](std::size_t p) { return lane.pieces.begin() + static_cast<std::ptrdiff_t>(p); };
  if (kind < 25) {
    change.high = from + distance + 1;
    if (change.high > size) return 0;
    change.pieces.assign(at(from), at(change.high));
    std::swap(change.pieces.front(), change.pieces.back());
  } else {
    const std::size_t block = kind < 65 ? 1 : 1 + search.span(longest_block);
    const bool forth = search.below(2) == 0;
    const std::size_t middle = from + (forth ? block : distance);
    change.high = from + block + distance;
    if (change.high > size) return 0;
    change.pieces.assign(at(middle), at(change.high));
    change.pieces.insert(change.pieces.end(), at(from), at(middle));
  }
  const double most = allowed(search, limit, number, number);
  return search.at.tried(number, change.low, change.pieces, change.high, most) < anywhere ? 1 : 0;
}

std::size_t any_change(LaneSearch& search, double limit) {
  const bool alone = search.at.all().size() == 1;
  if (alone || search.below(10) < (search.at.shared_orders() ? 1U : 5U)) return move_within(search, limit);
  return search.below(2) == 0 ? swap_lanes(search, limit) : move_one(search, limit);
}

struct LaneHeat {
  double hot = 0, cold = 0;
};

/// An order of several lanes weighs as much as the latest one: the heat is a share of it. Else lateness lies in few
/// tasks or in all of them: the heat is what one of them may weigh, and a share of what it does weigh.
LaneHeat heat_of(const LaneSearch& search, std::int64_t late) {
  const double weight = std::max(1.0, static_cast<double>(late));
  if (search.at.shared_orders()) return {0.5 * weight, 0.025 * weight};
  double work = 0, weights = 0;
  for (const NetTask& task : search.net.tasks) {
    work += static_cast<double>(task.ways.front().time.count());
    weights += static_cast<double>(search.net.orders[task.order].weight);
  }
  const auto tasks = static_cast<double>(search.net.tasks.size());
  const double of_one = work / tasks * weights / tasks, each = weight / tasks;
  return {0.2 * of_one + each, 0.006 * of_one + 0.01 * each};
}

/// The best list so far by its first levels, and the list.
struct BestLanes {
  LaneLevels levels;
  TaskList list;
};

}  // namespace

Improved improved_lanes(ShopNet& net, const Improved& from, std::int64_t floor, const MoveBudget& allowed_moves) {
  LaneSearch search{net, Lanes(net, from.list), std::mt19937(allowed_moves.seed), 0, {}, {}};
  BestLanes best{search.at.levels(), from.list};
  MoveBudget pieces = allowed_moves;
  pieces.moves *= net.tasks.size();
  UsedBudget budget{pieces};
  const auto settle = [&] {
    search.at.scale_to(best.levels.late);
    search.cost = search.at.cost();
  };
  settle();
  LaneHeat heat;
  int cycle = -1;  // the descent
  double scale = static_cast<double>(best.levels.late), hot = 0;
  for (std::size_t k = 0;; ++k) {
    if (k % between_looks == 0) {
      if (!budget.left(search.at.timed() + k)) break;
      const double progress = (budget.share - settling_share) / (1 - settling_share) * annealings;
      if (progress > static_cast<double>(cycle) + 1) {
        ++cycle;
        search.at = Lanes(net, best.list);
        settle();
        heat = heat_of(search, best.levels.late);
      }
      if (static_cast<double>(best.levels.late) < worth_of_new_scale * scale) {
        scale = static_cast<double>(best.levels.late);
        settle();
      }
      hot = cycle < 0 ? 0 : heat.hot * std::pow(heat.cold / heat.hot, progress - cycle);
    }
    const std::size_t changed = any_change(search, search.cost - hot * std::log(search.unit()));
    if (changed == 0) continue;
    for (std::size_t c = 0; c < changed; ++c) search.at.apply(search.changes[c]);
    search.cost = search.at.cost();
    const LaneLevels levels = search.at.levels();
    if (levels >= best.levels) continue;
    best = {levels, search.at.list()};
    if (levels.unplaced == 0 && levels.late <= floor) break;
  }
  const Levels found = levels_of(net, best.list);
  return found < from.levels ? Improved{best.list, found} : from;
}

}  // namespace seambook
