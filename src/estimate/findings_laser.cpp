// Whether a laser can do what the procedure claims: thickness for the beam's power, speed within its energy, gaps.
#include <fmt/format.h>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"
#include "trade/laser.hpp"

namespace seambook {
namespace {

template <class T>
const LaserCheck* laser_check_with(const PassSeen& seen, std::optional<T> LaserCheck::*figure) {
  if (seen.procedure.beam_power.si.source == no_source) return nullptr;
  for (const LaserCheck& check : seen.of.book.laser_checks)
    if (check.*figure && in_scope(check.scope, seen)) return &check;
  return nullptr;
}

/// How deep the beam itself must melt: through square edges or as deep as they are welded, half from each side; in a
/// groove, which filler fills, through the root face. Other welds ask for no depth.
double depth_to_melt(const Joint& joint) {
  if (is_groove(joint.weld)) return joint.root_face.si.value / (is_double(joint.weld) ? 2 : 1);
  if (joint.weld != WeldKind::square) return 0;
  const bool partly = joint.groove.depth.si.source != no_source;
  return (partly ? joint.groove.depth.si.value : thinner_of(joint)) / joint.sides.si.value;
}

/// What a pass must melt at least: square edges their depth by the width of the seam, another weld its own metal.
std::optional<Area<>> melted_section(const LaserCheck& check, const PassSeen& seen) {
  if (seen.of.joint.weld != WeldKind::square) {
    if (!seen.procedure.filler) return std::nullopt;
    return seen.figures.section / seen.figures.passes;
  }
  const bool scanned = seen.procedure.scan_width.si.source != no_source;
  if (!scanned && !check.melted_width) return std::nullopt;
  const Length<> width = scanned ? Length<>{seen.procedure.scan_width.si.value} : *check.melted_width;
  return width * Length<>{depth_to_melt(seen.of.joint)};
}

}  // namespace

void laser_thickness(const PassSeen& seen, Findings& out) {
  const LaserCheck* check = laser_check_with(seen, &LaserCheck::thickness_per_kilowatt);
  const double depth = depth_to_melt(seen.of.joint);
  if (check == nullptr || depth <= 0) return;
  const double kilowatts = seen.procedure.beam_power.si.value / unit::kW.si;
  const double reach = check->thickness_per_kilowatt->si * kilowatts;
  if (depth <= reach * (1 + whole_tolerance)) return;
  const bool beyond_belief = check->thickness_most_per_kilowatt &&
                             depth > check->thickness_most_per_kilowatt->si * kilowatts * (1 + whole_tolerance);
  found(out, seen.of, beyond_belief ? Level::error : Level::warning,
        fmt::format("procedure {}: a beam of {} through {} from one side; usual is at most {}", seen.procedure.name,
                    shown(seen.procedure.beam_power.si.value, unit::W), shown(depth, unit::mm, terms_of(seen)),
                    shown(reach, unit::mm, terms_of(seen))),
        "the seam looks sound and is not fused; more power, welding from both sides, or an arc");
}

void laser_speed(const PassSeen& seen, Findings& out) {
  const LaserCheck* check = laser_check_with(seen, &LaserCheck::absorbed);
  if (check == nullptr || !check->melting_share || !check->melting_energy) return;
  const std::optional<Area<>> melted = melted_section(*check, seen);
  if (!melted || melted->si <= 0) return;
  const Speed<> ceiling = speed_ceiling(*check->absorbed, *check->melting_share,
                                        Power<>{seen.procedure.beam_power.si.value}, *melted, *check->melting_energy);
  if (seen.figures.travel.si <= ceiling.si * (1 + whole_tolerance)) return;
  found(out, seen.of, Level::error,
        fmt::format("procedure {}: {} with a beam of {}; its energy melts {} at {} at most", seen.procedure.name,
                    shown(seen.figures.travel, unit::mm_per_min, terms_of(seen)),
                    shown(seen.procedure.beam_power.si.value, unit::W), shown(*melted, unit::mm2, terms_of(seen)),
                    shown_fixed(ceiling.si, unit::mm_per_min, 0, terms_of(seen))),
        "no beam melts more than its energy; look at speed, power and scan width");
}

void laser_gap(const PassSeen& seen, Findings& out) {
  const bool wire = seen.procedure.filler.has_value();
  const auto figure = wire ? &LaserCheck::gap_with_wire : &LaserCheck::gap_alone;
  const LaserCheck* check = laser_check_with(seen, figure);
  const Joint& joint = seen.of.joint;
  const Known<dim::length>& gap = joint.gap_max.si.source != no_source ? joint.gap_max : joint.gap;
  if (check == nullptr || gap.si.source == no_source) return;
  const Length<> most = gap_limit(Length<>{thinner_of(joint)}, *(check->*figure));
  if (gap.si.value <= most.si * (1 + whole_tolerance)) return;
  found(
      out, seen.of, Level::warning,
      fmt::format("a gap of {} welded by laser {}; usual is at most {}", shown(gap.si.value, unit::mm, terms_of(seen)),
                  wire ? "with filler" : "without filler", shown(most, unit::mm, terms_of(seen))),
      "the beam falls through; look at cutting, clamping, filler, or an arc");
}

}  // namespace seambook
