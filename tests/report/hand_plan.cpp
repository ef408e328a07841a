#include "hand_plan.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "../estimate/shop_files.hpp"
#include "schedule/clock.hpp"

namespace seambook::test {
namespace {

constexpr const char* hatch = R"(format: 1
job: hatch
title: Tank hatch
customer: Marl and Gannet (fictional)
drawing: H-7 rev C
due: 2026-05-11
quantities: [2]
weldments:
  - name: rim
    parts: 5
    mass: 84 kg
    turns: 2
    base_metal: "1.4301"
    process: 135
    free_issue: true
    joints:
      - {id: R1, mark: rim seam, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 2400 mm, position: PB, preheat: 80 °C, interpass_max: 150 °C, purge: true}
      - {id: R2, mark: lug 1, weld: fillet, leg: 4 mm, thickness: 8 mm, length: 60 mm, position: PB}
      - {id: R3, mark: lug 2, weld: fillet, leg: 4 mm, thickness: 8 mm, length: 60 mm, position: PB}
      - {id: R4, mark: inner stiffener, weld: fillet, leg: 4 mm, thickness: 8 mm, length: 400 mm, position: PB}
      - {id: R5, mark: hinge, weld: fillet, leg: 4 mm, thickness: 8 mm, length: 180 mm, position: PB}
)";

Instant on_day(int day, int hour, int minute) {
  return std::chrono::local_days(std::chrono::year(2026) / std::chrono::May / day) + std::chrono::hours(hour) +
         std::chrono::minutes(minute);
}

WorkingTime two_days() {
  WorkingTime time;
  for (const int day : {11, 12, 13})
    for (const Window& window :
         {Window{on_day(day, 6, 0), on_day(day, 9, 0)}, Window{on_day(day, 9, 15), on_day(day, 12, 0)},
          Window{on_day(day, 12, 30), on_day(day, 14, 30)}})
      time.push_back(window);
  return time;
}

std::size_t index_of_station(const RateBook& book, const std::string& name) {
  const auto at = std::find_if(book.stations.begin(), book.stations.end(),
                               [&](const Station& station) { return station.name == name; });
  return static_cast<std::size_t>(at - book.stations.begin());
}
std::size_t index_of_welder(const RateBook& book, const std::string& stamp) {
  const auto at = std::find_if(book.welders.begin(), book.welders.end(),
                               [&](const Welder& welder) { return welder.stamp == stamp; });
  return static_cast<std::size_t>(at - book.welders.begin());
}

/// Set-ups differ by job, process and filler; the values are numbered by their indices in the rate book.
SetupModel hand_model(const HandPlan& hand) {
  SetupModel model;
  model.attributes = {"job", "process", "filler"};
  model.values.resize(3);
  for (const Job& job : hand.jobs) model.values[0].push_back(job.name);
  for (const Process& process : hand.book.processes) model.values[1].push_back(process.number);
  for (const Filler& filler : hand.book.fillers) model.values[2].push_back(filler.name);
  model.tasks = {{"read the papers", {300}, 0, {}, {}, true},
                 {"change the torch", {180}, 1, {}, {}, true},
                 {"first-off check", {480}, 1, {}, {}, true},
                 {"swap the spool or rods", {300}, 2, {}, {}, true}};
  return model;
}

TaskRef ref_for(const HandPlan& hand, std::size_t job, std::size_t joint) {
  const Job& of = hand.jobs[job];
  const RowFigures<double>& row = hand.estimates[job].joints[joint];
  const double pieces = static_cast<double>(of.quantities.front());
  TaskRef ref{job, of.joints[joint].weldment, joint, 1, of.quantities.front(), {}};
  ref.steps.push_back({StepKind::fit, 0, pieces * row.joint.labour.fit_up, {}, {}, false});
  for (std::size_t g = 0; g < row.passes.size(); ++g)
    ref.steps.push_back({StepKind::passes,
                         g,
                         pieces * (row.passes[g].labour.floor - row.joint.labour.fit_up),
                         pieces * row.passes[g].arc,
                         {}});
  return ref;
}

void add_task(HandPlan& hand, std::size_t job, std::size_t joint) {
  const Job& of = hand.jobs[job];
  const Procedure& by = hand.book.procedures[of.joints[joint].passes.front().procedure];
  TaskRef ref = ref_for(hand, job, joint);
  if (of.joints[joint].id == "R1")
    ref.steps.back().hold = "hold: root of the rim seam, by the welding coordinator", ref.steps.back().stops = true;
  double labour = 0;
  for (const TaskStep& step : ref.steps) labour += step.labour.si;
  ShopTask task;
  task.name = of.name + "/" + of.weldments[ref.weldment].name + "/" + of.joints[joint].id + "/1";
  task.needs.slots = {static_cast<std::uint32_t>(job), static_cast<std::uint32_t>(by.process), std::nullopt};
  if (by.filler) task.needs.slots[2] = static_cast<std::uint32_t>(*by.filler);
  const std::size_t place = hand.book.processes[by.process].number.starts_with("52") ? 1 : 0;
  task.ways = {{place, {place}, Seconds(static_cast<std::int64_t>(labour))}};
  task.order = job;
  hand.work.problem.tasks.push_back(std::move(task));
  hand.work.refs.push_back(std::move(ref));
}

void place_all(HandPlan& hand) {
  const ShopProblem& problem = hand.work.problem;
  std::vector<Instant> free(problem.stations.size(), problem.start);
  std::vector<Attributes> mounted;
  for (const ShopStation& station : problem.stations) mounted.push_back(station.start);
  for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
    const Way& way = problem.tasks[t].ways.front();
    const WorkingTime& open = problem.stations[*way.station].open;
    PlannedTask at;
    at.task = t;
    at.change = change(problem.model, mounted[*way.station], problem.tasks[t].needs);
    at.set_up = first_open(open, free[*way.station]);
    at.start = done_by(open, at.set_up, Seconds(static_cast<std::int64_t>(at.change.duration.si)));
    at.finish = done_by(open, at.start, way.time);
    at.reason =
        at.change.tasks.empty() ? "same set-up as before" : "change to what this order needs; nothing else is free";
    free[*way.station] = at.finish;
    mounted[*way.station] = mounted_after(mounted[*way.station], problem.tasks[t].needs);
    hand.plan.levels.change += static_cast<std::int64_t>(at.change.duration.si);
    hand.plan.levels.finish = std::max(hand.plan.levels.finish, (at.finish - problem.start).count());
    hand.plan.tasks.push_back(std::move(at));
  }
  std::stable_sort(hand.plan.tasks.begin(), hand.plan.tasks.end(),
                   [](const PlannedTask& a, const PlannedTask& b) { return a.start < b.start; });
}

