// A comparison for the terminal and as JSON.
#pragma once

#include "compare/comparison.hpp"
#include "report/estimate_json.hpp"
#include "report/terminal.hpp"

namespace seambook {

/// The families side by side, the scenarios, the verdict.
std::string compare_text(const RateBook&, const Comparison&, std::size_t columns = any_width);
/// Several jobs against one investment: scenarios and verdict.
std::string together_text(const RateBook&, const Comparison& together, std::size_t columns = any_width);
std::string together_json(const RateBook&, const Comparison& together);
/// One job's comparison as JSON: families with their ways, scenarios, verdict; units in the keys.
std::string compare_json(const RateBook&, const Job&, const Comparison&, const ReportedJob&);

}  // namespace seambook
