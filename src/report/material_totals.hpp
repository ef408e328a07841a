// Below the materials page's rows: each filler, gas and flux of the job with what is used of it, as sums over the rows
// that name it.
#pragma once

#include "report/joint_pages.hpp"

namespace seambook {

/// What a job uses of each filler, gas and flux, by name, and what it pays for fillers and fluxes.
struct MaterialTotals {
  std::map<std::string, Mass<>> fillers, fluxes;
  std::map<std::string, Volume<>> gases, purge_gases;
  std::map<std::string, Money<>> filler_costs, flux_costs;
};
MaterialTotals material_totals(const RateBook&, const Job&, const Estimate&);

void put_material_totals(const RateBook&, const Job&, const Estimate&, JointPages&);

}  // namespace seambook
