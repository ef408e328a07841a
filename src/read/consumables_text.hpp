// What passes use up beside filler and gas, as the author of a rate book wrote it: how large a pass may be, what
// gouging takes, fluxes, and the parts that wear.
#pragma once

#include "read/written.hpp"

namespace seambook {

/// The largest single pass by process and position; a leg holds for fillets, an area for all welds.
struct PassLimitText {
  Place place;
  std::optional<Word> process;  // none: any
  std::vector<Word> positions;  // none: any
  Maybe<dim::length> leg;       // or
  Maybe<dim::area> area;
  Evidence evidence;
};

/// Gouging the root from the back with an air carbon arc, and grinding the groove clean.
struct GougingText {
  Place place;
  Maybe<dim::length> depth, width;  // of the groove, where a joint does not state it
  Maybe<dim::pace> time;            // attended, per metre of weld
  Maybe<dim::money_per_length> carbons;
  Evidence evidence;
};

struct FluxText {
  Place place;
  std::optional<Word> name, classification;
  Maybe<dim::money_per_mass> price;
  Maybe<dim::ratio> ratio;          // flux used over `ratio_basis`
  std::optional<Word> ratio_basis;  // per_deposit or per_wire
  Evidence evidence;
};

/// A part that wears: its price is spread over its life in arc time, weld length or starts; one of them.
struct WearPartText {
  Place place;
  std::optional<Word> name;
  std::vector<Word> processes;
  Maybe<dim::money> price;
  Maybe<dim::time> life;
  Maybe<dim::length> life_length;
  Maybe<dim::ratio> life_starts;
  Evidence evidence;
};

}  // namespace seambook
