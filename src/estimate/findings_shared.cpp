// Passes that an estimator should look at again: more laid than there is to fill, passes larger than the rate book's
// limits.
#include <fmt/format.h>

#include "estimate/findings.hpp"

namespace seambook {
namespace {

Row<double> row_of(const JointSeen& seen) { return lift_row<double>(gather_row(seen.book, seen.job, seen.joint)); }

}  // namespace

void nothing_left_to_compute(const JointSeen& seen, Findings& out) {
  if (seen.joint.passes.size() == 1) return;
  const Row<double> row = row_of(seen);
  double laid = 0, left = seen.row.joint.laid.si;
  bool computed = false;
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    if (!shape.filler) continue;
    if (shape.metal.count == PassCount::given) laid += seen.row.passes[g].lays.si;
    if (shape.metal.count == PassCount::from_gouge) left -= seen.row.joint.gouged.si;
    computed = computed || shape.metal.count == PassCount::from_section;
  }
  if (!computed || laid == 0 || laid < left) return;
  found(
      out, seen, Level::warning,
      fmt::format("the passes counted lay {:.2f} mm², the joint takes {:.2f} mm²; nothing is left for the passes to be "
                  "computed",
                  laid / unit::mm2.si, left / unit::mm2.si),
      "leave the fill out, or count fewer root, cap and back passes");
}

void pass_over_limit(const JointSeen& seen, Findings& out) {
  if (seen.book.pass_limits.empty()) return;
  const Row<double> row = row_of(seen);
  for (std::size_t g = 0; g < row.passes.size(); ++g) {
    const PassShape& shape = row.pass_shapes[g];
    const MetalInputs<double>& in = row.passes[g].metal;
    if (!shape.filler || !(shape.metal.leg_limited || shape.metal.area_limited)) continue;
    double limit = shape.metal.area_limited ? in.largest_area.si : largest_fillet_pass(in.largest_leg).si;
    if (shape.metal.leg_limited) limit = least(limit, largest_fillet_pass(in.largest_leg).si);
    const double pass = seen.row.passes[g].section.si / seen.row.passes[g].passes.si;
    if (pass <= limit * (1 + whole_tolerance)) continue;
    found(out, seen, Level::warning,
          fmt::format("a pass of procedure {} takes {:.2f} mm², the rate book's limit in {} is {:.2f} mm²",
                      seen.book.procedures[seen.joint.passes[g].procedure].name, pass / unit::mm2.si,
                      seen.joint.position, limit / unit::mm2.si),
          "count more passes, or leave the count out");
  }
}

}  // namespace seambook
