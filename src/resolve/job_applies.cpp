// Which keys belong to which weld. What does not belong is refused at its place, never ignored.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"

namespace seambook {
namespace {

template <class Written>
Place place_of(const Written& written) {
  return written.place;
}
template <Dim D>
Place place_of(const Span<D>& written) {
  return written.low.place;
}

struct KeyOfWelds {
  std::string_view key;
  std::optional<Place> place;  // where it is written
  bool applies = true;
  std::string_view hint = {};
};

template <class Optional>
KeyOfWelds key_of(std::string_view key, const Optional& written, bool applies, std::string_view hint = {}) {
  return {key, written ? std::optional<Place>(place_of(*written)) : std::nullopt, applies, hint};
}

std::vector<KeyOfWelds> size_keys(const JointText& text, WeldKind weld) {
  using enum WeldKind;
  const WeldText& sizes = text.sizes;
  const bool groove = is_groove(weld), butt = groove || weld == square, hole = is_hole(weld);
  const std::string_view by_thickness = butt || weld == edge ? "its size is the thickness" : "";
  const bool reinforceable = is_one_flank(weld);
  return {
      key_of("leg", text.leg, weld == fillet, by_thickness),
      key_of("legs", sizes.legs, weld == fillet, by_thickness),
      key_of("throat", text.throat, weld == fillet, by_thickness),
      key_of("deep_throat", sizes.deep_throat, weld == fillet),
      key_of("convexity", text.convexity, weld == fillet || (reinforceable && sizes.reinforce),
             hole ? "" : "state 'excess' with width and height"),
      key_of("lap", text.lap, weld == fillet),
      key_of("gap", text.gap, weld == fillet || butt || is_flare(weld)),
      key_of("root_face", text.root_face, groove),
      key_of("groove_angle", text.groove_angle, groove),
      key_of("radius", sizes.radius, is_curved(weld) || is_flare(weld)),
      key_of("depth", sizes.depth, butt || is_flare(weld) || hole || weld == gouged),
      key_of("backing", sizes.backing, butt && !is_double(weld)),
      key_of("excess", text.excess, !one_of_kinds(weld, {fillet, plug, slot, overlay}),
             weld == fillet ? "state 'convexity' as a share of the section" : ""),
      key_of("excess", sizes.excess_share, butt || weld == gouged || is_flare(weld),
             weld == fillet ? "state 'convexity' as a share of the section" : ""),
      key_of("back_excess", sizes.back_excess, butt),
      key_of("reinforce", sizes.reinforce, reinforceable, "it is a fillet over a bevel or J of a T-joint"),
      key_of("diameter", sizes.diameter, weld == plug, "a tube states 'outside_diameter'"),
      key_of("width", sizes.width, one_of_kinds(weld, {slot, overlay, gouged})),
      key_of("layers", sizes.layers, weld == overlay),
      key_of("layer_height", sizes.layer_height, weld == overlay),
  };
}

std::vector<KeyOfWelds> line_keys(const JointText& text, WeldKind weld) {
  const WeldText& sizes = text.sizes;
  const bool hole = is_hole(weld), plug = weld == WeldKind::plug;
  return {
      key_of("length", text.length, !plug, "its weld length is the depth of the hole"),
      key_of("outside_diameter", text.outside_diameter, !hole),
      key_of("around", sizes.around, !hole),
      key_of("branch_on", sizes.branch_on, !hole),
      key_of("element", text.element, !plug),
      key_of("pitch", text.pitch, !hole),
      key_of("gap_e", text.gap_e, !hole),
      key_of("layout", sizes.layout, !hole),
  };
}

}  // namespace

void refuse_inapplicable(JobDraft& draft, const JointText& text, WeldKind weld) {
  for (const std::vector<KeyOfWelds>& keys : {size_keys(text, weld), line_keys(text, weld)})
    for (const KeyOfWelds& key : keys)
      if (key.place && !key.applies)
        draft.diagnostics.error(*key.place,
                                fmt::format("'{}' does not apply to a weld of kind {}", key.key, weld_word(weld)),
                                std::string(key.hint));
}

}  // namespace seambook
