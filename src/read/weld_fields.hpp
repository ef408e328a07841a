// The keys of sizes that only some welds have.
#pragma once

#include "read/field_table.hpp"

namespace seambook {

inline constexpr std::string_view backing_words[] = {"none", "temporary", "permanent"};
inline constexpr std::string_view layout_words[] = {"chain", "staggered"};
inline constexpr std::string_view weld_kinds_in_words =
    "fillet, square, single_v, double_v, single_bevel, double_bevel, single_u, double_u, single_j, double_j, "
    "flare_bevel, flare_v, edge, plug, slot, overlay or gouged";

template <auto Member>
constexpr Field<JointText> weld_field(std::string_view key, std::string_view about) {
  return field<&JointText::sizes, Member>(key, about);
}

/// A share of the groove's section, or width and height of the cap.
inline void read_excess(Reading& reading, Value value, const FieldInfo& info, JointText& joint) {
  if (value.kind() != Kind::scalar) return read_into(reading, value, info, joint.excess);
  FieldInfo share = info;
  share.shape = Shape::amount;
  read_into(reading, value, share, joint.sizes.excess_share);
}

inline constexpr auto weld_sizes = std::to_array<Field<JointText>>({
    weld_field<&WeldText::legs>("legs", "of a fillet on first and second member: [6 mm, 8 mm]"),
    weld_field<&WeldText::deep_throat>("deep_throat", "throat s with deep penetration, at least the throat a: 5 mm"),
    weld_field<&WeldText::depth>(
        "depth", "of the preparation, for partial penetration; one or two for welds from both sides: [12 mm, 10 mm]"),
    weld_field<&WeldText::radius>("radius", "root radius of a U or J, or of the round of a flare: 6 mm"),
    chosen_from(backing_words, weld_field<&WeldText::backing>("backing", "none, temporary or permanent")),
    {{.key = "excess",
      .about = "cap of a butt weld by its size, or as a share of the groove: {width: 5 mm, height: 1 mm}, or 10 %",
      .shape = Shape::amount_or_section,
      .may_be_zero = true,
      .inside = infos_of<ExcessText>},
     read_excess},
    weld_field<&WeldText::back_excess>("back_excess", "cap on the root side: {width: 6 mm, height: 1 mm}"),
    weld_field<&WeldText::reinforce>("reinforce", "leg of a fillet over a bevel or J of a T-joint: 5 mm"),
    weld_field<&WeldText::diameter>("diameter", "of the hole of a plug weld: 20 mm"),
    weld_field<&WeldText::width>("width", "of a slot, an overlay or a gouged groove: 12 mm"),
    weld_field<&WeldText::layers>("layers", "of an overlay: 2"),
    weld_field<&WeldText::layer_height>("layer_height", "of one layer of an overlay: 3 mm"),
    weld_field<&WeldText::branch_on>("branch_on", "outside diameter of the tube on which this tube is set: 219.1 mm"),
    weld_field<&WeldText::branch_angle>("branch_angle", "between the axes of both tubes; 90 deg when left out: 60 deg"),
    weld_field<&WeldText::around>("around", "sides of a rectangle that is welded all round: [60 mm, 40 mm]"),
    weld_field<&WeldText::corner_radius>("corner_radius", "of that rectangle's corners: 5 mm"),
    chosen_from(layout_words, weld_field<&WeldText::layout>(
                                  "layout", "of weld elements on two sides: chain (opposite) or staggered")),
});

}  // namespace seambook
