// Hardening and preheat of a joint as keys and values of JSON; what is not known is left out, what method B cannot say
// is told in words.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "estimate/preheat.hpp"

namespace seambook {

struct HeatFact {
  const char* key;  // with its unit: `preheat_C`
  std::variant<bool, double, std::string, std::vector<double>> value;
};
/// None of a metal that does not harden.
std::vector<HeatFact> heat_facts(const RateBook&, const Joint&, const RowFigures<double>&);

}  // namespace seambook
