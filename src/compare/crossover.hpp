// Cost of a metre of seam against thickness, process by process, from the rate book's procedure table; and where one
// process becomes cheaper than another.
#pragma once

#include "estimate/estimate.hpp"

namespace seambook {

/// One process over the thicknesses; nothing where the table has no procedure.
struct CostCurve {
  std::size_t process = 0;
  std::vector<std::optional<MoneyPerLength<>>> cost;  // parallel to Crossover::thicknesses
};
struct Crossing {
  std::size_t below = 0, above = 0;  // curves: the cheaper one on either side
  Length<> thickness;                // by straight lines between the points
};
struct Crossover {
  std::string words;  // `seams like C01 in other thicknesses`
  std::vector<Length<>> thicknesses;
  std::vector<CostCurve> curves;
  std::vector<Crossing> crossings;
};

/// Seams of one metre like `joint` but in stock thicknesses, all else alike; a fillet's leg is then the thickness.
Crossover crossover(const RateBook&, const Job&, const Joint& joint);

}  // namespace seambook
