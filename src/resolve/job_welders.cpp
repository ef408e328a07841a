// Work that nobody on the rate book's list of welders is qualified for. Dates are not looked at here.
#include <fmt/format.h>

#include <set>
#include <tuple>

#include "resolve/job_draft.hpp"
#include "resolve/qualified.hpp"
#include "resolve/shown.hpp"

namespace seambook {

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
