#include "schedule/lane_start.hpp"

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

double seconds_of(const NetWay& way) { return std::max(1.0, static_cast<double>(way.time.count())); }

constexpr double not_due = -1e12, impossible = -1e15;

/// Where nothing is due, work waits for all that is.
double urgency(const ShopNet& net, const Piece& piece, Instant now, double patience) {
  const ShopOrder& order = net.orders[net.tasks[piece.task].order];
  const double seconds = seconds_of(net.tasks[piece.task].ways[piece.way]);
  if (order.due == Instant::max()) return not_due;
  const double weight = static_cast<double>(order.weight) / seconds;
  const auto slack = static_cast<double>((order.due + net.tolerance - now).count()) - seconds;
  return std::log(std::max(weight, 1e-12)) - std::max(0.0, slack) / patience;
}

}  // namespace

std::vector<Piece> lane_start(ShopNet& net, const Lane& lane, double patience, double set_up_patience) {
  std::vector<Piece> left = lane.pieces;
  double work = 0, usual_set_up = 0;
  for (const Piece& piece : left) {
    const NetWay& way = net.tasks[piece.task].ways[piece.way];
    work += seconds_of(way);
    usual_set_up += set_up(net.set_ups[lane.station], 0, way.need).seconds;
  }
  const double many = std::max(1.0, static_cast<double>(left.size()));
  const double of_slack = std::max(1.0, patience * work / many);
  const double of_set_up = std::max(1.0, set_up_patience * usual_set_up / many);
  std::vector<Piece> pieces;
  pieces.reserve(left.size());
  Instant now = net.start;
  std::uint32_t mounted = 0;
  while (!left.empty()) {
    const auto change_to = [&](const Piece& piece) {
      return set_up(net.set_ups[lane.station], mounted, net.tasks[piece.task].ways[piece.way].need);
    };
    const auto next = std::ranges::max_element(left, {}, [&](const Piece& piece) {
      const SetUp change = change_to(piece);
      return change.never ? impossible : urgency(net, piece, now, of_slack) - change.seconds / of_set_up;
    });
    const NetTask& task = net.tasks[next->task];
    const NetWay& way = task.ways[next->way];
    const SetUp change = change_to(*next);
    if (!change.never) {
      const Placed placed = timed_way(net, task, way, std::max(now, way.not_before), change);
      if (placed.done) now = placed.finish, mounted = change.state;
    }
    pieces.push_back(*next);
    left.erase(next);
  }
  return pieces;
}

}  // namespace seambook
