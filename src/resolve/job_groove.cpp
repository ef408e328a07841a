// Grooves that can be cut: root face and depths within the thickness, an angle that opens, a root radius that fits.
// What bounds another size is locked on the sheet, or the sheet admits no more than would be accepted here.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

constexpr double rounding = 1e-9;  // relative: the same size written in two units

void check_root_face(JobDraft& draft, const Joint& joint) {
  freeze(draft, joint.root_face.si);  // bound to the thickness
  if (given(joint.groove.depth)) return;
  for (const Known<dim::length>& member : {joint.thickness, joint.thickness_second})
    set_limits(draft, member.si, {joint.root_face.si.value, 1, true, false});
  if (!given(joint.root_face) || joint.root_face.si.value < thinner_member(joint).si) return;
  draft.diagnostics.error(
      place_to_blame(draft, joint, joint.root_face.si),
      fmt::format("root face {} leaves no groove in {}", length_shown(draft, joint.root_face.si.value),
                  length_shown(draft, thinner_member(joint))));
}

void check_depth(JobDraft& draft, const Joint& joint) {
  const GrooveSizes& groove = joint.groove;
  if (!given(groove.depth)) return;
  const double welded = groove.depth.si.value + groove.depth_second.si.value + joint.root_face.si.value;
  for (const Known<dim::length>& member : {joint.thickness, joint.thickness_second})
    set_limits(draft, member.si, {welded, 1, false, false});
  const Length<> thickness = thinner_member(joint);
  if (welded <= thickness.si * (1 + rounding)) return;
  std::string words = "depth " + length_shown(draft, groove.depth.si.value);
  if (given(groove.depth_second)) words += " and " + length_shown(draft, groove.depth_second.si.value);
  if (joint.root_face.si.value > 0) words += " with root face " + length_shown(draft, joint.root_face.si.value);
  draft.diagnostics.error(place_of(draft, groove.depth.si),
                          fmt::format("{} is more than the thickness of {}", words, length_shown(draft, thickness)));
}

/// At 90 degrees and more the one flank of a bevel or J never opens, at 180 the two of a V or U.
double widest_angle(const Joint& joint) { return (is_one_flank(joint.weld) ? 90 : 180) * unit::degree.si; }

/// How deep the shallower side is cut.
double cut_depth(const Joint& joint) {
  const GrooveSizes& groove = joint.groove;
  if (!given(groove.depth)) {
    const double whole = thinner_member(joint).si - joint.root_face.si.value;
    return is_double(joint.weld) ? whole / 2 : whole;
  }
  if (!given(groove.depth_second)) return groove.depth.si.value;
  return std::min(groove.depth.si.value, groove.depth_second.si.value);
}

/// The arc of a root radius R reaches R(1 - sin β) deep: the steeper the flank, the deeper.
void check_radius(JobDraft& draft, const Joint& joint) {
  for (const Known<dim::length>& size : {joint.groove.radius, joint.thickness, joint.thickness_second})
    freeze(draft, size.si);
  const double share = is_one_flank(joint.weld) ? 1 : 0.5, radius = joint.groove.radius.si.value;
  const double depth = cut_depth(joint);
  const double arc = radius * (1 - std::sin(joint.groove_angle.si.value * share));
  const double steepest = depth < radius ? std::asin(1 - depth / radius) / share : 0;
  set_limits(draft, joint.groove_angle.si, {steepest, widest_angle(joint), true, true});
  if (arc <= depth * (1 + rounding)) return;
  draft.diagnostics.error(
      place_to_blame(draft, joint, joint.groove.radius.si),
      fmt::format("radius {} does not fit: its arc is {} deep, the groove {}", length_shown(draft, radius),
                  length_shown(draft, arc), length_shown(draft, depth)));
}

bool check_angle(JobDraft& draft, const Joint& joint) {
  const double widest = widest_angle(joint), angle = joint.groove_angle.si.value;
  set_limits(draft, joint.groove_angle.si, {0, widest, true, true});
  if (!given(joint.groove_angle) || (angle > 0 && angle < widest)) return true;
  draft.diagnostics.error(
      place_to_blame(draft, joint, joint.groove_angle.si),
      fmt::format("groove angle {} is impossible", shown(angle, unit::degree)),
      fmt::format("a {} needs more than 0° and less than {}", weld_word(joint.weld), shown(widest, unit::degree)));
  return false;
}

}  // namespace

void check_groove(JobDraft& draft, const Joint& joint) {
  set_limits(draft, joint.gap.si, {0, 1, false, false});
  check_root_face(draft, joint);
  check_depth(draft, joint);
  if (!is_groove(joint.weld)) return;
  const bool opens = check_angle(draft, joint);
  if (opens && is_curved(joint.weld) && given(joint.groove.radius) && given(joint.groove_angle))
    check_radius(draft, joint);
}

}  // namespace seambook
