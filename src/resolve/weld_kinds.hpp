// The kinds of weld, and what they have in common: which are grooves, which are cut on both members, from both sides.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <string_view>

namespace seambook {

enum class WeldKind : std::uint8_t {
  fillet,
  square,
  single_v,
  double_v,
  single_bevel,
  double_bevel,
  single_u,
  double_u,
  single_j,
  double_j,
  flare_bevel,
  flare_v,
  edge,
  plug,
  slot,
  overlay,
  gouged
};
inline constexpr std::size_t weld_kinds = 17;

constexpr bool one_of_kinds(WeldKind weld, std::initializer_list<WeldKind> kinds) {
  for (const WeldKind kind : kinds)
    if (kind == weld) return true;
  return false;
}
/// Edges cut at an angle: V, bevel, U, J.
constexpr bool is_groove(WeldKind weld) { return weld >= WeldKind::single_v && weld <= WeldKind::double_j; }
constexpr bool is_double(WeldKind weld) {
  using enum WeldKind;
  return one_of_kinds(weld, {double_v, double_bevel, double_u, double_j});
}
/// U and J.
constexpr bool is_curved(WeldKind weld) { return weld >= WeldKind::single_u && weld <= WeldKind::double_j; }
/// Cut on one member only: bevel and J. Their groove angle is that of the one flank.
constexpr bool is_one_flank(WeldKind weld) {
  using enum WeldKind;
  return one_of_kinds(weld, {single_bevel, double_bevel, single_j, double_j});
}
constexpr bool is_flare(WeldKind weld) { return weld == WeldKind::flare_bevel || weld == WeldKind::flare_v; }
/// Filled through a hole in the first member.
constexpr bool is_hole(WeldKind weld) { return weld == WeldKind::plug || weld == WeldKind::slot; }
/// Joins two edges or members that are fitted and tacked along the line; holes and surfaces are not.
constexpr bool is_fitted(WeldKind weld) { return weld < WeldKind::plug; }

std::string_view weld_word(WeldKind);  // `single V`
std::string_view weld_key(WeldKind);   // `single_v`, as in files

}  // namespace seambook
