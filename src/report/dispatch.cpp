#include "report/dispatch.hpp"

#include <algorithm>

#include "report/task_words.hpp"
#include "schedule/clock.hpp"

namespace seambook {
namespace {

constexpr Seconds short_row = std::chrono::minutes(15);

/// Windows of the station in which all of the people are there.
WorkingTime worked_windows(const PlannedShop& shop, const Way& way) {
  WorkingTime common = shop.work.problem.stations[*way.station].open;
  for (const std::size_t person : way.people) common = both(common, shop.work.problem.people[person].present);
  return common;
}

bool before_in_shop(const PlannedTask* a, const PlannedTask* b) { return a->set_up < b->set_up; }

/// A part in its shift.
struct ShiftPart {
  std::size_t shift = 0;
  TaskPart part;
};

/// What a shift does of a task; nothing where it does none of it. `all`: working time of the whole task.
std::optional<TaskPart> part_in(const PlannedTask& task, std::size_t at, const Window& shift,
                                const WorkingTime& windows, Seconds all) {
  const Window cut{std::max(task.start, shift.from), std::min(task.finish, shift.to)};
  const bool sets_up = task.set_up >= shift.from && task.set_up < shift.to;
  const Seconds here = working_between(windows, cut.from, cut.to);
  if (here.count() <= 0 && !(sets_up && (task.set_up < task.start || all.count() <= 0))) return std::nullopt;
  TaskPart part{at, sets_up ? task.set_up : cut.from, cut.to};
  part.share = all.count() > 0 ? static_cast<double>(here.count()) / static_cast<double>(all.count()) : 1;
  if (sets_up) part.change = task.change.duration;
  return part;
}

/// What each shift does of a task, in turn. Work outside of all shifts stands in the one before it.
std::vector<ShiftPart> parts_of(const PlannedShop& shop, const std::vector<PlanShift>& shifts, std::size_t at) {
  const PlannedTask& task = shop.plan.tasks[at];
  const WorkingTime windows = worked_windows(shop, way_of(shop, task));
  const Seconds all = working_between(windows, task.start, task.finish);
  std::vector<ShiftPart> parts;
  std::size_t before = 0;
  for (std::size_t s = 0; s < shifts.size(); ++s) {
    if (shifts[s].span.from <= task.set_up) before = s;
    if (const auto part = part_in(task, at, shifts[s].span, windows, all)) parts.push_back({s, *part});
  }
  if (parts.empty()) parts.push_back({before, {at, task.set_up, task.finish, 1, task.change.duration}});
  for (std::size_t p = 1; p < parts.size(); ++p) parts[p - 1].part.goes_on = parts[p].part.continued = true;
  return parts;
}

Seconds length_of(const DispatchRow& row) { return row.parts.back().to - row.parts.front().from; }

/// Whether a welder would take both for one piece of work.
bool belong_together(const PlannedShop& shop, const DispatchRow& row, const DispatchRow& next) {
  const PlannedTask& last = shop.plan.tasks[row.parts.back().at];
  const PlannedTask& first = shop.plan.tasks[next.parts.front().at];
  const TaskRef &a = ref_of(shop, last), &b = ref_of(shop, first);
  const Way &way_a = way_of(shop, last), &way_b = way_of(shop, first);
  const bool same = a.job == b.job && a.weldment == b.weldment && a.first_piece == b.first_piece &&
                    a.pieces == b.pieces && way_a.people == way_b.people;
  if (!same || !first.change.tasks.empty() || stops_after(ref_of(shop, last))) return false;
  return working_between(worked_windows(shop, way_a), row.parts.back().to, next.parts.front().from).count() == 0;
}

void append_row(DispatchRow& row, DispatchRow next) {
  row.parts.insert(row.parts.end(), next.parts.begin(), next.parts.end());
}

/// A row takes what follows until it lasts a quarter of an hour; a short one at the end joins the row before it.
std::vector<DispatchRow> merged(const PlannedShop& shop, std::vector<DispatchRow> rows) {
  std::vector<DispatchRow> out;
  out.reserve(rows.size());
  for (DispatchRow& row : rows) {
    const bool joins = !out.empty() && belong_together(shop, out.back(), row);
    if (joins && length_of(out.back()) < short_row)
      append_row(out.back(), std::move(row));
    else
      out.push_back(std::move(row));
  }
  for (std::size_t r = out.size(); r-- > 1;) {
    if (length_of(out[r]) >= short_row || !belong_together(shop, out[r - 1], out[r])) continue;
    append_row(out[r - 1], std::move(out[r]));
    out.erase(out.begin() + static_cast<std::ptrdiff_t>(r));
  }
  return out;
}

}  // namespace

std::vector<DispatchList> dispatch_lists(const PlannedShop& shop, const std::vector<PlanShift>& shifts) {
  const std::size_t stations = shop.work.problem.stations.size();
  std::vector<std::vector<DispatchRow>> rows(stations * shifts.size());
  std::vector<const PlannedTask*> order;
  order.reserve(shop.plan.tasks.size());
  for (const PlannedTask& task : shop.plan.tasks) order.push_back(&task);
  std::stable_sort(order.begin(), order.end(), before_in_shop);
  for (const PlannedTask* task : order) {
    const Way& way = way_of(shop, *task);
    if (!way.station) continue;
    const auto at = static_cast<std::size_t>(task - shop.plan.tasks.data());
    for (const ShiftPart& in : parts_of(shop, shifts, at))
      rows[*way.station * shifts.size() + in.shift].push_back({{in.part}});
  }
  std::vector<DispatchList> lists;
  for (std::size_t k = 0; k < rows.size(); ++k)
    if (!rows[k].empty()) lists.push_back({k / shifts.size(), k % shifts.size(), merged(shop, std::move(rows[k]))});
  return lists;
}

Time<> change_of(const DispatchRow& row) {
  Time<> sum{};
  for (const TaskPart& part : row.parts) sum = sum + part.change;
  return sum;
}
Time<> labour_of(const PlannedShop& shop, const DispatchRow& row) {
  Time<> sum{};
  for (const TaskPart& part : row.parts) sum = sum + part.share * labour_of(ref_of(shop, shop.plan.tasks[part.at]));
  return sum;
}
Time<> arc_of(const PlannedShop& shop, const DispatchRow& row) {
  Time<> sum{};
  for (const TaskPart& part : row.parts) sum = sum + part.share * arc_of(ref_of(shop, shop.plan.tasks[part.at]));
  return sum;
}

}  // namespace seambook
