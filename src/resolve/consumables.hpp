// What passes use up beside filler and gas, resolved: names are indices, numbers know their source.
#pragma once

#include "resolve/source.hpp"

namespace seambook {

/// The largest single pass where process and position are these; one of leg (fillets) and area.
struct PassLimit {
  std::optional<std::size_t> process;  // absent: any
  std::vector<std::string> positions;  // ISO 6947; empty: any
  Known<dim::length> leg;
  Known<dim::area> area;
};

/// Gouging the root from the back.
struct Gouging {
  Known<dim::length> depth, width;  // absent: each joint states its own
  Known<dim::pace> time;
  Known<dim::money_per_length> carbons;  // absent: none are charged
};

struct Flux {
  std::string name, classification;
  Known<dim::money_per_mass> price;
  Known<dim::ratio> ratio;
  bool per_wire = false;  // else per weld metal
};

/// One of the three lives is given.
struct WearPart {
  std::string name;
  std::vector<std::size_t> processes;
  Known<dim::money> price;
  Known<dim::time> life;
  Known<dim::length> life_length;
  Known<dim::ratio> life_starts;
};

}  // namespace seambook
