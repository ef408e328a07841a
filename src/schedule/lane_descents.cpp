#include "schedule/lane_descents.hpp"

#include <algorithm>
#include <numeric>
#include <random>

#include "schedule/lane_start.hpp"

namespace seambook {
namespace {

constexpr std::size_t longest_moved = 4, longest_kicked = 12;
constexpr std::size_t farthest = 60;       // that a run goes or two tasks stand apart: long lists, in bounded time
constexpr std::size_t most_barren = 200;   // descents without gain before a new start
constexpr double gain_that_counts = 1e-6;  // below, it is rounding

struct Descent {
  Lanes at;
  std::size_t lane = 0;
  std::mt19937 dice;
  LaneChange best;         // reused
  std::vector<Piece> run;  // reused

  const Lane& list() const { return at.all()[lane]; }
  double cost() const { return list().cost(); }
  std::size_t below(std::size_t n) { return dice() % n; }
  double unit() { return (static_cast<double>(dice()) + 0.5) / 4294967296.0; }
};

/// Keeps the change of [low, high) to `run` when it is cheaper than `least`.
void consider(Descent& of, std::size_t low, std::size_t high, double& least) {
  const double is = of.at.tried(of.lane, low, of.run, high, least - gain_that_counts);
  if (!(is < least)) return;
  least = is;
  of.best.low = low, of.best.high = high, of.best.pieces = of.run;
}

/// Of all runs of that length and all places, the best; false when none is cheaper than now.
bool move_run(Descent& of, std::size_t length) {
  const std::vector<Piece>& pieces = of.list().pieces;
  double least = of.cost();
  const double now = least;
  const auto at = [&](std::size_t p) { return pieces.begin() + static_cast<std::ptrdiff_t>(p); };
  for (std::size_t low = 0; low + length < pieces.size(); ++low) {
    const std::size_t last = std::min(pieces.size(), low + length + farthest);
    for (std::size_t high = low + length + 1; high <= last; ++high) {
      of.run.assign(at(low + length), at(high));  // the first run goes to the end
      of.run.insert(of.run.end(), at(low), at(low + length));
      consider(of, low, high, least);
      of.run.assign(at(high - length), at(high));  // the last run goes to the beginning
      of.run.insert(of.run.end(), at(low), at(high - length));
      consider(of, low, high, least);
    }
  }
  if (least < now) of.at.apply(of.best);
  return least < now;
}

/// Of all pairs, the one that gains most by changing places; false when none gains.
bool swap_two(Descent& of) {
  const std::vector<Piece>& pieces = of.list().pieces;
  double least = of.cost();
  const double now = least;
  const auto at = [&](std::size_t p) { return pieces.begin() + static_cast<std::ptrdiff_t>(p); };
  for (std::size_t low = 0; low + 2 < pieces.size(); ++low) {
    const std::size_t last = std::min(pieces.size(), low + farthest);
    for (std::size_t high = low + 3; high <= last; ++high) {
      of.run.assign(at(low), at(high));
      std::swap(of.run.front(), of.run.back());
      consider(of, low, high, least);
    }
  }
  if (least < now) of.at.apply(of.best);
  return least < now;
}

/// Goes on while some neighbourhood gains; which is looked at next is by the dice.
template <class Left>
void descend(Descent& of, Left left) {
  std::vector<std::size_t> all(longest_moved + 1), open;  // by length of run; 0: two tasks change places
  std::iota(all.begin(), all.end(), 0);
  for (open = all; !open.empty() && left();) {
    const std::size_t k = of.below(open.size());
    if (open[k] == 0 ? swap_two(of) : move_run(of, open[k]))
      open = all;
    else
      open.erase(open.begin() + static_cast<std::ptrdiff_t>(k));
  }
}

/// Once or twice, two runs beside each other change places.
void kick(Descent& of) {
  for (std::size_t times = 1 + of.below(2); times > 0; --times) {
    const std::vector<Piece>& pieces = of.list().pieces;
    const std::size_t longest = std::min(longest_kicked, pieces.size() / 2);
    const std::size_t first = 1 + of.below(longest), second = 1 + of.below(longest);
    const std::size_t low = of.below(pieces.size() - first - second + 1);
    of.best.low = low, of.best.high = low + first + second;
    const auto at = [&](std::size_t p) { return pieces.begin() + static_cast<std::ptrdiff_t>(p); };
    of.best.pieces.assign(at(low), at(of.best.high));
    std::rotate(of.best.pieces.begin(), of.best.pieces.begin() + static_cast<std::ptrdiff_t>(first),
                of.best.pieces.end());
    of.at.apply(of.best);
  }
}

void go_back(Descent& of, const std::vector<Piece>& pieces) {
  of.at.apply({of.lane, 0, of.list().pieces.size(), pieces});
}

}  // namespace

bool in_one_lane(const ShopNet& net) {
  return std::ranges::all_of(net.tasks, [&](const NetTask& task) {
    return task.ways.size() == 1 && task.ways.front().station == net.tasks.front().ways.front().station;
  });
}

Improved lane_descents(ShopNet& net, const Improved& from, std::int64_t floor, const MoveBudget& allowed) {
  Descent search{Lanes(net, from.list), net.tasks.front().ways.front().station, std::mt19937(allowed.seed), {}, {}};
  search.best.lane = search.lane;
  LaneLevels best = search.at.levels();
  TaskList list = from.list;
  MoveBudget pieces = allowed;
  pieces.moves *= net.tasks.size();
  UsedBudget budget{pieces};
  const auto done = [&] { return best.unplaced == 0 && best.late <= floor; };
  const auto left = [&] { return !done() && budget.left(search.at.timed()); };
  const auto look = [&] {
    if (search.at.levels() >= best) return;
    best = search.at.levels();
    list = search.at.list();
  };
  for (bool first = true; left(); first = false) {
    if (!first) go_back(search, lane_start(net, search.list(), 0.3 + 7 * search.unit(), 0.03 + search.unit()));
    descend(search, left);
    look();
    std::vector<Piece> kept = search.list().pieces;
    LaneLevels reached = search.at.levels();
    for (std::size_t barren = 0; barren < most_barren && left();) {
      kick(search);
      descend(search, left);
      look();
      const LaneLevels now = search.at.levels();
      barren = now < reached ? 0 : barren + 1;
      if (now <= reached) {  // as late with more set-up too: that leads on where little is late
        kept = search.list().pieces, reached = now;
      } else {
        go_back(search, kept);
      }
    }
  }
  const Levels found = levels_of(net, list);
  return found < from.levels ? Improved{list, found} : from;
}

}  // namespace seambook
