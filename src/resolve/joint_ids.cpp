#include "resolve/joint_ids.hpp"

namespace seambook {

JointIds joint_ids(JobDraft& draft, const Weldment& weldment) {
  JointIds ids{draft, weldment, {}};
  for (std::size_t j = weldment.first_joint; j < weldment.first_joint + weldment.joint_count; ++j)
    ids.by_id.emplace(draft.job.joints[j].id, j);
  return ids;
}

std::optional<std::size_t> find_joint(JointIds& ids, const Word& word) {
  if (const auto found = ids.by_id.find(word.text); found != ids.by_id.end()) return found->second;
  constexpr std::size_t with_hint = 20;  // against a long list each search for the nearest costs
  std::vector<std::string_view> known;
  for (std::size_t i = 0; i < ids.weldment.joint_count && ids.refused < with_hint; ++i)
    known.push_back(ids.draft.job.joints[ids.weldment.first_joint + i].id);
  ++ids.refused;
  refuse_unknown(ids.draft.diagnostics, word, "joint", known);
  return std::nullopt;
}

std::vector<std::size_t> find_joints(JointIds& ids, const std::vector<Word>& words) {
  std::vector<std::size_t> found;
  found.reserve(words.size());
  for (const Word& word : words)
    if (const auto joint = find_joint(ids, word)) found.push_back(*joint);
  return found;
}

}  // namespace seambook
