#include "schedule/timeline.hpp"

#include <algorithm>

namespace seambook {
namespace {

/// When a way may begin: everything it needs is there.
Instant all_there(const ShopNet& net, const Timeline& line, const Finishes& finishes, const NetTask& task,
                  const NetWay& way) {
  Instant at = way.not_before;
  for (const std::uint32_t before : task.before) {
    if (finishes[before] == never_done) return never_done;
    at = std::max(at, finishes[before] + net.tasks[before].rest);
  }
  if (way.station == away) return at;
  at = std::max(at, line.station_free[way.station]);
  for (std::uint32_t p = 0; p < way.people; ++p) at = std::max(at, line.person_free[net.people[way.first_person + p]]);
  return at;
}

/// The common case, quickly: all of it falls into the only window there is.
bool in_one_window(const WorkingTime& time, const NetTask& task, const NetWay& way, Instant at, const SetUp& change,
                   Placed& out) {
  if (time.size() != 1 || way.time <= Seconds{} || task.held > way.time) return false;
  const Instant set_up = std::max(at, time.front().from), start = set_up + Seconds(change.seconds);
  if (start + way.time > time.front().to) return false;
  out = {start + way.time <= way.last_finish, set_up, start, start + way.time, change.seconds};
  return true;
}

bool is_moved(const ShopNet& net, const Timeline& line, std::uint32_t task, const NetWay& way) {
  if (net.earlier.empty() || !net.earlier[task] || way.station == away) return false;
  const Earlier& was = *net.earlier[task];
  const std::uint32_t last = line.last[way.station];
  if (was.station != way.station) return true;
  if (way.people > 0 && was.person != net.people[way.first_person]) return true;
  return was.after ? last != *was.after : last != away;
}

void occupy(ShopNet& net, Timeline& line, std::uint32_t number, const NetWay& way, Instant until) {
  const SetUp& change = set_up(net.set_ups[way.station], line.mounted[way.station], way.need);
  line.levels.moved += is_moved(net, line, number, way);
  line.levels.change += change.seconds;
  line.levels.loads += change.loads;
  line.mounted[way.station] = change.state;
  line.last[way.station] = number;
  line.station_free[way.station] = until;
  for (std::uint32_t p = 0; p < way.people; ++p) line.person_free[net.people[way.first_person + p]] = until;
}

}  // namespace

Placed timed_way(const ShopNet& net, const NetTask& task, const NetWay& way, Instant at, const SetUp& change) {
  Placed out{false, at, at, at, change.seconds};
  if (way.station == away) {
    out.finish = at + way.time;
  } else {
    const WorkingTime& time = net.calendars[way.calendar];
    if (in_one_window(time, task, way, at, change, out)) return out;
    if (change.seconds > 0) {
      out.set_up = first_open(time, at);
      if (out.set_up == never_done) return out;
      out.start = done_by(time, out.set_up, Seconds(change.seconds));
      if (out.start == never_done) return out;
    }
    if (way.time > Seconds{}) {
      out.start =
          task.held > Seconds{} ? open_for(time, out.start, task.held, net.longest_pause) : first_open(time, out.start);
      if (out.start == never_done) return out;
    }
    if (change.seconds == 0) out.set_up = out.start;
    out.finish = done_by(time, out.start, way.time);
  }
  out.done = out.finish != never_done && out.finish <= way.last_finish;
  return out;
}

Timeline nothing_placed(const ShopNet& net) {
  Timeline line;
  line.station_free.assign(net.stations, net.start);
  line.person_free.assign(net.persons, net.start);
  line.mounted.assign(net.stations, 0);
  line.last.assign(net.stations, away);
  line.order_finish.assign(net.orders.size(), Instant::min());
  return line;
}

std::int64_t lateness(const ShopNet& net, std::uint32_t order, Instant finish) {
  const ShopOrder& of = net.orders[order];
  if (of.due == Instant::max() || finish <= of.due + net.tolerance) return 0;
  return (finish - of.due - net.tolerance).count() * of.weight;
}

Placed tried(ShopNet& net, const Timeline& line, const Finishes& finishes, std::uint32_t number,
             std::uint32_t way_number) {
  static constexpr SetUp none{0, 0, 0, false};
  const NetTask& task = net.tasks[number];
  if (way_number >= task.ways.size()) return {};
  const NetWay& way = task.ways[way_number];
  const Instant at = all_there(net, line, finishes, task, way);
  const SetUp& change =
      way.station == away ? none : set_up(net.set_ups[way.station], line.mounted[way.station], way.need);
  return at == never_done || change.never ? Placed{} : timed_way(net, task, way, at, change);
}

Placed place(ShopNet& net, Timeline& line, Finishes& finishes, std::uint32_t number, std::uint32_t way_number) {
  const Placed out = tried(net, line, finishes, number, way_number);
  if (!out.done) {
    finishes[number] = never_done;
    ++line.levels.unplaced;
    return out;
  }
  const NetTask& task = net.tasks[number];
  const NetWay& way = task.ways[way_number];
  if (way.station != away) occupy(net, line, number, way, out.finish);
  finishes[number] = out.finish;
  Instant& finish = line.order_finish[task.order];
  if (out.finish > finish) {
    line.levels.late += lateness(net, task.order, out.finish) - lateness(net, task.order, finish);
    finish = out.finish;
  }
  line.levels.finish = std::max(line.levels.finish, (out.finish - net.start).count());
  return out;
}

Levels final_levels(ShopNet& net, const Timeline& line) {
  Levels levels = line.levels;
  for (std::size_t s = 0; s < net.stations; ++s) {
    if (!net.end_need[s] || line.last[s] == away) continue;
    const SetUp& change = set_up(net.set_ups[s], line.mounted[s], *net.end_need[s]);
    levels.change += change.seconds;
    levels.loads += change.loads;
  }
  return levels;
}

Levels levels_of(ShopNet& net, const TaskList& list) {
  Timeline line = nothing_placed(net);
  Finishes finishes(net.tasks.size(), never_done);
  for (const Listed& at : list)
    place(net, line, finishes, static_cast<std::uint32_t>(at.task), static_cast<std::uint32_t>(at.way));
  return final_levels(net, line);
}

}  // namespace seambook
