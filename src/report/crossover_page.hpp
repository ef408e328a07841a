// Cost of a metre against thickness, process by process, with its chart; as calculated, locked.
#pragma once

#include "compare/comparison.hpp"
#include "report/cells.hpp"

namespace seambook {

Sheet crossover_page(const RateBook&, const Crossover&);
/// `below 2.4 mm 521 is cheaper than 141, above it dearer`: one line a crossing.
std::vector<std::string> crossing_words(const RateBook&, const Crossover&);

}  // namespace seambook
