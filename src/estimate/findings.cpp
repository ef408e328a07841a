#include "estimate/findings.hpp"

#include <fmt/format.h>

#include <map>
#include <tuple>

namespace seambook {
namespace {

using JointRule = void (*)(const JointSeen&, Findings&);
using PassRule = void (*)(const PassSeen&, Findings&);
using JobRule = void (*)(const RateBook&, const Job&, const Estimate&, std::vector<Diagnostic>&);

// All rules that look at an estimate; those on cost and price stand in quote.
constexpr JointRule joint_rules[] = {leg_against_member,     lap_on_plate_edge,          short_elements,
                                     sizes_like_unit_slips,  root_without_purge,         purge_flow,
                                     starts_without_time,    bevel_without_time,         laid_over_section,
                                     pass_over_limit,        both_sides_without_gouging, preheat_question,
                                     interpass_below_preheat};
constexpr PassRule pass_rules[] = {least_leg,          oversized_procedure,
                                   mass_balance,       travel_speed,
                                   deposition_rate,    heat_input_range,
                                   voltage_at_current, leg_of_one_pass,
                                   pass_size,          gas_flow,
                                   duty_cycle,         combinations,
                                   laser_thickness,    laser_speed,
                                   laser_gap,          prices_like_unit_slips,
                                   operating_factor,   passes_without_wait,
                                   heat_input_limit};
constexpr JobRule job_rules[] = {little_fit_up, stations_without_clean_down, equivalents_agree};

void look_at_joint(const JointSeen& seen, Findings& out) {
  for (const auto rule : joint_rules) rule(seen, out);
  for (std::size_t g = 0; g < seen.row.passes.size(); ++g) {
    const PassGroup& group = seen.joint.passes[g];
    const Procedure& procedure = seen.book.procedures[group.procedure];
    const PassSeen pass{seen, group, procedure, seen.book.processes[procedure.process], seen.row.passes[g]};
    for (const auto rule : pass_rules) rule(pass, out);
  }
}

/// What is told once takes the place of its first joint and counts the others.
void gather_findings(Findings& all, std::vector<Diagnostic>& out) {
  struct Told {
    std::size_t at = 0, others = 0;
    const Finding* last = nullptr;
  };
  std::map<std::tuple<Level, std::string, std::string>, Told> once;
  for (Finding& finding : all) {
    const Diagnostic& d = finding.diagnostic;
    if (finding.once) {
      const auto [told, first] = once.try_emplace({d.level, d.message, d.hint}, Told{out.size(), 0, &finding});
      if (!first && told->second.last->joint != finding.joint) told->second.others += 1;
      told->second.last = &finding;
      if (!first) continue;
    }
    out.push_back({d.level, d.place, finding.joint + ": " + d.message, d.hint});
  }
  for (const auto& [key, told] : once) {
    if (told.others == 0) continue;
    Diagnostic& d = out[told.at];
    d.message.insert(d.message.find(": "), fmt::format(" and {} more", told.others));
  }
}

}  // namespace

void found(Findings& out, const JointSeen& seen, Level level, std::string message, std::string hint) {
  out.push_back({{level, seen.joint.place, std::move(message), std::move(hint)}, false, "joint " + seen.joint.id});
}

void found_of_procedure(Findings& out, const PassSeen& seen, Level level, std::string message, std::string hint) {
  out.push_back(
      {{level, seen.of.joint.place, fmt::format("procedure {}: {}", seen.procedure.name, message), std::move(hint)},
       true,
       "joint " + seen.of.joint.id});
}

std::vector<Diagnostic> joint_findings(const RateBook& book, const Job& job, const Joint& joint,
                                       const RowFigures<double>& row) {
  Findings all;
  look_at_joint({book, job, joint, row}, all);
  std::vector<Diagnostic> out;
  gather_findings(all, out);
  return out;
}

std::vector<Diagnostic> findings(const RateBook& book, const Job& job, const Estimate& estimate) {
  Findings all;
  for (std::size_t j = 0; j < job.joints.size(); ++j)
    look_at_joint({book, job, job.joints[j], estimate.joints[j]}, all);
  std::vector<Diagnostic> out;
  gather_findings(all, out);
  for (const auto rule : job_rules) rule(book, job, estimate, out);
  return out;
}

}  // namespace seambook
