#include "sequence/pair_turns.hpp"

#include <algorithm>

namespace seambook {
namespace {

struct BestTurn {
  Time<> least{};
  std::optional<Turn> turn;
};

/// A chain from one node of the run to another passes through the run only, so direct neighbours tell.
bool binds_within(const PairWalk& walk, std::size_t first, std::size_t last) {
  for (std::size_t p = first; p < last; ++p)
    for (const std::uint32_t v : walk.net.follows[walk.order[p]])
      if (walk.position[v] > p && walk.position[v] <= last) return true;
  return false;
}

Time<> dearer_inside(const PairWalk& walk, std::size_t first, std::size_t last) {
  Time<> more{};
  for (std::size_t p = first; p < last; ++p) more = more + arc_between(walk, p + 1, p) - arc_between(walk, p, p + 1);
  return more;
}

/// The ends tell first whether it can gain, were all arcs inside the same both ways; only then the run is looked at.
void consider(const PairWalk& walk, std::size_t first, std::size_t last, BestTurn& best) {
  if (first == 0 || first >= last || last + 1 >= walk.order.size()) return;
  const Time<> ends = arc_between(walk, first - 1, first) + arc_between(walk, last, last + 1) -
                      arc_between(walk, first - 1, last) - arc_between(walk, first, last + 1);
  if (!(best.least < ends) || binds_within(walk, first, last)) return;
  const Time<> gain = ends - dearer_inside(walk, first, last);
  if (best.least < gain) best = {gain, Turn{first, last, gain}};
}

}  // namespace

std::optional<Turn> best_turn(const PairWalk& walk, std::uint32_t node, Time<> least) {
  const std::size_t p = walk.position[node];
  if (p + 1 >= walk.order.size()) return std::nullopt;
  BestTurn best{least, std::nullopt};
  const Time<> to_next = arc_between(walk, p, p + 1), from_last = p > 0 ? arc_between(walk, p - 1, p) : Time<>{};
  for (const auto& [near, fresh] : walk.nearest[node]) {
    if (!(fresh < std::max(to_next, from_last))) break;
    const std::size_t q = walk.position[near];
    if (fresh < to_next) consider(walk, std::min(p, q) + 1, std::max(p, q), best);
    if (fresh < from_last) consider(walk, std::min(p, q), std::max(p, q) - 1, best);
  }
  return best.turn;
}

void turn(PairWalk& walk, const Turn& t) {
  walk.total = walk.total - t.gain;
  for (const std::size_t p : {t.first - 1, t.first, t.last, t.last + 1}) look_again(walk, walk.order[p]);
  const auto at = [&](std::size_t p) { return walk.order.begin() + static_cast<std::ptrdiff_t>(p); };
  std::reverse(at(t.first), at(t.last + 1));
  place_again(walk, t.first, t.last);
  for (std::size_t p = t.first; p <= t.last + 1; ++p) reach_again(walk, p);
}

}  // namespace seambook
