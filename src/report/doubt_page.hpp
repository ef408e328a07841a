// The page of what is in doubt: the inputs that move the total most, each at both ends, and where the total lies when
// all are drawn at once.
#pragma once

#include "report/cells.hpp"

namespace seambook {

inline constexpr const char* doubt_sheet = "Doubt";

Sheet doubt_page(const RateBook&, const Doubt&);

/// How the samples were drawn, in words.
std::string sampling_in_words(const Doubt&);
/// What the percentiles and the contingency mean, in words.
std::string percentiles_in_words(const Doubt&);

}  // namespace seambook
