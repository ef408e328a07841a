// JSON text of what stands beside a price: how far it may lie off, what moves it, what changed since a previous quote,
// and the files it was made from.
#pragma once

#include "quote/quote.hpp"
#include "report/estimate_json.hpp"

namespace seambook {

/// How far the total of the first quantity may lie off.
std::string doubt_json(const Doubt&);
std::string drivers_json(const RateBook&, const Doubt&);
std::string inputs_json(const WrittenInputs&);
std::string changes_json(const Changes&);

}  // namespace seambook
