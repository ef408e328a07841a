// Joints of one weldment by the ids that its author gave them.
#pragma once

#include <unordered_map>

#include "resolve/job_draft.hpp"

namespace seambook {

/// All joints of the weldment are known, and none is added while this is used.
struct JointIds {
  JobDraft& draft;
  const Weldment& weldment;
  std::unordered_map<std::string_view, std::size_t> by_id;  // joint of the job
  std::size_t refused = 0;
};
JointIds joint_ids(JobDraft&, const Weldment&);
/// As a joint of the job; refused where there is none.
std::optional<std::size_t> find_joint(JointIds&, const Word&);
std::vector<std::size_t> find_joints(JointIds&, const std::vector<Word>&);

}  // namespace seambook
