// What a station needs brought for a shift, from the figures of the estimate: filler, flux, gases, parts that wear.
#pragma once

#include "report/dispatch.hpp"

namespace seambook {

struct Fetched {
  std::size_t station = 0, shift = 0;  // of the problem, of the plan's shifts
  std::string kind, name;              // `filler`, `308LSi-1.0`
  Unit unit;                           // in which it is shown; `none` for pieces
  double amount = 0;                   // in SI, or pieces
  double pack = 0;                     // of the same, 0 where the rate book states none
};

/// By shift, then station, then kind, then as the rate book has them.
std::vector<Fetched> fetch_list(const PlannedShop&, const std::vector<DispatchList>&);

}  // namespace seambook
