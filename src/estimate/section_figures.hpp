// The section of a joint's weld metal: groove, hole or fillet by the kind of weld, the caps on it, the fillet over it.
// Written once for plain and for traced numbers; the formulas are in trade/section*.hpp.
#pragma once

#include "estimate/inputs.hpp"
#include "trade/section_fills.hpp"

namespace seambook {

template <class N>
Flanks<N> flanks_of(WeldKind weld, const JointInputs<N>& in) {
  if (!is_curved(weld)) return is_one_flank(weld) ? bevel_flanks(in.groove_angle) : v_flanks(in.groove_angle);
  Flanks<N> flanks = is_one_flank(weld) ? j_flanks(in.groove_angle, in.weld.radius)  //
                                        : u_flanks(in.groove_angle, in.weld.radius);
  flanks.arc = name(flanks.arc, fig::arc_depth);
  return flanks;
}

/// How deep the edges are cut when the weld goes through; a figure of its own where it stands several times.
template <class N>
Length<N> cut_through(const JointShape& shape, const JointInputs<N>& in) {
  const Length<N> depth = is_double(shape.weld) ? half_of_groove(in.thickness, in.root_face)  //
                                                : in.thickness - in.root_face;
  return is_curved(shape.weld) ? name(depth, fig::cut_depth) : depth;
}

/// What is laid below the plate's faces, and how wide the groove is there: at the face, and on the second side.
template <class N>
struct GrooveFigures {
  Area<N> section;
  Length<N> face, second_face;
};

template <class N>
GrooveFigures<N> groove_figures(const JointShape& shape, const JointInputs<N>& in) {
  const Flanks<N> flanks = flanks_of(shape.weld, in);
  if (is_double(shape.weld)) {
    if (shape.sizes.depth_given)
      return {double_groove_section(flanks, in.weld.depth, in.weld.depth_second, in.gap, in.root_face),
              groove_face(flanks, in.weld.depth, in.gap), groove_face(flanks, in.weld.depth_second, in.gap)};
    const Length<N> depth = cut_through(shape, in), face = groove_face(flanks, depth, in.gap);
    return {gap_section(in.thickness, in.gap) + 2 * flank_section(flanks, depth), face, face};
  }
  if (shape.sizes.depth_given)
    return {gap_section(in.weld.depth + in.root_face, in.gap) + flank_section(flanks, in.weld.depth),
            groove_face(flanks, in.weld.depth, in.gap), in.gap};
  const Length<N> depth = cut_through(shape, in);
  return {gap_section(in.thickness, in.gap) + flank_section(flanks, depth), groove_face(flanks, depth, in.gap), in.gap};
}

/// Flush up to the round's radius unless a depth is given; a flare-V lies between two rounds.
template <class N>
GrooveFigures<N> flare_figures(const JointShape& shape, const JointInputs<N>& in) {
  const double rounds = shape.weld == WeldKind::flare_v ? 2 : 1;
  const Length<N> height = shape.sizes.depth_given ? in.weld.depth : in.weld.radius;
  const Area<N> beside = shape.sizes.depth_given ? flare_section(in.weld.radius, in.weld.depth)  //
                                                 : flush_flare_section(in.weld.radius);
  const Length<N> opening = shape.sizes.depth_given ? flare_width(in.weld.radius, in.weld.depth) : in.weld.radius;
  const Length<N> face = in.gap + rounds * opening;
  return {shape.sizes.gapped ? gap_section(height, in.gap) + rounds * beside : rounds * beside, face, in.gap};
}

/// All but fillets. Square edges welded from both sides share the gap: each side's run lays half of it.
template <class N>
GrooveFigures<N> filled_figures(const JointShape& shape, const JointInputs<N>& in) {
  const WeldInputs<N>& weld = in.weld;
  switch (shape.weld) {
    case WeldKind::square: {
      const Area<N> gap = gap_section(shape.sizes.depth_given ? weld.depth : in.thickness, in.gap);
      return {shape.sizes.both_sides ? gap / 2 : gap, in.gap, in.gap};
    }
    case WeldKind::flare_bevel:
    case WeldKind::flare_v:
      return flare_figures(shape, in);
    case WeldKind::edge:
      return {{}, in.thickness + in.thickness_second, {}};
    case WeldKind::plug:
      return {circle_section(weld.diameter), weld.diameter, {}};
    case WeldKind::slot:
      return {slot_section(weld.width, shape.sizes.depth_given ? weld.depth : in.thickness), weld.width, {}};
    case WeldKind::overlay:
      return {overlay_section(weld.width, weld.layers, weld.layer_height), weld.width, {}};
    case WeldKind::gouged:
      return {shape.sizes.deep_gouge ? deep_gouge_section(weld.depth, weld.width)
                                     : shallow_gouge_section(weld.depth, weld.width),
              weld.width,
              {}};
    default:
      return groove_figures(shape, in);
  }
}

template <class N>
Area<N> fillet_figures(const JointShape& shape, const JointInputs<N>& in) {
  const Length<N> leg = shape.from_throat && !shape.sizes.unequal ? name(leg_of_throat(in.throat), fig::leg) : in.leg;
  const auto over_gap = [&](Length<N> of) { return shape.sizes.gapped ? leg_over_gap(of, in.gap) : of; };
  if (shape.sizes.unequal) return unequal_fillet_section(over_gap(leg), over_gap(in.weld.leg_second), in.convexity);
  return fillet_section(over_gap(leg), in.convexity);
}

/// The cap on each face that has one. On the second side of a double groove it is as high as on the first unless its
/// own size is stated.
template <class N>
Area<N> caps(const JointShape& shape, const JointInputs<N>& in, const GrooveFigures<N>& groove) {
  const bool overlaps = shape.weld != WeldKind::edge;
  const auto over = [&](Length<N> face) { return overlaps ? face + 2 * in.excess_overlap : face; };
  Area<N> caps{};
  if (shape.sizes.capped) {
    const Length<N> width = shape.width_given ? in.excess_width : name(over(groove.face), fig::excess_width);
    caps = cap_section(width, in.excess_height);
    if (is_double(shape.weld) && !shape.sizes.back_cap) {
      const Length<N> second = shape.width_given ? width : name(over(groove.second_face), fig::back_width);
      caps = caps + cap_section(second, in.excess_height);
    }
  }
  if (shape.sizes.back_cap) caps = caps + cap_section(in.weld.back_width, in.weld.back_height);
  return caps;
}

template <class N>
Area<N> section_of(const JointShape& shape, const JointInputs<N>& in) {
  if (shape.weld == WeldKind::fillet) return fillet_figures(shape, in);
  GrooveFigures<N> groove = filled_figures(shape, in);
  const bool capped = shape.sizes.capped || shape.sizes.back_cap;
  if (!capped && !shape.sizes.share && !shape.sizes.reinforced) return groove.section;
  if (shape.weld != WeldKind::edge) groove.section = name(groove.section, fig::groove_section);
  Area<N> section = groove.section;
  if (shape.sizes.share) section = section + name(groove.section * in.weld.excess_share, fig::share_section);
  if (capped) section = section + name(caps(shape, in, groove), fig::caps_section);
  if (!shape.sizes.reinforced) return section;
  const Area<N> over = fillet_section(in.weld.reinforce, in.convexity);
  return section + (is_double(shape.weld) ? 2 * over : over);
}

}  // namespace seambook
