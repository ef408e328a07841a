// Spans of time as a shop reads them, to the minute.
#pragma once

#include <string>

#include "schedule/shop.hpp"

namespace seambook {

/// `45 min`, `3 h 20 min`, `2 d 4 h`; of a negative span its size.
std::string span_text(Seconds);

}  // namespace seambook
