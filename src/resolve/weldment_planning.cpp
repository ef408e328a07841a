// What a weldment says to the planner: which weldments go before, what leaves the shop and when, what makes work on it
// dangerous.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

/// Joints of the weldment by id, as joints of the job.
std::vector<std::size_t> find_joints(JobDraft& draft, const Weldment& weldment, const std::vector<Word>& words) {
  std::vector<std::size_t> found;
  const auto begin = draft.job.joints.begin() + static_cast<std::ptrdiff_t>(weldment.first_joint);
  const std::vector<Joint>::const_iterator end = begin + static_cast<std::ptrdiff_t>(weldment.joint_count);
  for (const Word& word : words) {
    const auto joint = std::find_if(std::vector<Joint>::const_iterator(begin), end,
                                    [&](const Joint& one) { return one.id == word.text; });
    if (joint != end) {
      found.push_back(static_cast<std::size_t>(joint - draft.job.joints.begin()));
      continue;
    }
    std::vector<std::string_view> ids;
    ids.reserve(weldment.joint_count);
    for (auto one = begin; one != end; ++one) ids.push_back(one->id);
    refuse_unknown(draft.diagnostics, word, "joint", ids);
  }
  return found;
}

bool holds(const std::vector<std::size_t>& list, std::size_t joint) {
  return std::find(list.begin(), list.end(), joint) != list.end();
}

/// All joints of the weldment but those that wait until the work is back, and what follows these.
std::vector<std::size_t> joints_before(const JobDraft& draft, const Weldment& weldment,
                                       const std::vector<std::size_t>& back_first) {
  std::vector<std::size_t> later = back_first;
  for (std::size_t at = 0; at < later.size(); ++at)
    for (const Edge& edge : draft.job.after)
      if (edge.first == later[at] && !holds(later, edge.second)) later.push_back(edge.second);
  std::vector<std::size_t> before;
  for (std::size_t j = 0; j < weldment.joint_count; ++j)
    if (!holds(later, weldment.first_joint + j)) before.push_back(weldment.first_joint + j);
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
  std::vector<Edge> edges;
  for (const Edge& edge : draft.job.after)
    if (edge.first >= first) edges.emplace_back(edge.first - first, edge.second - first);
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

void take_outside(JobDraft& draft, const WeldmentText& text, Weldment& weldment) {
  weldment.plan.outside.reserve(text.plan.outside.size());
  for (const OutsideText& written : text.plan.outside) {
    OutsideWork work;
    work.what = text_of(written.what);
    work.place = written.place;
    take_times(draft, written, work);
    work.before = find_joints(draft, weldment, written.before);
    work.after = written.after.empty() ? joints_before(draft, weldment, work.before)
                                       : find_joints(draft, weldment, written.after);
    weldment.plan.outside.push_back(std::move(work));
  }
  refuse_outside_ring(draft, weldment);
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
  take_outside(draft, text, weldment);
  take_dangers(draft, text, plan);
  plan.lifted_on = find_joints(draft, weldment, text.plan.lifted_on);
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
