// What the labour of a joint is computed from, gathered from the rate book and the job.
#pragma once

#include "estimate/weldment.hpp"

namespace seambook {

LabourShape labour_shape(const RateBook&, const Joint&);
LabourInputs<Sourced> labour_inputs(const RateBook&, const Joint&);
PassLabourInputs<Sourced> pass_labour_inputs(const RateBook&, const Joint&, const PassGroup&);
/// The grade that the joint states, else that of the group's process.
const Labour& labour_of(const RateBook&, const Joint&, const PassGroup&);

}  // namespace seambook
