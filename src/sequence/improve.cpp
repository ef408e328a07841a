#include "sequence/improve.hpp"

#include <algorithm>
#include <optional>
#include <random>

namespace seambook {

namespace {

constexpr std::size_t most_runs_moved = 3;  // longer neighbours seldom stay together
constexpr std::size_t moves_per_kick = 2;
constexpr std::uint32_t fixed_seed = 20240229;   // the same input gives the same order
constexpr std::size_t kicks_before_return = 30;  // then the walk goes back to the best order

/// An order with what is mounted and spent before each position.
struct PricedOrder {
  Order order;
  std::vector<std::uint32_t> position, mounted;  // per operation; per position and after the last
  std::vector<Time<>> spent;
};

struct Walk {
  MountedStates& mounted;
  const WorkNet& net;
  Time<> floor;
  std::size_t moves_left = 0;
  std::mt19937 random;
  PricedOrder at;
};

struct Block {
  std::size_t begin = 0, end = 0;
};

/// Taking the block out and putting it in before position `to` (outside the block).
struct Move {
  Block block;
  std::size_t to = 0;
};

void price_from(Walk& walk, std::size_t first) {
  PricedOrder& at = walk.at;
  for (std::size_t p = first; p < at.order.size(); ++p) {
    const Mounting next = mount(walk.mounted, walk.net, at.mounted[p], walk.net.need_of[at.order[p]]);
    at.position[at.order[p]] = static_cast<std::uint32_t>(p);
    at.mounted[p + 1] = next.state;
    at.spent[p + 1] = at.spent[p] + next.cost;
  }
}

PricedOrder unpriced(const Order& order) {
  return {order, std::vector<std::uint32_t>(order.size()), std::vector<std::uint32_t>(order.size() + 1),
          std::vector<Time<>>(order.size() + 1)};
}

bool begins_run(const Walk& walk, std::size_t p) {
  const Order& order = walk.at.order;
  return p == 0 || p == order.size() || walk.net.need_of[order[p]] != walk.net.need_of[order[p - 1]];
}

std::size_t end_of_run(const Walk& walk, std::size_t p) {
  do ++p;
  while (!begins_run(walk, p));
  return p;
}

/// Positions before which the block may stand, without breaking precedence: from after its last predecessor outside to
/// before its first successor outside.
Block window_of(const Walk& walk, Block block) {
  Block window{0, walk.at.order.size()};
  for (std::size_t p = block.begin; p < block.end; ++p) {
    for (const std::uint32_t o : walk.net.before[walk.at.order[p]])
      if (walk.at.position[o] < block.begin)
        window.begin = std::max<std::size_t>(window.begin, walk.at.position[o] + 1);
    for (const std::uint32_t o : walk.net.after[walk.at.order[p]])
      if (walk.at.position[o] >= block.end) window.end = std::min<std::size_t>(window.end, walk.at.position[o]);
  }
  return window;
}

/// Change time of going through positions [begin, end) from `state`, which it moves on. Repeats of a need cost nothing.
Time<> passing(const Walk& walk, std::size_t begin, std::size_t end, std::uint32_t& state) {
  Time<> total{};
  std::optional<std::uint32_t> last;
  for (std::size_t p = begin; p < end; ++p) {
    const std::uint32_t need = walk.net.need_of[walk.at.order[p]];
    if (need == last) continue;
    const Mounting next = mount(walk.mounted, walk.net, state, need);
    total = total + next.cost;
    state = next.state;
    last = need;
  }
  return total;
}

/// Whether the order is cheaper after the move. What follows is priced until the mounted state is as it was.
bool cheaper_after(const Walk& walk, Move move) {
  const PricedOrder& at = walk.at;
  const std::size_t begin = std::min(move.to, move.block.begin), end = std::max(move.to, move.block.end);
  const std::size_t middle = move.to < move.block.begin ? move.block.begin : move.block.end;
  std::uint32_t state = at.mounted[begin];
  Time<> total = at.spent[begin] + passing(walk, middle, end, state);
  total = total + passing(walk, begin, middle, state);
  std::size_t p = end;
  for (; p < at.order.size() && state != at.mounted[p]; ++p) total = total + passing(walk, p, p + 1, state);
  return total < at.spent[p];
}

void make(Walk& walk, Move move) {
  const auto at = [&](std::size_t p) { return walk.at.order.begin() + static_cast<std::ptrdiff_t>(p); };
  const std::size_t begin = std::min(move.to, move.block.begin), end = std::max(move.to, move.block.end);
  std::rotate(at(begin), at(move.to < move.block.begin ? move.block.begin : move.block.end), at(end));
  price_from(walk, begin);
}

Time<> total_of(const Walk& walk) { return walk.at.spent.back(); }

/// Tries the block everywhere it may go next to another run, or at the ends of its window; makes the first move that
/// pays.
bool move_block(Walk& walk, Block block) {
  const Block window = window_of(walk, block);
  for (std::size_t to = window.begin; to <= window.end && walk.moves_left > 0; ++to) {
    const bool inside = to >= block.begin && to <= block.end;
    if (inside || (!begins_run(walk, to) && to != window.begin && to != window.end)) continue;
    --walk.moves_left;
    if (!cheaper_after(walk, {block, to})) continue;
    make(walk, {block, to});
    return true;
  }
  return false;
}

/// Blocks that begin at the run which begins at `begin`: one to three runs, and the run's first and last operation.
bool move_from(Walk& walk, std::size_t begin) {
  const std::size_t run_end = end_of_run(walk, begin);
  std::size_t end = begin;
  for (std::size_t runs = 0; runs < most_runs_moved && end < walk.at.order.size(); ++runs) {
    end = end_of_run(walk, end);
    if (move_block(walk, {begin, end})) return true;
  }
  if (run_end - begin < 2) return false;
  return move_block(walk, {begin, begin + 1}) || move_block(walk, {run_end - 1, run_end});
}

bool go_on(const Walk& walk) { return walk.moves_left > 0 && walk.floor < total_of(walk); }

std::vector<std::size_t> run_begins(const Walk& walk) {
  std::vector<std::size_t> begins;
  for (std::size_t p = 0; p < walk.at.order.size(); p = end_of_run(walk, p)) begins.push_back(p);
  return begins;
}

void descend(Walk& walk) {
  std::size_t unchanged = 0, begin = 0;
  while (go_on(walk) && unchanged <= run_begins(walk).size()) {
    unchanged = move_from(walk, begin) ? 0 : unchanged + 1;
    while (!begins_run(walk, begin)) ++begin;
    begin = begin < walk.at.order.size() ? end_of_run(walk, begin) : 0;
    if (begin == walk.at.order.size()) begin = 0;
  }
}

std::size_t pick(Walk& walk, std::size_t below) { return walk.random() % below; }

void kick(Walk& walk) {
  const std::vector<std::size_t> begins = run_begins(walk);
  const std::size_t begin = begins[pick(walk, begins.size())];
  std::size_t end = end_of_run(walk, begin);
  if (pick(walk, 2) == 0) end = begin + 1 + pick(walk, end - begin);
  const Block block{begin, end}, window = window_of(walk, block);
  const std::size_t to = window.begin + pick(walk, window.end - window.begin + 1);
  if (to < block.begin || to > block.end) make(walk, {block, to});
}

}  // namespace

Order cheapest_next_order(MountedStates& mounted, const WorkNet& net) {
  Order order;
  Progress progress = nothing_done(net);
  std::uint32_t state = 0;
  while (progress.remaining > 0) {
    std::optional<std::uint32_t> best;
    Time<> least{};
    for (std::uint32_t o = 0; o < net.need_of.size(); ++o) {
      if (!ready(progress, o)) continue;
      const Time<> cost = mount(mounted, net, state, net.need_of[o]).cost;
      if (best && !(cost < least)) continue;
      best = o;
      least = cost;
      if (cost == Time<>{}) break;
    }
    state = mount(mounted, net, state, net.need_of[*best]).state;
    perform(net, progress, *best);
    order.push_back(*best);
  }
  return order;
}

Order improved_order(MountedStates& mounted, const WorkNet& net, const Order& order, Time<> floor, std::size_t moves) {
  if (order.size() < 2) return order;
  Walk walk{mounted, net, floor, moves, std::mt19937{fixed_seed}, unpriced(order)};
  price_from(walk, 0);
  PricedOrder best = walk.at, kept = walk.at;
  std::size_t kicks = 0;
  descend(walk);
  while (true) {
    if (total_of(walk) < best.spent.back()) best = walk.at;
    if (!go_on(walk)) return best.order;
    if (kept.spent.back() < total_of(walk)) walk.at = kept;
    if (++kicks % kicks_before_return == 0) walk.at = best;
    kept = walk.at;
    for (std::size_t i = 0; i < moves_per_kick; ++i) kick(walk);
    --walk.moves_left;
    descend(walk);
  }
}

}  // namespace seambook
