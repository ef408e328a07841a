#include "schedule/lanes.hpp"

#include <algorithm>
#include <limits>

namespace seambook {
namespace {

constexpr double too_much = std::numeric_limits<double>::infinity();
constexpr double cost_of_undone = 1e12, cost_of_change = 0.002;  // beside one second late
constexpr double rounding_of_costs = 1e-6;

/// The usual way: its time falls into the only window there is, unless it does not end before that closes.
bool is_plain(const ShopNet& net, const NetTask& task, const NetWay& way) {
  return net.calendars[way.calendar].size() == 1 && way.time > Seconds{} && task.held <= way.time;
}

LaneWay lane_way(const ShopNet& net, const NetTask& task, const NetWay& way, bool single) {
  const ShopOrder& order = net.orders[task.order];
  LaneWay out{way.need, task.order, is_plain(net, task, way), single, way.time, way.not_before, {}, {}, {}, 0};
  if (out.plain) {
    const auto& window = net.calendars[way.calendar].front();
    out.open = window.from, out.closed = std::min(window.to, way.last_finish);
  }
  out.due = order.due == Instant::max() ? Instant::max() : order.due + net.tolerance;
  out.weight = static_cast<double>(order.weight);
  return out;
}

}  // namespace

bool stations_apart(const ShopNet& net) {
  if (!net.earlier.empty()) return false;
  std::vector<std::uint32_t> station_of(net.persons, away);
  for (const NetTask& task : net.tasks) {
    if (!task.before.empty() || task.ways.empty()) return false;
    for (const NetWay& way : task.ways) {
      if (way.station == away) return false;
      for (std::uint32_t p = 0; p < way.people; ++p) {
        std::uint32_t& station = station_of[net.people[way.first_person + p]];
        if (station != away && station != way.station) return false;
        station = way.station;
      }
    }
  }
  return true;
}

Lanes::Lanes(ShopNet& net, const TaskList& list)
    : net_(&net),
      lanes_(net.stations),
      single_(net.orders.size()),
      seen_(net.orders.size()),
      last_(net.orders.size()),
      finish_(net.tasks.size(), never_done) {
  std::vector<std::size_t> pieces(net.orders.size());
  for (const NetTask& task : net.tasks) ++pieces[task.order];
  for (std::size_t o = 0; o < pieces.size(); ++o) {
    single_[o] = pieces[o] <= 1;
    shared_ = shared_ || pieces[o] > 1;
  }
  for (const NetTask& task : net.tasks) {
    first_way_.push_back(static_cast<std::uint32_t>(ways_.size()));
    for (const NetWay& way : task.ways) ways_.push_back(lane_way(net, task, way, single_[task.order]));
  }
  for (std::uint32_t s = 0; s < net.stations; ++s) lanes_[s].station = s;
  for (const Listed& at : list)
    lanes_[net.tasks[at.task].ways[at.way].station].pieces.push_back(
        {static_cast<std::uint32_t>(at.task), static_cast<std::uint32_t>(at.way)});
  for (Lane& lane : lanes_) {
    lane.before.assign(1, {net.start, 0, 0});
    time_lane(lane, 0);
  }
}

double Lanes::weighed_late(std::uint32_t order, Instant finish) const {
  if (finish == never_done) return 0;
  const auto late = static_cast<double>(lateness(*net_, order, finish));
  if (single_[order]) return late;
  const double share = late / scale_, cube = share * share * share;
  return scale_ * cube * cube;
}

/// The end of an order's last piece in the lane before `low`.
Instant Lanes::last_of(const Lane& lane, std::uint32_t order, std::size_t low) const {
  for (std::size_t p = low; p-- > 0;) {
    const std::uint32_t task = lane.pieces[p].task;
    if (net_->tasks[task].order == order && finish_[task] != never_done) return finish_[task];
  }
  return never_done;
}

/// What an order of several pieces costs more for one that ends then, after the others of it in the lane.
double Lanes::lateness_cost(const Lane& lane, std::uint32_t order, Instant finish, std::size_t low) {
  if (seen_[order] != walk_) {
    seen_[order] = walk_;
    last_[order] = last_of(lane, order, low);
  }
  const double more = weighed_late(order, finish) - weighed_late(order, last_[order]);
  last_[order] = finish;
  return more;
}

/// Never when it cannot be done.
[[gnu::always_inline]] inline Instant Lanes::finish_of(const LaneWay& way, const Piece& piece, Instant from,
                                                       const SetUp& change) const {
  if (change.never) return never_done;
  if (way.plain) {
    const Instant finish = std::max(from, way.open) + Seconds(change.seconds) + way.time;
    if (finish <= way.closed) return finish;
  }
  const NetTask& task = net_->tasks[piece.task];
  const Placed placed = timed_way(*net_, task, task.ways[piece.way], from, change);
  return placed.done ? placed.finish : never_done;
}

/// The next piece of a lane is done, or left out when that is not possible. Gives its end. Inline in the loop that
/// tries a change, which takes nearly all of the search's time: a third less of it.
[[gnu::always_inline]] inline Instant Lanes::step(const Lane& lane, LaneState& state, const Piece& piece) {
  ++timed_;
  const LaneWay& way = ways_[first_way_[piece.task] + piece.way];
  const SetUp& change = set_up(net_->set_ups[lane.station], state.mounted, way.need);
  const Instant finish = finish_of(way, piece, std::max(way.not_before, state.free), change);
  if (finish == never_done) {
    state.cost += cost_of_undone;
    return never_done;
  }
  state.free = finish;
  state.mounted = change.state;
  if (!way.single)
    state.cost += lateness_cost(lane, way.order, finish, low_);
  else if (finish > way.due)
    state.cost += static_cast<double>((finish - way.due).count()) * way.weight;
  state.cost += cost_of_change * static_cast<double>(change.seconds);
  return finish;
}

double Lanes::tried(std::size_t number, std::size_t low, std::span<const Piece> pieces, std::size_t high,
                    double limit) {
  const Lane& lane = lanes_[number];
  ++walk_;
  low_ = low;
  LaneState state = lane.before[low];
  for (const Piece& piece : pieces) {
    step(lane, state, piece);
    if (state.cost > limit) return too_much;
  }
  for (std::size_t p = high; p < lane.pieces.size(); ++p) {
    const LaneState& was = lane.before[p];
    // Begun no earlier, the rest costs no less; begun at the same instant, just as much.
    if (!shared_ && state.mounted == was.mounted && state.free >= was.free) {
      const double with_rest = state.cost + lane.cost() - was.cost;
      if (with_rest > limit + rounding_of_costs) return too_much;
      if (state.free == was.free) return with_rest;
    }
    step(lane, state, lane.pieces[p]);
    if (state.cost > limit) return too_much;
  }
  return state.cost;
}

void Lanes::time_lane(Lane& lane, std::size_t from) {
  ++walk_;
  low_ = from;
  lane.before.resize(lane.pieces.size() + 1);
  for (std::size_t p = from; p < lane.pieces.size(); ++p) {
    LaneState state = lane.before[p];
    finish_[lane.pieces[p].task] = step(lane, state, lane.pieces[p]);
    lane.before[p + 1] = state;
  }
}

void Lanes::apply(const LaneChange& change) {
  Lane& lane = lanes_[change.lane];
  const auto at = [&](std::size_t p) { return lane.pieces.begin() + static_cast<std::ptrdiff_t>(p); };
  const std::size_t common = std::min(change.high - change.low, change.pieces.size());
  const auto rest = std::copy_n(change.pieces.begin(), common, at(change.low));
  if (common < change.pieces.size())
    lane.pieces.insert(rest, change.pieces.begin() + static_cast<std::ptrdiff_t>(common), change.pieces.end());
  else
    lane.pieces.erase(rest, at(change.high));
  time_lane(lane, change.low);
}

void Lanes::scale_to(std::int64_t late) {
  scale_ = static_cast<double>(std::max<std::int64_t>(1, late));
  for (Lane& lane : lanes_) time_lane(lane, 0);
}

double Lanes::cost() const {
  double sum = 0;
  for (const Lane& lane : lanes_) sum += lane.cost();
  return sum;
}

TaskList Lanes::list() const {
  TaskList out;
  out.reserve(net_->tasks.size());
  for (const Lane& lane : lanes_)
    for (const Piece& piece : lane.pieces) out.push_back({piece.task, piece.way});
  return out;
}

LaneLevels Lanes::levels() {
  LaneLevels sum;
  ends_.assign(net_->orders.size(), Instant::min());
  for (std::size_t t = 0; t < finish_.size(); ++t) {
    if (finish_[t] == never_done)
      ++sum.unplaced;
    else
      ends_[net_->tasks[t].order] = std::max(ends_[net_->tasks[t].order], finish_[t]);
  }
  for (std::uint32_t o = 0; o < ends_.size(); ++o)
    if (ends_[o] != Instant::min()) sum.late += lateness(*net_, o, ends_[o]);
  return sum;
}

}  // namespace seambook