void judge(HandPlan& hand) {
  const ShopProblem& problem = hand.work.problem;
  for (std::size_t order = 0; order < problem.orders.size(); ++order) {
    Instant finish = problem.start;
    for (const PlannedTask& task : hand.plan.tasks)
      if (problem.tasks[task.task].order == order) finish = std::max(finish, task.finish);
    if (finish > problem.orders[order].due)
      hand.plan.late.push_back({order, finish, finish - problem.orders[order].due});
    if (finish > problem.orders[order].due) hand.plan.levels.late += (finish - problem.orders[order].due).count();
  }
  hand.plan.levels.unplaced = static_cast<std::int64_t>(hand.plan.unplaced.size());
  hand.plan.judged = {{"cannot be done", 1, 1, true},
                      {"late", hand.plan.levels.late, hand.plan.levels.late, true},
                      {"set-up", hand.plan.levels.change, 600, false}};
  Levels other = hand.plan.levels;
  other.change += 2400, other.late += 7200;
  hand.plan.others = {{"order in the files", other}};
  other.change = 900, other.late = hand.plan.levels.late + 36000;
  hand.plan.others.push_back({"least set-up, whatever is late", other});
}

}  // namespace

HandPlan hand_plan() {
  LoadedJob cabinet = load_job("wash-down-cabinet.yaml"), rim = load_text(hatch);
  REQUIRE_MESSAGE(rim.job.has_value(), render(rim.diagnostics));
  HandPlan hand;
  hand.book = *cabinet.book;
  hand.jobs = {*rim.job, *cabinet.job};
  for (const Job& job : hand.jobs) hand.estimates.push_back(estimate(hand.book, job));
  ShopProblem& problem = hand.work.problem;
  problem.start = on_day(11, 6, 0);
  problem.model = hand_model(hand);
  const Attributes nothing{std::vector<std::optional<std::uint32_t>>(3)};
  problem.stations = {{"ST-1", two_days(), nothing, {}, {}}, {"ST-2", two_days(), nothing, {}, {}}};
  problem.people = {{"Q1", two_days()}, {"Q9", two_days()}};
  problem.orders = {{"hatch", on_day(11, 7, 30), 1}, {"wash-down-cabinet", on_day(19, 14, 30), 1}};
  hand.work.stations = {index_of_station(hand.book, "ST-1"), index_of_station(hand.book, "ST-2")};
  hand.work.welders = {index_of_welder(hand.book, "Q1"), index_of_welder(hand.book, "Q9")};
  hand.work.job_of_order = {0, 1};
  for (std::size_t job = 0; job < hand.jobs.size(); ++job)
    for (std::size_t joint = 0; joint < hand.jobs[job].joints.size(); ++joint)
      if (hand.jobs[job].joints[joint].id != "R4") add_task(hand, job, joint);
  hand.work.withheld = {
      {0, 0, 3, true, "a hollow part that was closed: no gas-free note is stated", "state gas_free"},
      {1, 0, std::nullopt, false, "panels for the second lot arrive on Thursday", "ask the supplier"}};
  place_all(hand);
  judge(hand);
  hand.remedies = {{"Sat 16 May, 6 h overtime at ST-1", hand.plan.levels.late, 0, 0, 0, Money<>{412.5}}};
  return hand;
}

}  // namespace seambook::test
