// Sizes of a joint that only some welds have, resolved. Absent numbers have no source.
#pragma once

#include "resolve/source.hpp"
#include "resolve/weld_kinds.hpp"

namespace seambook {

enum class Backing : std::uint8_t { none, temporary, permanent };

struct FilletSizes {
  Known<dim::length> leg_second;   // unequal legs: the other one
  Known<dim::length> deep_throat;  // s of ISO 2553; the metal follows from the legs
};

struct GrooveSizes {
  Known<dim::length> radius;               // root radius of U and J, the round's of a flare
  Known<dim::length> depth, depth_second;  // of a preparation welded partly through, a flare, a hole or a gouge
  Known<dim::length> reinforce;            // leg of the fillet over it
  Known<dim::length> back_width, back_height;
  Known<dim::ratio> excess_share;
  Backing backing = Backing::none;
};

struct FillSizes {
  Known<dim::length> diameter, width, slot, layer_height;
  Known<dim::ratio> layers;
};

/// A line that is no plain length. A branch's line is computed: a locked number at the place of `branch_on`.
struct LineSizes {
  Known<dim::length> branch_on, side, side_second, corner_radius;
  Known<dim::length> gap_e;  // between weld elements, where it is stated in place of the pitch
  Known<dim::angle> branch_angle;
  bool staggered = false;
};

struct Joint;
/// What the sheets call this weld: `single V, permanent backing`, `fillet, staggered`.
std::string weld_in_words(const Joint&);

}  // namespace seambook
