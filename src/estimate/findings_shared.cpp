// Passes that an estimator should look at again: more laid than there is to fill, passes larger than the rate book's
// limits.
#include <fmt/format.h>

#include "estimate/findings.hpp"
#include "resolve/shown.hpp"
#include "trade/section.hpp"

namespace seambook {
namespace {

Row<double> row_of(const JointSeen& seen) { return lift_row<double>(gather_row(seen.book, seen.job, seen.joint)); }

}  // namespace

void laid_over_section(const JointSeen& seen, Findings& out) {
  const Row<double> row = row_of(seen);
  double laid = 0, left = seen.row.joint.laid.si;
  bool computed = false;
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    const PassFigures<double>& group = seen.row.passes[g];
    if (!shape.filler) continue;
    if (shape.metal.count == PassCount::given) laid += (group.passes * group.volume_rate / group.travel).si;
    if (shape.metal.count == PassCount::from_gouge) left -= seen.row.joint.gouged.si;
    computed = computed || shape.metal.count == PassCount::from_section;
  }
  const auto& most = seen.book.checks.counted_over_section;
  const bool impossible = most && laid > most->si * left * (1 + whole_tolerance);
  if (laid == 0 || (!impossible && (!computed || laid < left))) return;
  const auto area = [&](double si) { return shown_fixed(si, unit::mm2, 2, terms_of(seen)); };
  std::string message = fmt::format("the passes counted lay {}, the joint takes {}", area(laid), area(left));
  if (impossible) message += fmt::format(": more than {}", shown(*most, unit::percent));
  if (computed) message += "; nothing is left for the passes to be computed";
  found(out, seen, impossible ? Level::error : Level::warning, std::move(message),
        computed ? "leave the fill out, or count fewer root, cap and back passes"
                 : "count fewer passes, or look at the size of the weld");
}

void both_sides_without_gouging(const JointSeen& seen, Findings& out) {
  const Joint& joint = seen.joint;
  const auto& from = seen.book.checks.gouge_from;
  const bool through = is_double(joint.weld) && joint.groove.depth.si.source == no_source;
  if (!from || !through || joint.gouge_depth.si.source != no_source) return;
  if (thinner_of(joint) < from->si * (1 - whole_tolerance)) return;
  found(out, seen, Level::warning,
        fmt::format("a {} through {} is welded from both sides, and the root is not gouged between them",
                    weld_word(joint.weld), shown(thinner_of(joint), unit::mm, terms_of(seen))),
        "state 'backgouge: true', or 'depth' where the sides need not meet");
}

void pass_over_limit(const JointSeen& seen, Findings& out) {
  if (seen.book.pass_limits.empty()) return;
  const Row<double> row = row_of(seen);
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    const MetalInputs<double>& in = row.passes[g].metal;
    if (!shape.filler || !(shape.metal.leg_limited || shape.metal.area_limited)) continue;
    const double fillet = fillet_section(in.largest_leg, row.joint.convexity).si;
    double limit = shape.metal.area_limited ? in.largest_area.si : fillet;
    if (shape.metal.leg_limited) limit = least(limit, fillet);
    const double pass = seen.row.passes[g].section.si / seen.row.passes[g].passes.si;
    if (pass <= limit * (1 + whole_tolerance)) continue;
    found(out, seen, Level::warning,
          fmt::format("a pass of procedure {} takes {}, the rate book's limit in {} is {}",
                      seen.book.procedures[seen.joint.passes[g].procedure].name,
                      shown_fixed(pass, unit::mm2, 2, terms_of(seen)), seen.joint.position,
                      shown_fixed(limit, unit::mm2, 2, terms_of(seen))),
          "count more passes, or leave the count out");
  }
}

}  // namespace seambook
