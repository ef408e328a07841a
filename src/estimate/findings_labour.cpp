// Work that someone forgot to put in.
#include <fmt/format.h>

#include <algorithm>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"

namespace seambook {

void starts_without_time(const JointSeen& seen, Findings& out) {
  if (seen.book.method.covered(WorkKind::starts)) return;
  const auto& most = seen.book.checks.start_elements;
  if (!most || seen.row.joint.weld_elements.si <= static_cast<double>(*most)) return;
  double start = 0;
  for (const PassFigures<double>& pass : seen.row.passes) start += pass.labour.start.si;
  if (start > 0) return;
  found(out, seen, Level::warning,
        fmt::format("{:.0f} weld elements, and no time for starts", seen.row.joint.weld_elements.si),
        "look at 'start' of the process in the rate book");
}

/// Where labour is by operating factor, the factor decides everything.
void operating_factor(const PassSeen& seen, Findings& out) {
  const double factor = seen.process.operating_factor.si.value;
  if (!seen.of.book.method.by_factor) return;
  const RangeCheck* most = check_with(seen, &RangeCheck::operating_factor_most);
  if (most != nullptr && factor > most->operating_factor_most->si * (1 + whole_tolerance))
    return found_of_procedure(out, seen, Level::error,
                              fmt::format("an operating factor of {} by process {}; nobody reaches more than {}",
                                          shown(factor, unit::percent), seen.process.number,
                                          shown(*most->operating_factor_most, unit::percent)),
                              "look at what the factor is a share of, and what it covers");
  const RangeCheck* range = check_with(seen, &RangeCheck::operating_factor);
  if (range == nullptr || within(*range->operating_factor, Ratio<>{factor})) return;
  found_of_procedure(
      out, seen, Level::warning,
      fmt::format("an operating factor of {} by process {}; usual is {} to {}", shown(factor, unit::percent),
                  seen.process.number, shown(range->operating_factor->low, unit::percent),
                  shown(range->operating_factor->high, unit::percent)),
      "look at what the factor is a share of, and what it covers");
}

/// Edges of thick plate are bevelled by somebody: in minutes, or bought as cutting.
void bevel_without_time(const JointSeen& seen, Findings& out) {
  const Joint& joint = seen.joint;
  const auto& from = seen.book.checks.bevel_from;
  if (!from || bevelled_edges(joint.weld) == 0 || seen.book.method.covered(LabourKind::edge_preparation)) return;
  if (thinner_of(joint) < from->si * (1 - whole_tolerance)) return;
  if (seen.row.joint.labour.elements.of[static_cast<std::size_t>(LabourKind::edge_preparation)].si > 0) return;
  const auto is_cutting = [](const Bought& line) { return line.kind == BoughtKind::cutting; };
  const Weldment& weldment = seen.job.weldments[joint.weldment];
  if (std::any_of(weldment.bought.begin(), weldment.bought.end(), is_cutting) ||
      std::any_of(seen.job.bought.begin(), seen.job.bought.end(), is_cutting))
    return;
  found(out, seen, Level::warning,
        fmt::format("edges of {} are bevelled, and neither minutes nor cutting are charged for it",
                    shown(thinner_of(joint), unit::mm, terms_of(seen))),
        "add edge_preparation to the rate book's labour elements, or a bought line of kind cutting");
}

/// Runs on runs heat the part up to its interpass limit, and somebody or the part waits.
void passes_without_wait(const PassSeen& seen, Findings& out) {
  if (&seen.group != &seen.of.joint.passes.front()) return;
  const RangeCheck* check = check_with(seen, &RangeCheck::passes_without_wait);
  const JointFigures<double>& joint = seen.of.row.joint;
  if (check == nullptr || joint.labour.elements.waiting.si > 0) return;
  if (joint.labour.elements.of[static_cast<std::size_t>(LabourKind::waiting)].si > 0) return;
  double passes = 0;
  for (const PassFigures<double>& group : seen.of.row.passes) passes += group.passes.si;
  if (passes <= check->passes_without_wait->si * (1 + whole_tolerance)) return;
  found(out, seen.of, Level::warning,
        fmt::format("{:.0f} passes on {}, and no waiting between them", passes,
                    shown(thinner_of(seen.of.joint), unit::mm, terms_of(seen))),
        "the part must cool below its interpass temperature; add 'waiting' per interpass to the labour elements");
}

/// In small lots fitting and tacking take their share of the time of welding; forgotten fit-up is the dearest mistake.
void little_fit_up(const RateBook& book, const Job& job, const Estimate& estimate, std::vector<Diagnostic>& out) {
  if (book.method.covered(WorkKind::fit_up)) return;
  if (!book.checks.fit_up_share || !book.checks.fit_up_lot || job.quantities.empty()) return;
  const auto smallest = *std::min_element(job.quantities.begin(), job.quantities.end());
  for (std::size_t w = 0; w < job.weldments.size(); ++w) {
    const Weldment& weldment = job.weldments[w];
    double fit_up = estimate.weldments[w].parts.si, welding = 0;
    for (std::size_t j = weldment.first_joint; j < weldment.first_joint + weldment.joint_count; ++j) {
      fit_up += estimate.joints[j].joint.labour.fit_up.si + estimate.joints[j].joint.labour.tack.si;
      for (const PassFigures<double>& pass : estimate.joints[j].passes)
        welding += pass.arc.si + pass.labour.start.si + pass.labour.interpass.si;
    }
    const bool small_lot = smallest <= *book.checks.fit_up_lot;
    if (fit_up > 0 && (!small_lot || fit_up >= book.checks.fit_up_share->si * welding)) continue;
    out.push_back(
        {Level::warning, weldment.place,
         fmt::format("weldment {}: fit-up and tacking take {:.1f} min, welding {:.1f} min; usual in small lots "
                     "is at least {}",
                     weldment.name, fit_up / 60, welding / 60, shown(*book.checks.fit_up_share, unit::percent)),
         "look at parts, and at the rate book's allowances for fit-up"});
  }
}

/// A station that takes both must be cleaned before stainless is welded there.
void stations_without_clean_down(const RateBook& book, const Job& job, const Estimate&, std::vector<Diagnostic>& out) {
  const auto stainless = [&](const Joint& joint) {
    return book.base_metals[joint.base_metal].cleanliness == "stainless";
  };
  const auto first = std::find_if(job.joints.begin(), job.joints.end(), stainless);
  if (first == job.joints.end()) return;
  const auto has = [](const std::vector<std::string>& list, std::string_view word) {
    return list.empty() || std::find(list.begin(), list.end(), word) != list.end();
  };
  const bool cleaned = std::any_of(book.change_tasks.begin(), book.change_tasks.end(), [&](const ChangeRule& rule) {
    return rule.attribute == "cleanliness" && has(rule.from, "carbon") && has(rule.to, "stainless");
  });
  if (cleaned) return;
  for (const Station& station : book.stations) {
    const auto takes = [&](std::string_view cleanliness) {
      return std::any_of(book.base_metals.begin(), book.base_metals.end(), [&](const BaseMetal& metal) {
        return metal.cleanliness == cleanliness &&
               std::any_of(station.groups.begin(), station.groups.end(),
                           [&](const std::string& group) { return group_admits(group, metal.group); });
      });
    };
    const bool mounted_carbon = std::any_of(station.mounted.begin(), station.mounted.end(), [](const auto& state) {
      return state.first == "cleanliness" && state.second == "carbon";
    });
    if (!takes("stainless") || !(mounted_carbon || takes("carbon"))) continue;
    out.push_back(
        {Level::warning, first->place,
         fmt::format("station {} takes carbon steel and stainless, and no clean-down stands between", station.name),
         "add a change task {when: cleanliness, from: [carbon], to: [stainless]} to the rate book"});
  }
}

}  // namespace seambook
