// What a joint may say of sizes that only some welds have, as its author wrote it: fillets with unequal legs, prepared
// grooves, what fills holes, rounds and surfaces, and lines that are no plain length.
#pragma once

#include "read/written.hpp"

namespace seambook {

struct ExcessText {
  Place place;
  Maybe<dim::length> width, height;
};

struct WeldText {
  MaybeSpan<dim::length> legs;                // of a fillet, on first and second member
  Maybe<dim::length> deep_throat, reinforce;  // s of ISO 2553; leg of a fillet on a bevel or J
  Maybe<dim::length> radius;                  // root radius of U and J, the round's of a flare
  MaybeSpan<dim::length> depth;               // of the preparation, one a side
  std::optional<Word> backing;                // none, temporary, permanent
  std::optional<ExcessText> back_excess;
  Maybe<dim::ratio> excess_share;  // `excess: 10 %`
  Maybe<dim::length> diameter, width, layer_height;
  std::optional<Whole> layers;
  // Lines.
  Maybe<dim::length> branch_on, corner_radius;
  Maybe<dim::angle> branch_angle;
  MaybeSpan<dim::length> around;
  std::optional<Word> layout;  // chain, staggered
};

}  // namespace seambook
