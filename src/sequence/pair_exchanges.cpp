#include "sequence/pair_exchanges.hpp"

#include <algorithm>

#include "sequence/pair_turns.hpp"

namespace seambook {
namespace {

/// The best exchange found so far.
struct BestExchange {
  Time<> gain{};
  std::optional<Exchange> exchange;
};

/// Exchanges that put `head` right after the node at p, whatever the third arc: of the three arcs that an exchange
/// brings in, some two in a row cost less than what they replace (Lin and Kernighan 1973), so the second head is sought
/// among the nearest only while the sum still gains. The third arc goes from before the second head to what stood after
/// the node at p.
void exchanges_by(const PairWalk& walk, std::size_t p, std::uint32_t head, Time<> gained, BestExchange& best) {
  const std::size_t h = walk.position[head];
  if (h == 0) return;
  const std::uint32_t tail = walk.order[h - 1], last = walk.order[p + 1];
  const Time<> open = gained + walk.into[head], least = walk.least_into[last];
  const auto second_heads = [&](auto allowed, auto made) {
    for (const auto& [next, cost] : walk.nearest[tail]) {
      if (!(cost < open)) break;
      const Time<> opened = open - cost + walk.into[next];
      if (!(best.gain < opened - least)) continue;
      const std::size_t q = walk.position[next];
      if (!allowed(q)) continue;
      const Time<> gain = opened - walk.net.arc(walk.order[q - 1], last);
      if (!(best.gain < gain)) continue;
      if (const Exchange e = made(q); keeps_precedence(walk, e)) best = {gain, e};
    }
  };
  // Where many arcs cost the same, orders come out cheaper when moving on is tried before moving back (measured).
  if (h > p + 1) {
    second_heads([&](std::size_t q) { return q > h; }, [&](std::size_t q) { return Exchange{p, h - 1, q - 1}; });
    second_heads([&](std::size_t q) { return q > 0 && q <= p; },
                 [&](std::size_t q) {
                   return Exchange{q - 1, p, h - 1};
                 });
  } else if (h < p) {
    second_heads([&](std::size_t q) { return q > h && q <= p; },
                 [&](std::size_t q) {
                   return Exchange{h - 1, q - 1, p};
                 });
  }
}

}  // namespace

// A chain from one run to the other passes through the runs only, so direct neighbours tell.
bool keeps_precedence(const PairWalk& walk, const Exchange& e) {
  const auto within = [&](std::uint32_t node, std::size_t begin, std::size_t end) {
    return walk.position[node] > begin && walk.position[node] <= end;
  };
  if (e.middle - e.from <= e.to - e.middle) {
    for (std::size_t p = e.from + 1; p <= e.middle; ++p)
      for (const std::uint32_t v : walk.net.follows[walk.order[p]])
        if (within(v, e.middle, e.to)) return false;
  } else {
    for (std::size_t p = e.middle + 1; p <= e.to; ++p)
      for (const std::uint32_t u : walk.net.leads[walk.order[p]])
        if (within(u, e.from, e.middle)) return false;
  }
  return true;
}

Time<> gain_of(const PairWalk& walk, const Exchange& e) {
  return arc_between(walk, e.from, e.from + 1) + arc_between(walk, e.middle, e.middle + 1) +
         arc_between(walk, e.to, e.to + 1) - arc_between(walk, e.from, e.middle + 1) -
         arc_between(walk, e.to, e.from + 1) - arc_between(walk, e.middle, e.to + 1);
}

void exchange(PairWalk& walk, const Exchange& e) {
  walk.total = walk.total - gain_of(walk, e);
  for (const std::size_t p : {e.from, e.from + 1, e.middle, e.middle + 1, e.to, e.to + 1})
    look_again(walk, walk.order[p]);
  const auto at = [&](std::size_t p) { return walk.order.begin() + static_cast<std::ptrdiff_t>(p); };
  std::rotate(at(e.from + 1), at(e.middle + 1), at(e.to + 1));
  place_again(walk, e.from + 1, e.to);
  for (const std::size_t p : {e.from + 1, e.from + 1 + e.to - e.middle, e.to + 1}) reach_again(walk, p);
}

bool improve_at(PairWalk& walk, std::uint32_t node) {
  const std::size_t p = walk.position[node];
  if (p + 1 >= walk.order.size()) return false;
  BestExchange best{walk.least_gain, std::nullopt};
  const Time<> old = walk.net.arc(node, walk.order[p + 1]);
  for (const auto& [head, fresh] : walk.nearest[node]) {
    if (!(fresh < old)) break;
    exchanges_by(walk, p, head, old - fresh, best);
  }
  if (walk.turns) {
    if (const auto turned = best_turn(walk, node, best.gain)) {
      turn(walk, *turned);
      return true;
    }
  }
  if (!best.exchange) return false;
  exchange(walk, *best.exchange);
  return true;
}

}  // namespace seambook
