// What a piece of a job uses of each filler, gas and flux, by name.
#pragma once

#include <map>

#include "estimate/estimate.hpp"

namespace seambook {

struct MaterialTotals {
  std::map<std::string, Mass<>> fillers, fluxes;
  std::map<std::string, Volume<>> gases, purge_gases;
};
MaterialTotals material_totals(const RateBook&, const Job&, const Estimate&);

}  // namespace seambook
