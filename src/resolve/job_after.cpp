// Which joint must be welded before which: ids within a weldment become edges between joints, without a ring.
#include <fmt/format.h>

#include <unordered_map>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

using JointsById = std::unordered_map<std::string_view, std::size_t>;  // position within the weldment

/// The nearest id is sought for the first few only: against a long list each search costs.
void refuse_unknown_joint(JobDraft& draft, const Weldment& weldment, const Word& word, std::size_t refused_before) {
  constexpr std::size_t with_hint = 20;
  std::vector<std::string_view> ids;
  for (std::size_t i = 0; i < weldment.joint_count && refused_before < with_hint; ++i)
    ids.push_back(draft.job.joints[weldment.first_joint + i].id);
  refuse_unknown(draft.diagnostics, word, "joint", ids);
}

void refuse_ring(JobDraft& draft, const Weldment& weldment, const std::vector<std::size_t>& ring) {
  std::string names;
  for (const std::size_t joint : ring) names += draft.job.joints[weldment.first_joint + joint].id + " before ";
  const Joint& first = draft.job.joints[weldment.first_joint + ring.front()];
  draft.diagnostics.error(first.place, "no order is possible: " + names + first.id);
}

}  // namespace

void resolve_precedence(JobDraft& draft, const WeldmentText& text, const Weldment& weldment) {
  JointsById by_id;
  for (std::size_t i = 0; i < weldment.joint_count; ++i)
    by_id.emplace(draft.job.joints[weldment.first_joint + i].id, i);
  std::vector<Edge> edges;
  std::size_t refused = 0;
  for (std::size_t i = 0; i < text.joints.size(); ++i) {
    for (const Word& word : text.joints[i].after) {
      if (const auto found = by_id.find(word.text); found != by_id.end())
        edges.emplace_back(found->second, i);
      else
        refuse_unknown_joint(draft, weldment, word, refused++);
    }
  }
  if (const std::vector<std::size_t> ring = find_cycle(weldment.joint_count, edges); !ring.empty())
    return refuse_ring(draft, weldment, ring);
  for (const Edge& edge : edges) {
    const Edge in_job{edge.first + weldment.first_joint, edge.second + weldment.first_joint};
    draft.job.after.push_back(in_job);
  }
}

}  // namespace seambook
