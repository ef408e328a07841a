// Sizes of welds against members, lengths of weld elements, and sizes that look like a slip of the unit.
#include <fmt/format.h>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"

namespace seambook {
/// A leg larger than the thinner member melts it away (shop rule; common practice).
void leg_against_member(const JointSeen& seen, Findings& out) {
  if (seen.joint.weld != WeldKind::fillet) return;
  const Checks& checks = seen.book.checks;
  const double leg = leg_of(seen.joint), thinner = thinner_of(seen.joint);
  const Ratio<> allowed = thinner < checks.thin_below.si ? checks.leg_over_thin : checks.leg_over_thickness;
  if (leg <= allowed.si * thinner * (1 + whole_tolerance)) return;
  found(out, seen, Level::warning,
        fmt::format("leg {} on a member of {}", shown(leg, unit::mm, terms_of(seen)),
                    shown(thinner, unit::mm, terms_of(seen))),
        fmt::format("usual is at most {}; a smaller leg or a thicker member",
                    shown(allowed.si * thinner, unit::mm, terms_of(seen))));
}

/// The edge of the plate on top must still be seen beside the weld: a leg as large as the plate is thick melts it away.
void lap_on_plate_edge(const JointSeen& seen, Findings& out) {
  const Joint& joint = seen.joint;
  const Checks& checks = seen.book.checks;
  if (!joint.lap || !checks.lap_edge_from || !checks.lap_edge_less) return;
  const double edge = joint.thickness.si.value, leg = leg_of(joint);
  if (edge < checks.lap_edge_from->si * (1 - whole_tolerance)) return;
  const double most = edge - checks.lap_edge_less->si;
  if (leg <= most * (1 + whole_tolerance)) return;
  found(out, seen, Level::warning,
        fmt::format("leg {} along the edge of a lapped plate of {}", shown(leg, unit::mm, terms_of(seen)),
                    shown(edge, unit::mm, terms_of(seen))),
        fmt::format("usual is at most {}; nobody can see whether the edge stood, look at the leg",
                    shown(most, unit::mm, terms_of(seen))));
}

/// Small fillets on thick plate cool too fast. Several entries give the least legs by thickness.
void least_leg(const PassSeen& seen, Findings& out) {
  const Joint& joint = seen.of.joint;
  if (joint.weld != WeldKind::fillet || &seen.group != &joint.passes.front()) return;
  for (const RangeCheck& check : seen.of.book.range_checks) {
    if (!check.leg_least || !in_scope(check.scope, seen)) continue;
    const double leg = leg_of(joint);
    if (leg >= check.leg_least->si * (1 - whole_tolerance)) return;
    return found(out, seen.of, Level::warning,
                 fmt::format("leg {} on a thinner member of {}; the usual least is {}",
                             shown(leg, unit::mm, terms_of(seen)), shown(thinner_of(joint), unit::mm, terms_of(seen)),
                             shown(*check.leg_least, unit::mm, terms_of(seen))),
                 "a small weld on thick plate cools fast and may crack; look at the size, or state preheat");
  }
}

/// A procedure named for a smaller weld than it is set for lays more than is drawn.
void oversized_procedure(const PassSeen& seen, Findings& out) {
  const Joint& joint = seen.of.joint;
  const auto& most = seen.of.book.checks.oversized_procedure;
  if (!most || joint.weld != WeldKind::fillet || joint.choice.made_by_program || joint.passes.size() > 1) return;
  const double size = seen.procedure.size.si.value, leg = leg_of(joint);
  if (size <= most->si * leg * (1 + whole_tolerance)) return;
  found(out, seen.of, Level::warning,
        fmt::format("procedure {} is set for a leg of {}, the joint is drawn with {}: more than {}",
                    seen.procedure.name, shown(size, unit::mm, terms_of(seen)), shown(leg, unit::mm, terms_of(seen)),
                    shown(*most, unit::percent)),
        "weld metal grows with the square of the leg; take a procedure for this size");
}

/// Short weld elements are mostly starts and craters; in sheet they are usual.
void short_elements(const JointSeen& seen, Findings& out) {
  const Joint& joint = seen.joint;
  const Checks& checks = seen.book.checks;
  if (joint.element.si.source == no_source) return;
  const double element = joint.element.si.value;
  if (joint.weld == WeldKind::fillet && checks.element_over_leg) {
    const double least_length = checks.element_over_leg->si * leg_of(joint);
    if (element < least_length * (1 - whole_tolerance))
      return found(out, seen, Level::warning,
                   fmt::format("weld elements of {} with a leg of {}; the usual least is {}",
                               shown(element, unit::mm, terms_of(seen)), shown(leg_of(joint), unit::mm, terms_of(seen)),
                               shown(least_length, unit::mm, terms_of(seen))),
                   "a short element is start and crater; look at element and leg");
  }
  const bool thick = checks.element_least_above && thinner_of(joint) > checks.element_least_above->si;
  if (!thick || !checks.element_least || element >= checks.element_least->si * (1 - whole_tolerance)) return;
  found(out, seen, Level::warning,
        fmt::format("weld elements of {}; the usual least is {} on members over {}",
                    shown(element, unit::mm, terms_of(seen)), shown(*checks.element_least, unit::mm, terms_of(seen)),
                    shown(*checks.element_least_above, unit::mm, terms_of(seen))),
        "a short element is start and crater; look at the length of the elements");
}

void sizes_like_unit_slips(const JointSeen& seen, Findings& out) {
  const Checks& checks = seen.book.checks;
  const auto look = [&](std::string_view what, double size, double low, double high) {
    if (size >= low * (1 - whole_tolerance) && size <= high * (1 + whole_tolerance)) return;
    found(out, seen, Level::warning,
          fmt::format("{} {} is outside {} to {}", what, shown(size, unit::mm, terms_of(seen)),
                      shown(low, unit::mm, terms_of(seen)), shown(high, unit::mm, terms_of(seen))),
          "it may be meant in another unit");
  };
  if (checks.thickness) {
    const Length<> low = checks.thickness->low, high = checks.thickness->high;
    look("thickness", seen.joint.thickness.si.value, low.si, high.si);
    if (seen.joint.thickness_second.si.source != seen.joint.thickness.si.source)
      look("thickness of the second member", seen.joint.thickness_second.si.value, low.si, high.si);
  }
  if (checks.leg_most && seen.joint.weld == WeldKind::fillet) look("leg", leg_of(seen.joint), 0, checks.leg_most->si);
}

}  // namespace seambook
