// A comparison for the terminal and as JSON.
#pragma once

#include "compare/comparison.hpp"
#include "report/estimate_json.hpp"

namespace seambook {

/// The families side by side, the scenarios, the verdict.
std::string compare_text(const RateBook&, const Comparison&);
/// Several jobs against one investment: scenarios and verdict.
std::string together_text(const RateBook&, const Comparison& together);
std::string together_json(const RateBook&, const Comparison& together);
/// One job's comparison as JSON: families with their ways, scenarios, verdict; units in the keys.
std::string compare_json(const RateBook&, const Job&, const Comparison&, const ReportedJob&);

}  // namespace seambook
