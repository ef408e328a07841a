// What a weldment says to the planner: which weldments go before, what leaves the shop and when, what makes work on it
// dangerous.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "resolve/joint_ids.hpp"

namespace seambook {
namespace {

/// Which of the weldment's joints go before which, counted from its first.
std::vector<Edge> edges_within(const JobDraft& draft, const Weldment& weldment) {
  const std::size_t first = weldment.first_joint;
  std::vector<Edge> edges;
  for (const Edge& edge : draft.job.after)
    if (edge.first >= first) edges.emplace_back(edge.first - first, edge.second - first);
  return edges;
}

/// All joints of the weldment but those that wait until the work is back, and what follows these.
std::vector<std::size_t> joints_before(const JobDraft& draft, const Weldment& weldment,
                                       const std::vector<std::size_t>& back_first) {
  std::vector<bool> later(weldment.joint_count, false);
  for (const std::size_t joint : back_first) later[joint - weldment.first_joint] = true;
  std::vector<Edge> edges = edges_within(draft, weldment);
  const std::vector<std::size_t> order = topological_order(weldment.joint_count, edges);
  std::vector<std::size_t> position(order.size());
  for (std::size_t at = 0; at < order.size(); ++at) position[order[at]] = at;
  std::sort(edges.begin(), edges.end(),
            [&](const Edge& a, const Edge& b) { return position[a.first] < position[b.first]; });
  for (const Edge& edge : edges)
    if (later[edge.first]) later[edge.second] = true;
  std::vector<std::size_t> before;
  for (std::size_t j = 0; j < weldment.joint_count; ++j)
    if (!later[j]) before.push_back(weldment.first_joint + j);
  return before;
}

void take_times(JobDraft& draft, const OutsideText& text, OutsideWork& work) {
  if (text.out) work.out = text.out->value;
  if (text.back) work.back = text.back->value;
  if (text.time) work.time = std::chrono::minutes(std::llround(text.time->value.si / unit::min.si));
  const bool by_clock = text.out && text.back;
  if (by_clock == text.time.has_value() || text.out.has_value() != text.back.has_value())
    return refuse_lack(draft, text.place, fmt::format("{}: it is not clear how long it is away", work.what),
                       "state 'out' and 'back', or 'time'");
  if (by_clock && *work.back <= *work.out)
    draft.diagnostics.error(text.back->place, fmt::format("{}: it is back before it is fetched", work.what));
}

/// A ring through joints and outside work; the joints alone have none.
void refuse_outside_ring(JobDraft& draft, const Weldment& weldment) {
  const std::size_t joints = weldment.joint_count, first = weldment.first_joint;
  const std::vector<OutsideWork>& outside = weldment.plan.outside;
  std::vector<Edge> edges = edges_within(draft, weldment);
  for (std::size_t o = 0; o < outside.size(); ++o) {
    for (const std::size_t joint : outside[o].after) edges.emplace_back(joint - first, joints + o);
    for (const std::size_t joint : outside[o].before) edges.emplace_back(joints + o, joint - first);
  }
  const std::vector<std::size_t> ring = find_cycle(joints + outside.size(), edges);
  if (ring.empty()) return;
  const auto name = [&](std::size_t node) {
    return node < joints ? draft.job.joints[first + node].id : outside[node - joints].what;
  };
  std::string names;
  for (const std::size_t node : ring) names += name(node) + " before ";
  const auto work = std::find_if(ring.begin(), ring.end(), [&](std::size_t node) { return node >= joints; });
  draft.diagnostics.error(work != ring.end() ? outside[*work - joints].place : weldment.place,
                          "no order is possible: " + names + name(ring.front()));
}

void take_outside(JobDraft& draft, const WeldmentText& text, JointIds& ids, Weldment& weldment) {
  weldment.plan.outside.reserve(text.plan.outside.size());
  for (const OutsideText& written : text.plan.outside) {
    OutsideWork work;
    work.what = text_of(written.what);
    work.place = written.place;
    take_times(draft, written, work);
    work.before = find_joints(ids, written.before);
    work.after = written.after.empty() ? joints_before(draft, weldment, work.before) : find_joints(ids, written.after);
    weldment.plan.outside.push_back(std::move(work));
  }
  if (!weldment.plan.outside.empty()) refuse_outside_ring(draft, weldment);
}

void take_dangers(JobDraft& draft, const WeldmentText& text, WeldmentPlanning& plan) {
  if (text.plan.vessel) plan.vessel = static_cast<Vessel>(text.plan.vessel->at + 1);  // of vessel_words
  plan.gas_free = words_of(text.plan.gas_free);
  plan.confined = text.plan.confined && text.plan.confined->value;
  plan.attendant = words_of(text.plan.attendant);
  if (plan.gas_free && !text.plan.vessel)
    draft.diagnostics.error(text.plan.gas_free->place, "'gas_free' is for a vessel, and none is stated",
                            "add 'vessel: closed' or 'vessel: used'");
  if (plan.attendant && !plan.confined)
    draft.diagnostics.error(text.plan.attendant->place, "'attendant' is for a confined space, and none is stated",
                            "add 'confined: true'");
}

}  // namespace

void resolve_weldment_plan(JobDraft& draft, const WeldmentText& text, Weldment& weldment) {
  WeldmentPlanning& plan = weldment.plan;
  plan.ready = ready_from(text.plan.readiness);
  plan.blocked = words_of(text.plan.readiness.blocked);
  if (text.plan.split) plan.split = text.plan.split->value;
  if (text.plan.crew) plan.crew = text.plan.crew->value;
  if (text.plan.largest) plan.largest = text.plan.largest->value;
  JointIds ids = joint_ids(draft, weldment);
  take_outside(draft, text, ids, weldment);
  take_dangers(draft, text, plan);
  plan.lifted_on = find_joints(ids, text.plan.lifted_on);
}

void resolve_weldment_order(JobDraft& draft, const PartText& part) {
  std::vector<Weldment>& weldments = draft.job.weldments;
  std::vector<Edge> edges;
  for (std::size_t w = 0; w < weldments.size(); ++w) {
    for (const Word& word : part.weldments[w]->plan.after) {
      const auto before = find_name(draft.diagnostics, weldments, &Weldment::name, word, "weldment");
      if (!before) continue;
      weldments[w].plan.after.push_back(*before);
      edges.emplace_back(*before, w);
    }
  }
  const std::vector<std::size_t> ring = find_cycle(weldments.size(), edges);
  if (ring.empty()) return;
  std::string names;
  for (const std::size_t w : ring) names += weldments[w].name + " before ";
  const Weldment& first = weldments[ring.front()];
  draft.diagnostics.error(first.place, "no order is possible: " + names + first.name);
}

}  // namespace seambook
