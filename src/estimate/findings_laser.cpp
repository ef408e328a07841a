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

bool is_butt(const Joint& joint) { return is_groove(joint.weld) || joint.weld == WeldKind::square; }

/// What a pass must melt at least: a butt the thickness by the width of the seam, another weld its own metal.
std::optional<Area<>> melted_section(const LaserCheck& check, const PassSeen& seen) {
  if (!is_butt(seen.of.joint)) {
    if (!seen.procedure.filler) return std::nullopt;
    return seen.figures.section / seen.figures.passes;
  }
  const bool scanned = seen.procedure.scan_width.si.source != no_source;
  if (!scanned && !check.melted_width) return std::nullopt;
  const Length<> width = scanned ? Length<>{seen.procedure.scan_width.si.value} : *check.melted_width;
  return width * Length<>{thinner_of(seen.of.joint) / seen.of.joint.sides.si.value};
}

}  // namespace

/// A butt is melted through, from one side or half from each.
void laser_thickness(const PassSeen& seen, Findings& out) {
  const LaserCheck* check = laser_check_with(seen, &LaserCheck::thickness_per_kilowatt);
  if (check == nullptr || !is_butt(seen.of.joint)) return;
  const double kilowatts = seen.procedure.beam_power.si.value / unit::kW.si;
  const double depth = thinner_of(seen.of.joint) / seen.of.joint.sides.si.value;
  const double reach = check->thickness_per_kilowatt->si * kilowatts;
  if (depth <= reach * (1 + whole_tolerance)) return;
  const bool beyond_belief = check->thickness_most_per_kilowatt &&
                             depth > check->thickness_most_per_kilowatt->si * kilowatts * (1 + whole_tolerance);
  found(out, seen.of, beyond_belief ? Level::error : Level::warning,
        fmt::format("procedure {}: a beam of {} through {} from one side; usual is at most {}", seen.procedure.name,
                    shown(seen.procedure.beam_power.si.value, unit::W), shown(depth, unit::mm), shown(reach, unit::mm)),
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
        fmt::format("procedure {}: {} with a beam of {}; its energy melts {} at {:.0f} mm/min at most",
                    seen.procedure.name, shown(seen.figures.travel, unit::mm_per_min),
                    shown(seen.procedure.beam_power.si.value, unit::W), shown(*melted, unit::mm2),
                    ceiling.si / unit::mm_per_min.si),
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
  found(out, seen.of, Level::warning,
        fmt::format("a gap of {} welded by laser {}; usual is at most {}", shown(gap.si.value, unit::mm),
                    wire ? "with filler" : "without filler", shown(most, unit::mm)),
        "the beam falls through; look at cutting, clamping, filler, or an arc");
}

}  // namespace seambook
