#include <fmt/format.h>

#include <cmath>

#include "estimate/estimate.hpp"

namespace seambook {
namespace {

Diagnostic look_again(const Joint& joint, std::string message, std::string hint) {
  return {Level::warning, joint.place, "joint " + joint.id + ": " + std::move(message), std::move(hint)};
}

/// A leg larger than the thinner member melts it away (shop rule; common practice).
void leg_against_member(const Checks& checks, const Joint& joint, std::vector<Diagnostic>& out) {
  if (joint.weld != WeldKind::fillet) return;
  const bool from_throat = joint.throat.si.source != no_source;
  const double leg = from_throat ? leg_of_throat(Length<>{joint.throat.si.value}).si : joint.leg.si.value;
  const double thinner = least(joint.thickness.si.value, joint.thickness_second.si.value);
  const Ratio<> allowed = thinner < checks.thin_below.si ? checks.leg_over_thin : checks.leg_over_thickness;
  if (leg <= allowed.si * thinner * (1 + whole_tolerance)) return;
  out.push_back(look_again(
      joint, fmt::format("leg {:.4g} mm on a member of {:.4g} mm", leg * 1e3, thinner * 1e3),
      fmt::format("usual is at most {:.4g} mm; a smaller leg or a thicker member", allowed.si * thinner * 1e3)));
}

/// What the wire brings against what the joint takes, in minutes and money.
void mass_balance(const RateBook& book, const Joint& joint, const RowFigures<double>& row,
                  std::vector<Diagnostic>& out) {
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassFigures<double>& group = row.passes[g];
    const Procedure& procedure = book.procedures[joint.passes[g].procedure];
    if (!procedure.filler || std::fabs(group.deposition_difference.si) <= book.checks.mass_balance.si) continue;
    const double lays = group.volume_rate.si / group.travel.si * 1e6;
    const double takes = group.section.si / group.passes.si * 1e6;
    out.push_back(look_again(joint,
                             fmt::format("procedure {} lays {:.2f} mm² a pass, the weld takes {:.2f} mm²; arc time by "
                                         "deposition is {:+.0f} %, {:+.2f} {}",
                                         procedure.name, lays, takes, group.deposition_difference.si * 100,
                                         group.difference_cost.si, book.currency),
                             "look at weld size, passes, travel speed and wire feed"));
  }
}

}  // namespace

std::vector<Diagnostic> findings(const RateBook& book, const Job& job, const Estimate& estimate) {
  std::vector<Diagnostic> out;
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    leg_against_member(book.checks, job.joints[j], out);
    mass_balance(book, job.joints[j], estimate.joints[j], out);
  }
  return out;
}

}  // namespace seambook
