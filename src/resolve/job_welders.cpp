// Work that nobody on the rate book's list of welders is qualified for. Dates are not looked at here.
#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <tuple>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

bool covers(const Qualification& qualification, const RateBook& book, const Joint& joint, std::size_t process) {
  const std::string& group = book.base_metals[joint.base_metal].group;
  const double thickness = thinner_member(joint).si;
  const auto admits = [&](const std::string& admitted) { return group_admits(admitted, group); };
  if (qualification.process != process) return false;
  if (std::none_of(qualification.groups.begin(), qualification.groups.end(), admits)) return false;
  if (std::find(qualification.positions.begin(), qualification.positions.end(), joint.position) ==
      qualification.positions.end())
    return false;
  if (!qualification.thickness) return true;
  const auto [from, to] = *qualification.thickness;
  return from.si * (1 - 1e-9) <= thickness && thickness <= to.si * (1 + 1e-9);
}

}  // namespace

bool somebody_qualified(const RateBook& book, const Joint& joint, std::size_t process) {
  return std::any_of(book.welders.begin(), book.welders.end(), [&](const Welder& welder) {
    return std::any_of(welder.qualifications.begin(), welder.qualifications.end(),
                       [&](const Qualification& qualification) { return covers(qualification, book, joint, process); });
  });
}

void check_welders(JobDraft& draft) {
  const RateBook& book = draft.book;
  if (book.welders.empty()) return;
  std::set<std::tuple<std::size_t, std::string, std::string>> told;
  for (const Joint& joint : draft.job.joints) {
    for (const PassGroup& pass : joint.passes) {
      const std::size_t process = book.procedures[pass.procedure].process;
      if (somebody_qualified(book, joint, process)) continue;
      const std::string& group = book.base_metals[joint.base_metal].group;
      if (!told.emplace(process, group, joint.position).second) continue;
      draft.diagnostics.warning(
          joint.place, fmt::format("no welder is qualified for process {}, base-metal group {}, position {}, {}",
                                   book.processes[process].number, group, joint.position,
                                   length_shown(draft, thinner_member(joint))));
    }
  }
}

}  // namespace seambook
