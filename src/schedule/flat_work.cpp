#include "schedule/flat_work.hpp"

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

constexpr double largest_sum = 1e18, largest_step = 2e9;

/// When work may begin that does not wait for anything but the station.
Instant opening(const ShopNet& net, const NetWay& way) {
  return std::max({net.start, net.calendars[way.calendar].front().from, way.not_before});
}

/// The steps from one mounted state; false when they depend on more.
bool fill_row(ShopNet& net, std::uint32_t mounted, std::size_t before, const std::vector<std::uint32_t>& states,
              FlatWork& work) {
  for (std::size_t t = 0; t < net.tasks.size(); ++t) {
    const NetWay& way = net.tasks[t].ways.front();
    const SetUp change = set_up(net.set_ups[way.station], mounted, way.need);
    const auto step = way.time + Seconds(change.seconds);
    if (change.never || change.state != states[t + 1] || static_cast<double>(step.count()) > largest_step) return false;
    work.steps[before * (work.tasks + 1) + t + 1] = static_cast<std::int32_t>(step.count());
  }
  return true;
}

/// Whether every sum of lateness fits, when each task takes its longest step.
bool fits(const FlatWork& work, Instant begin, Instant closed) {
  double longest = 0, weights = 0, farthest = 0;
  for (std::size_t t = 1; t <= work.tasks; ++t) {
    std::int32_t most = 0;
    for (std::size_t before = 0; before <= work.tasks; ++before) most = std::max(most, work.step(before, t));
    longest += most;
    weights += static_cast<double>(work.weights[t]);
    farthest = std::max(farthest, std::abs(static_cast<double>(work.due[t])));
  }
  return longest <= static_cast<double>((closed - begin).count()) && (longest + farthest) * weights < largest_sum;
}

}  // namespace

std::optional<FlatWork> flat_work(ShopNet& net) {
  FlatWork work;
  work.tasks = net.tasks.size();
  const std::size_t row = work.tasks + 1;
  work.steps.assign(row * row, 0);
  work.due.assign(row, 0), work.weights.assign(row, 0);
  const Instant begin = opening(net, net.tasks.front().ways.front());
  Instant closed = Instant::max();
  std::vector<std::uint32_t> states(row);
  std::vector<bool> met(net.orders.size());
  for (std::size_t t = 1; t < row; ++t) {
    const NetTask& task = net.tasks[t - 1];
    const NetWay& way = task.ways.front();
    const ShopOrder& order = net.orders[task.order];
    if (net.calendars[way.calendar].size() != 1 || opening(net, way) != begin || way.time <= Seconds{} ||
        task.held > way.time || met[task.order])
      return std::nullopt;
    met[task.order] = true;
    closed = std::min({closed, net.calendars[way.calendar].front().to, way.last_finish});
    states[t] = set_up(net.set_ups[way.station], 0, way.need).state;
    if (order.due == Instant::max()) continue;  // weighs nothing
    work.due[t] = (order.due + net.tolerance - begin).count();
    work.weights[t] = order.weight * set_ups_in_one_late;
  }
  for (std::size_t before = 0; before < row; ++before)
    if (!fill_row(net, states[before], before, states, work)) return std::nullopt;
  return fits(work, begin, closed) ? std::optional(std::move(work)) : std::nullopt;
}

}  // namespace seambook
