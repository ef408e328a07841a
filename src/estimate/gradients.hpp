// How much each input moves a result: gathered from the backward sweeps over many records, one number for an entry of
// the rate book wherever it stands.
#pragma once

#include <map>

#include "estimate/inputs.hpp"

namespace seambook {

/// How much one input moves a sum of money, for +1 % of the input.
struct Sensitivity {
  SourceId source = no_source;
  std::string words;  // `labour welder rate`, `bracket/1 leg`
  Money<> per_percent;
  double value = 0;  // SI
  Unit unit;         // to show it in, metric
};

using Gradients = std::map<SourceId, Sensitivity>;

/// Adds `scaled` (derivative × value) to an input's; `words` name a number of the job, the rate book's name themselves.
void add_gradient(Gradients&, const RateBook&, const Sourced&, const Unit&, double scaled, const std::string& words);
/// Adds what the inputs on a tape contribute. Counts are known, not doubtful, and are left out; so are sums.
void add_gradients(Gradients&, const RateBook&, const Tape&, const std::vector<double>& adjoint,
                   const std::string& place);
/// Largest first; ties in source order.
std::vector<Sensitivity> sorted(const Gradients&);
/// A seed for a sweep, unless the figure is a plain constant.
void seed(std::vector<Seed>&, const Traced& figure, double weight);

}  // namespace seambook
