#include "schedule/earliest_end.hpp"

#include <algorithm>

#include "schedule/floors.hpp"
#include "schedule/lanes.hpp"

namespace seambook {
namespace {

constexpr std::size_t most_tasks = 16;  // three to that power are the ways to split what is done from the rest

/// A station once a set of tasks is done there. Of two with the same mounted the earlier one is never worse.
struct Walk {
  std::uint32_t mounted = 0;
  Instant free{};
  Piece last;
  std::size_t before = 0;  // the walk without the last one, in the list of its set
};
using Walks = std::vector<std::vector<Walk>>;  // by set

void take_walk(std::vector<Walk>& walks, const Walk& walk) {
  const auto like = std::ranges::find(walks, walk.mounted, &Walk::mounted);
  if (like == walks.end())
    walks.push_back(walk);
  else if (walk.free < like->free)
    *like = walk;
}

struct StationWalks {
  ShopNet& net;
  std::uint32_t number = 0;
  Instant limit{};  // walks end before
};

/// Goes on from a walk by one task, in each way it has at the station.
void walk_on(const StationWalks& at, const Walk& from, std::size_t place, std::uint32_t number,
             std::vector<Walk>& out) {
  const NetTask& task = at.net.tasks[number];
  for (std::uint32_t w = 0; w < task.ways.size(); ++w) {
    const NetWay& way = task.ways[w];
    if (way.station != at.number) continue;
    const SetUp change = set_up(at.net.set_ups[at.number], from.mounted, way.need);
    if (change.never) continue;
    const Placed placed = timed_way(at.net, task, way, std::max(from.free, way.not_before), change);
    if (placed.done && placed.finish < at.limit) take_walk(out, {change.state, placed.finish, {number, w}, place});
  }
}

Walks walks_at(const StationWalks& at, TaskSet within) {
  Walks walks(within + 1);
  walks[0].push_back({0, at.net.start, {}, 0});
  for (TaskSet done = 0; done < within; ++done)
    for (std::size_t k = 0; k < walks[done].size(); ++k)
      for (std::uint32_t t = 0; t < at.net.tasks.size(); ++t)
        if ((within & ~done) >> t & 1U) walk_on(at, walks[done][k], k, t, walks[done | TaskSet{1} << t]);
  return walks;
}

/// By set: when it can all be done, if before the limit.
std::vector<Instant> ends_at(const StationWalks& at, TaskSet all) {
  std::vector<Instant> ends;
  ends.reserve(all + 1);
  for (const auto& walks : walks_at(at, all)) {
    ends.push_back(never_done);
    for (const Walk& walk : walks) ends.back() = std::min(ends.back(), walk.free);
  }
  return ends;
}

/// Gives one more station any part of what is left. `ends`: by set, of the stations so far. Gives the parts, by set.
std::vector<TaskSet> shared_out(std::vector<Instant>& ends, const std::vector<Instant>& of_station, bool is_last) {
  const TaskSet all = ends.size() - 1;
  std::vector<TaskSet> parts(ends.size());
  std::vector<Instant> least(ends.size(), never_done);
  const auto consider = [&](TaskSet done, TaskSet part) {
    const Instant end = std::max(ends[done], of_station[part]);
    if (end < least[done | part]) least[done | part] = end, parts[done | part] = part;
  };
  for (TaskSet done = 0; done <= all; ++done) {
    if (ends[done] == never_done) continue;
    const TaskSet open = all & ~done;
    consider(done, open);
    if (is_last) continue;
    for (TaskSet part = open; part != 0; part = (part - 1) & open) consider(done, (part - 1) & open);
  }
  ends = std::move(least);
  return parts;
}

/// The order in which a station's set is done first.
void append_walk(const StationWalks& at, TaskSet set, TaskList& list) {
  const Walks walks = walks_at(at, set);
  const auto first = std::ranges::min_element(walks[set], {}, &Walk::free);
  std::size_t k = static_cast<std::size_t>(first - walks[set].begin());
  const auto begin = static_cast<std::ptrdiff_t>(list.size());
  while (set != 0) {
    const Walk& walk = walks[set][k];
    list.push_back({walk.last.task, walk.last.way});
    set &= ~(TaskSet{1} << walk.last.task);
    k = walk.before;
  }
  std::reverse(list.begin() + begin, list.end());
}

}  // namespace

bool has_one_order_apart(const ShopNet& net) {
  if (net.tasks.empty() || net.tasks.size() > most_tasks || !stations_apart(net)) return false;
  return std::ranges::all_of(net.tasks, [&](const NetTask& task) { return task.order == net.tasks.front().order; });
}

EarliestEnd earliest_end(ShopNet& net, const Levels& known) {
  const TaskSet all = (TaskSet{1} << net.tasks.size()) - 1;
  const Instant limit = known.unplaced == 0 ? net.start + Seconds(known.finish) : never_done;
  std::vector<Instant> ends(all + 1, never_done);
  ends[0] = net.start;
  std::vector<std::vector<TaskSet>> parts;
  for (std::uint32_t s = 0; s < net.stations; ++s)
    parts.push_back(shared_out(ends, ends_at({net, s, limit}, all), s + 1 == net.stations));
  EarliestEnd out;
  if (known.unplaced == 0) out.end = limit;
  if (ends[all] == never_done) return out;
  out.end = ends[all];
  out.list.emplace();
  TaskSet set = all;
  for (auto s = static_cast<std::uint32_t>(net.stations); s-- > 0;) {
    append_walk({net, s, limit}, parts[s][set], *out.list);
    set &= ~parts[s][set];
  }
  return out;
}

void seek_earliest_end(ShopNet& net, TaskList& list, Levels& of_list, Levels& floor) {
  if (of_list.late <= floor.late || !has_one_order_apart(net)) return;
  EarliestEnd first = earliest_end(net, of_list);
  if (first.list)
    if (const Levels levels = levels_of(net, *first.list); levels < of_list)
      list = *std::move(first.list), of_list = levels;
  if (!first.end) return;
  floor.late = std::max(floor.late, lateness(net, net.tasks.front().order, *first.end));
  floor.finish = std::max(floor.finish, (*first.end - net.start).count());
}

}  // namespace seambook
