#include "schedule/joint_steps.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace seambook {
namespace {

constexpr Time<> quarter{15 * 60};
constexpr int most_runs = 4;  // that a group of passes is cut into

Time<> element(const JointLabour<double>& labour, LabourKind kind) {
  return labour.elements.of[static_cast<std::size_t>(kind)];
}

/// Attended minutes of a joint as a whole, by the step that they belong to.
struct WholeMinutes {
  Time<> fit, finish, inspect;
};

WholeMinutes whole_minutes(const JointLabour<double>& labour, bool purging) {
  using K = LabourKind;
  WholeMinutes out;
  out.fit = labour.fit_up + labour.fit_up_extra + labour.tack + (purging ? labour.purge : Time<>{});
  for (const K kind : {K::edge_preparation, K::cleaning, K::handling, K::waiting, K::papers})
    out.fit = out.fit + element(labour, kind);
  out.finish = labour.finish;
  for (const K kind : {K::dressing, K::straightening, K::pickling, K::repair, K::packing})
    out.finish = out.finish + element(labour, kind);
  for (const K kind :
       {K::visual_inspection, K::penetrant, K::magnetic, K::ultrasonic, K::radiographic, K::dimensional_inspection})
    out.inspect = out.inspect + element(labour, kind);
  return out;
}

void add_hold(TaskStep& step, const Hold& hold) {
  if (!step.hold.empty()) step.hold += ", ";
  step.hold += fmt::format("{}: {}", hold.witness ? "witness" : "hold", hold.what);
  step.stops = step.stops || !hold.witness;
}

/// Writes the hold and witness points of a joint to the steps after which they come.
void add_holds(const Joint& joint, std::vector<TaskStep>& steps) {
  for (const Hold& hold : joint.plan.holds) {
    TaskStep* after = &steps.back();
    for (TaskStep& step : steps) {
      const bool at_fit = hold.at == HoldAt::fit_up && step.kind == StepKind::fit;
      if (at_fit || (hold.at == HoldAt::root && step.kind == StepKind::passes && step.group == 0)) {
        after = &step;
        break;
      }
    }
    add_hold(*after, hold);
  }
}

bool goes_on(const TaskStep& step, const TaskStep& next) {
  if (step.stops) return false;
  if (step.kind == StepKind::preheat) return true;  // it would be cold again
  const bool other_set_up =
      step.kind == StepKind::passes && (next.kind == StepKind::passes || next.kind == StepKind::gouge);
  if (other_set_up && step.group != next.group) return false;
  return step.labour < quarter || next.labour < quarter;
}

std::string code_of(const TaskStep& step) {
  switch (step.kind) {
    case StepKind::fit:
      return "fit";
    case StepKind::finish:
      return "finish";
    case StepKind::inspect:
      return "inspect";
    case StepKind::outside:
      return "outside";
    case StepKind::gouge:
      return "gouge-" + std::to_string(step.group + 1);
    case StepKind::preheat:
    case StepKind::passes:
      return std::to_string(step.group + 1);
  }
  return {};
}

/// Cuts a run of passes into parts between which the part cools: what stands before the passes belongs to the first,
/// what stands after them to the last.
void cut_by_rests(StepRun run, Time<> rest, int most, std::vector<StepRun>& out) {
  const int parts = std::clamp(static_cast<int>(run.labour.si / quarter.si), 1, std::min(most, most_runs));
  const double share = 1.0 / parts;
  run.rest = share * rest;
  for (int p = 0; p < parts; ++p) {
    StepRun part{{}, {}, run.rest, run.held, parts > 1 ? fmt::format("{}.{}", run.code, p + 1) : run.code};
    bool passes_seen = false;
    for (TaskStep step : run.steps) {
      const bool passes = step.kind == StepKind::passes;
      passes_seen = passes_seen || passes;
      if (!passes && p != (passes_seen ? parts - 1 : 0)) continue;
      if (passes) step.labour = share * step.labour, step.arc = share * step.arc;
      if (passes && p + 1 < parts) step.hold.clear(), step.stops = false;
      part.labour = part.labour + step.labour;
      part.steps.push_back(std::move(step));
    }
    out.push_back(std::move(part));
  }
}

}  // namespace

std::string_view step_word(StepKind kind) {
  static constexpr std::string_view words[] = {"fit and tack", "preheat", "weld",   "gouge",
                                               "finish",       "inspect", "outside"};
  return words[static_cast<std::size_t>(kind)];
}

std::vector<TaskStep> joint_steps(const RateBook& book, const Job& job, const Estimate& estimate, std::size_t number) {
  const Joint& joint = job.joints[number];
  const RowFigures<double>& row = estimate.joints[number];
  const bool purging = joint.purge && !book.method.covered(WorkKind::purging);
  const WholeMinutes whole = whole_minutes(row.joint.labour, purging);
  std::vector<TaskStep> steps;
  const auto add = [&](StepKind kind, std::size_t group, Time<> attended, Time<> arc = {}) {
    const PassLabour<double>& of = row.passes[group].labour;
    if (attended.si <= 0 || of.attended.si <= 0) return;
    steps.push_back({kind, group, attended * (of.floor / of.attended), arc, {}, false});
  };
  // Access widens all minutes alike, so shares of what stands before it are shares of what stands after it.
  const double access = joint.access.si.source == no_source ? 1 : joint.access.si.value;
  add(StepKind::fit, 0, access * whole.fit);
  add(StepKind::preheat, 0, access * row.joint.labour.preheat);
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassLabour<double>& of = row.passes[g].labour;
    add(StepKind::gouge, g, access * of.gouge);
    add(StepKind::passes, g, access * (of.welding + of.start + of.interpass + of.electrode_change), row.passes[g].arc);
  }
  add(StepKind::finish, 0, access * whole.finish);
  add(StepKind::inspect, 0, access * whole.inspect);
  if (!steps.empty()) add_holds(joint, steps);
  return steps;
}

std::vector<StepRun> step_runs(const Estimate& estimate, std::size_t number, std::vector<TaskStep> steps,
                               double pieces) {
  std::vector<StepRun> whole;
  for (TaskStep& step : steps) {
    step.labour = pieces * step.labour, step.arc = pieces * step.arc;
    if (whole.empty() || !goes_on(whole.back().steps.back(), step)) whole.push_back({{}, {}, {}, false, code_of(step)});
    StepRun& run = whole.back();
    // A run is called after its passes, where it has any.
    const bool has_passes =
        std::any_of(run.steps.begin(), run.steps.end(), [](const TaskStep& s) { return s.kind == StepKind::passes; });
    if (step.kind == StepKind::passes && !has_passes) run.code = code_of(step);
    run.labour = run.labour + step.labour;
    run.steps.push_back(std::move(step));
  }
  const RowFigures<double>& row = estimate.joints[number];
  const Time<> rest = pieces * row.joint.labour.elements.waiting;
  const bool heated = row.joint.labour.preheat.si > 0;
  double passes = 0;
  for (const PassFigures<double>& group : row.passes) passes += group.passes.si;
  std::vector<StepRun> out;
  for (StepRun& run : whole) {
    double of_run = 0;
    for (const TaskStep& step : run.steps)
      if (step.kind == StepKind::passes) of_run += row.passes[step.group].passes.si;
    run.held = heated && of_run > 0;
    cut_by_rests(std::move(run), passes > 0 ? (of_run / passes) * rest : Time<>{},
                 rest.si > 0 ? static_cast<int>(std::max(1.0, of_run)) : 1, out);
  }
  return out;
}

}  // namespace seambook
