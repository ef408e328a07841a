// Job and rate book become times, materials and cost: Job x RateBook -> Estimate.
// Holds afterwards: figures are finite, unrounded, in SI, parallel to the job's joints and weldments, for one piece.
#pragma once

#include "estimate/row.hpp"
#include "estimate/weldment.hpp"

namespace seambook {

struct Estimate {
  std::vector<RowFigures<double>> joints;          // parallel to Job::joints
  std::vector<WeldmentFigures<double>> weldments;  // parallel to Job::weldments
};

Estimate estimate(const RateBook&, const Job&);

/// Sums of a joint's pass groups, or of many joints.
struct Totals {
  Length<> weld_length, unwelded;  // unwelded: of intermittent welds, what lies between the elements
  double weld_elements = 0, passes = 0;
  double pieces = 0;  // electrodes and rods
  Mass<> deposit, filler, flux;
  Time<> arc, floor, waiting;
  Volume<> gas;
  Energy<> energy;
  Money<> labour, filler_cost, gas_cost, power, equipment, wear;  // flux counts with the filler
};
Totals joint_totals(const RowFigures<double>&);
Totals& operator+=(Totals&, const Totals&);
/// Cost of welding: the money of `Totals` together.
Money<> welding_cost(const Totals&);

/// What an estimator should look at again: welds against members, deposition against travel speed. Sorted as the joints
/// are.
std::vector<Diagnostic> findings(const RateBook&, const Job&, const Estimate&);
/// Those of one joint by itself.
std::vector<Diagnostic> joint_findings(const RateBook&, const Job&, const Joint&, const RowFigures<double>&);

}  // namespace seambook
