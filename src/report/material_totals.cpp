#include "report/material_totals.hpp"

namespace seambook {
MaterialTotals material_totals(const RateBook& book, const Job& job, const Estimate& estimate) {
  MaterialTotals totals;
  const auto add = [](auto& to, const auto& amount) { to = to + amount; };
  for (std::size_t j = 0; j < job.joints.size(); ++j) {
    for (std::size_t g = 0; g < job.joints[j].passes.size(); ++g) {
      const Procedure& procedure = book.procedures[job.joints[j].passes[g].procedure];
      const PassFigures<double>& figures = estimate.joints[j].passes[g];
      if (procedure.filler) {
        const std::string& name = book.fillers[*procedure.filler].name;
        add(totals.fillers[name], figures.filler);
      }
      if (procedure.flux) {
        const std::string& name = book.fluxes[*procedure.flux].name;
        add(totals.fluxes[name], figures.flux);
      }
      if (procedure.gas) add(totals.gases[book.gases[*procedure.gas].name], figures.gas);
      if (job.joints[j].purge)
        add(totals.purge_gases[book.gases[book.allowances.purge_gas.value()].name], figures.purge_gas);
    }
  }
  return totals;
}

}  // namespace seambook
