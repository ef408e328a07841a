// Which joint must be welded before which: ids within a weldment become edges between joints, without a ring.
#include <fmt/format.h>

#include "resolve/joint_ids.hpp"

namespace seambook {
namespace {

void refuse_ring(JobDraft& draft, const Weldment& weldment, const std::vector<std::size_t>& ring) {
  std::string names;
  for (const std::size_t joint : ring) names += draft.job.joints[weldment.first_joint + joint].id + " before ";
  const Joint& first = draft.job.joints[weldment.first_joint + ring.front()];
  draft.diagnostics.error(first.place, "no order is possible: " + names + first.id);
}

}  // namespace

void resolve_precedence(JobDraft& draft, const WeldmentText& text, const Weldment& weldment) {
  JointIds ids = joint_ids(draft, weldment);
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < text.joints.size(); ++i)
    for (const std::size_t before : find_joints(ids, text.joints[i].after))
      edges.emplace_back(before - weldment.first_joint, i);
  if (const std::vector<std::size_t> ring = find_cycle(weldment.joint_count, edges); !ring.empty())
    return refuse_ring(draft, weldment, ring);
  for (const Edge& edge : edges) {
    const Edge in_job{edge.first + weldment.first_joint, edge.second + weldment.first_joint};
    draft.job.after.push_back(in_job);
  }
}

}  // namespace seambook
